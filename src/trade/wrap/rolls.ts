import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { wholeDown, wholeUp } from '../whole.ts';

/** So many pieces of one cut length. */
export interface PieceGroup {
  readonly cut: Inches;
  readonly pieces: number;
}

export interface Rolls {
  readonly pieces: number;
  /** All cuts end to end. */
  readonly length: Inches;
  /** Rolls that are opened when every piece comes whole from one roll. */
  readonly opened: number;
  /** What is taken off the last of them, as a share of a roll. */
  readonly shareOfLast: number;
  /** Rolls that the bare length would fill: fewer pieces than this cannot be. */
  readonly byLength: number;
  /** Too short for another piece, over all rolls but the last. */
  readonly ends: Inches;
  /** With waste, in whole rolls. */
  readonly rolls: number;
}

/** Whole rolls for pieces that are each cut in one length, longest first, from the first roll with room (first fit).
 *  Waste is a share of what is used: opened rolls count whole, the last one by what is taken off it. In inches.
 *  Faults: `piece_longer_than_roll`. */
export function rollsFor(
  groups: readonly PieceGroup[],
  rollLength: Inches,
  waste: number,
): Outcome<Rolls, TradeFault> {
  const wanted = groups.filter((group) => group.pieces > 0).sort((one, other) => other.cut - one.cut);
  const longest = wanted[0]?.cut ?? inches(0);
  if (wholeDown(rollLength / longest) < 1) {
    return failed({ code: 'piece_longer_than_roll', cut: longest, rollLength });
  }
  const pieces = wanted.reduce((sum, group) => sum + group.pieces, 0);
  const length = wanted.reduce((sum, group) => sum + group.pieces * group.cut, 0);
  const opened = openedRolls(wanted, rollLength);
  const count = opened.reduce((sum, alike) => sum + alike.rolls, 0);
  const restOfLast = Math.max(0, ...opened.map((alike) => alike.rest));
  const shareOfLast = count === 0 ? 0 : 1 - restOfLast / rollLength;
  const used = count === 0 ? 0 : count - 1 + shareOfLast;
  return done({
    pieces,
    length: inches(length),
    opened: count,
    shareOfLast,
    byLength: wholeUp(length / rollLength),
    ends: inches(count === 0 ? 0 : Math.max(0, count * rollLength - length - restOfLast)),
    rolls: wholeUp(used * (1 + waste)),
  });
}

/** Rolls that have the same length left. */
interface AlikeRolls {
  readonly rest: number;
  readonly rolls: number;
}

function openedRolls(wanted: readonly PieceGroup[], rollLength: Inches): readonly AlikeRolls[] {
  let opened: readonly AlikeRolls[] = [];
  for (const { cut, pieces } of wanted) {
    let toPlace = pieces;
    const next: AlikeRolls[] = [];
    const place = (alike: AlikeRolls) => {
      const each = wholeDown(alike.rest / cut);
      const filled = each === 0 ? 0 : Math.min(alike.rolls, Math.floor(toPlace / each));
      const part = each === 0 || filled === alike.rolls ? 0 : toPlace - filled * each;
      toPlace -= filled * each + part;
      next.push({ rest: Math.max(0, alike.rest - each * cut), rolls: filled });
      next.push({ rest: alike.rest - part * cut, rolls: part > 0 ? 1 : 0 });
      next.push({ rest: alike.rest, rolls: alike.rolls - filled - (part > 0 ? 1 : 0) });
    };
    for (const alike of opened) place(alike);
    const perRoll = wholeDown(rollLength / cut);
    if (toPlace > 0) place({ rest: rollLength, rolls: Math.ceil(toPlace / perRoll) });
    opened = next.filter((alike) => alike.rolls > 0);
  }
  return opened;
}
