import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, inchesFromFeet } from '../../base/quantity.ts';
import { wholeDown } from '../../trade/whole.ts';
import { type PieceGroup, rollsFor } from '../../trade/wrap/rolls.ts';
import { optional, quantity, text } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { cellList } from '../cell-list.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCount, sayFeet, sayInches } from '../say.ts';
import { exampleWraps } from '../wraps.ts';
import { cutArgument, installedOf, rollSize, wrapArguments } from './arguments.ts';
import { handlingFibers } from './cautions.ts';
import { strip, stripMarks } from './strip-drawing.ts';

/** More cuts than this would run into each other. */
const mostDrawn = 80;

/** Whole rolls for pieces that are each cut in one length. Faults: `unlike_lists`, `half_a_row`, `no_roll_size`,
 *  `piece_longer_than_roll`. Source: first fit, longest piece first. */
export const wrapRolls = defineFunction({
  name: 'WRAP.ROLLS',
  says: 'Rolls of wrap for the pieces of one run or of a whole job; no piece is joined from two ends.',
  words: ['rolls of wrap', 'how many rolls', 'buy wrap', 'order insulation', 'rolls for the job'],
  gives: { label: 'Rolls', unit: 'count' },
  arguments: {
    cuts: cellList({ ...cutArgument, says: 'the cut length of the pieces: one, or a column of them' }),
    pieces: cellList(
      quantity('count', {
        says: 'how many pieces of each cut: one number, or a column beside the cuts',
        least: 0,
        most: 10_000,
        why: 'more pieces than that in one row is most likely a slip',
        whole: true,
      }),
    ),
    ...wrapArguments,
    waste: optional(
      quantity('percent', {
        says: 'the share added for spoiled pieces and patches; 10 % is 0.1',
        least: 0,
        most: 1,
        why: 'more than as much again would be a slip; 10 % is written 0.1',
      }),
      0.1,
      'a tenth is common practice, no source',
    ),
    wrap_of_each: optional<readonly (string | null)[]>(
      cellList(
        text({ says: 'the wrap of each row, where the column mixes several: others are left out', most: 80 }),
      ),
      [],
      'all rows are then of this wrap',
    ),
  },
  formula: [
    String.raw`\text{used} = \text{opened} - 1 + \text{share of the last}, \quad \text{opened: } \text{pieces}_i \text{ of } \text{cuts}_i \text{ each, longest first, from the first roll with room}`,
    String.raw`\text{rolls} = \lceil \text{used} \times (1 + \text{waste}) \rceil`,
  ],
  work: (given) => {
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const groups = groupsOf(given);
    if (!groups.ok) return groups;
    const size = rollSize(given.wrap, 'roll_length', row.value.roll_length);
    if (!size.ok) return size;
    const rollLength = inchesFromFeet(size.value);
    const rolls = fromTrade(rollsFor(groups.value, rollLength, given.waste));
    if (!rolls.ok) return rolls;
    const longest = inches(Math.max(0, ...groups.value.map((group) => group.cut)));
    return done({ ...rolls.value, rollLength, longest });
  },
  result: ({ rolls }) => rolls,
  steps: ({ pieces, length, rollLength, byLength, opened, shareOfLast, rolls }, { waste }) => [
    { label: 'Pieces', sum: '', value: pieces, unit: 'count' },
    { label: 'End to end', sum: sayFeet(length), value: length, unit: 'in' },
    { label: 'One roll', sum: sayFeet(rollLength), value: rollLength, unit: 'in', source: 'roll-sizes' },
    {
      label: 'By length alone',
      sum: `${figure(length, 2)} ÷ ${figure(rollLength)}, up to whole rolls`,
      value: byLength,
      unit: 'count',
    },
    {
      label: 'With every piece whole',
      sum: 'longest pieces first, each from the first roll with room',
      value: opened,
      unit: 'count',
    },
    {
      label: 'Used, the last roll in part',
      sum: opened === 0 ? 'nothing' : `${figure(opened - 1)} + ${figure(shareOfLast)}`,
      value: opened === 0 ? 0 : opened - 1 + shareOfLast,
      unit: 'ratio',
    },
    {
      label: 'Rolls',
      sum: `${figure(opened === 0 ? 0 : opened - 1 + shareOfLast)} × ${figure(1 + waste)}, up to whole rolls`,
      value: rolls,
      unit: 'count',
    },
  ],
  drawing: ({ rollLength, longest, rolls, pieces, ends }) => {
    const perRoll = longest > 0 ? wholeDown(rollLength / longest) : 0;
    const each = (longest * (strip.right - strip.left)) / rollLength;
    return {
      title: 'Pieces from a roll',
      describes: `${sayCount(rolls, 'roll')} of ${sayFeet(rollLength)} for ${sayCount(pieces, 'piece')}; the longest piece, ${sayInches(longest)}, comes ${sayCount(perRoll, 'time')} from a roll.`,
      height: 150,
      marks: stripMarks({
        length: rollLength,
        of: 'roll',
        at: Array.from(
          { length: Math.min(perRoll, mostDrawn) },
          (_, index) => strip.left + (index + 1) * each,
        ),
        lines: 'cut',
        words: {
          left:
            pieces === 0
              ? 'no pieces'
              : `longest piece ${sayInches(longest)}, ${figure(perRoll)} from a roll`,
          right: `ends of full rolls ${sayFeet(ends)}`,
        },
      }),
    };
  },
  cautions: ({ opened, byLength }) => [
    ...handlingFibers,
    ...(opened > byLength
      ? [
          {
            level: 'look',
            sentence: `By length alone ${sayCount(byLength, 'roll')} would do. Every piece is taken whole, so ends of rolls are left over; a piece joined from two ends needs a lap and a taped seam of its own.`,
          } as const,
        ]
      : []),
  ],
  sources: ['roll-sizes'],
  examples: [
    {
      says: 'five pieces of 47 1/4 in from a roll of 100 ft',
      given: { cuts: 47.25, pieces: 5, wrap: 'R-4 wrap', wraps: exampleWraps },
      gives: 1,
    },
    {
      says: 'a job of three runs in wrap from 50 ft rolls',
      given: {
        cuts: [[67.25], [48.75], [67.25]],
        pieces: [[6], [8], [5]],
        wrap: 'R-8 wrap',
        wraps: exampleWraps,
      },
      gives: 3,
    },
    {
      says: 'the same job where the middle run is of another wrap',
      given: {
        cuts: [[67.25], [48.75], [67.25]],
        pieces: [[6], [8], [5]],
        wrap: 'R-8 wrap',
        wraps: exampleWraps,
        wrap_of_each: [['R-8 wrap'], ['R-4 wrap'], ['R-8 wrap']],
      },
      gives: 2,
    },
  ],
});

/** Rows without a piece, and rows of another wrap, are left out. */
function groupsOf(given: {
  readonly cuts: readonly (Inches | null)[];
  readonly pieces: readonly (number | null)[];
  readonly wrap: string;
  readonly wrap_of_each: readonly (string | null)[];
}): Outcome<readonly PieceGroup[], CallFault> {
  const { cuts, pieces, wrap, wrap_of_each: names } = given;
  if (pieces.length !== cuts.length) {
    return failed({ code: 'unlike_lists', argument: 'pieces', got: pieces.length, wanted: cuts.length });
  }
  if (names.length > 0 && names.length !== cuts.length) {
    return failed({ code: 'unlike_lists', argument: 'wrap_of_each', got: names.length, wanted: cuts.length });
  }
  const groups: PieceGroup[] = [];
  for (const [index, cut] of cuts.entries()) {
    const count = pieces[index] ?? 0;
    if (names.length > 0 && !isSame(names[index] ?? '', wrap)) continue;
    if (cut === null && count > 0) {
      return failed({ code: 'half_a_row', argument: 'cuts', row: index + 1 });
    }
    if (cut !== null) groups.push({ cut, pieces: count });
  }
  return done(groups);
}

function isSame(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
