import { done } from '../../base/outcome.ts';
import { runPieces } from '../../trade/wrap/pieces.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCount, sayFeet, sayInches } from '../say.ts';
import { exampleWraps } from '../wraps.ts';
import { installedOf, rollSize, runLength, wrapArguments } from './arguments.ts';
import { handlingFibers } from './cautions.ts';
import { strip, stripMarks } from './strip-drawing.ts';

/** More pieces than this are drawn as so many. */
const mostDrawn = 8;

/** Pieces of wrap along a straight run. A whole number. Faults: `flange_over_roll`, `no_roll_size`. Source: count by roll width. */
export const wrapPieces = defineFunction({
  name: 'WRAP.PIECES',
  says: 'How many pieces of wrap lie side by side along a straight run.',
  words: ['strips', 'how many pieces of wrap', 'pieces along the run', 'roll width', 'butt joints'],
  gives: { label: 'Pieces', unit: 'count' },
  arguments: {
    length: runLength,
    ...wrapArguments,
    flange: optional(
      quantity('in', {
        says: 'how much of the roll width lies over the next piece and covers nothing of its own',
        least: 0,
        most: 12,
        why: 'a flange takes a few inches; over a foot is most likely a slip',
      }),
      0,
      'in the data sheets read, the 2 in flange is extra to the roll width',
    ),
  },
  formula: [
    String.raw`\text{pieces} = \left\lceil \frac{\text{length}}{\text{roll width} - \text{flange}} \right\rceil`,
  ],
  work: (given) => {
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const rollWidth = rollSize(given.wrap, 'roll_width', row.value.roll_width);
    if (!rollWidth.ok) return rollWidth;
    const run = fromTrade(runPieces(given.length, rollWidth.value, given.flange));
    return run.ok ? done({ rollWidth: rollWidth.value, ...run.value }) : run;
  },
  result: ({ pieces }) => pieces,
  steps: ({ rollWidth, cover, pieces, last }, { length, flange }) => [
    {
      label: 'One piece covers',
      sum: `${figure(rollWidth)} − ${figure(flange)}`,
      value: cover,
      unit: 'in',
      source: 'roll-sizes',
    },
    {
      label: 'The last one covers',
      sum: `${figure(length)} − ${figure(pieces - 1)} × ${figure(cover)}`,
      value: last,
      unit: 'in',
    },
    {
      label: 'Pieces',
      sum: `${figure(length)} ÷ ${figure(cover)} = ${figure(length / cover)}, up to whole pieces`,
      value: pieces,
      unit: 'count',
    },
  ],
  drawing: ({ pieces, cover, last }, { length }) => {
    const drawn = Math.min(mostDrawn, pieces);
    const share = pieces > drawn ? 1 : last / cover;
    const each = (strip.right - strip.left) / (drawn - 1 + share);
    const more = pieces > drawn ? `, ${drawn} drawn` : '';
    return {
      title: 'Pieces along the run',
      describes: `${sayCount(pieces, 'piece')} of wrap, each covering ${sayInches(cover)}, along a run of ${sayFeet(length)}; the last covers ${sayInches(last)}.`,
      height: 150,
      marks: stripMarks({
        length,
        of: 'run',
        at: Array.from({ length: drawn - 1 }, (_, index) => strip.left + (index + 1) * each),
        lines: 'seam',
        words: {
          left: `${sayCount(pieces, 'piece')} of ${sayInches(cover)}${more}`,
          right: `last one ${sayInches(last)}`,
        },
      }),
    };
  },
  cautions: ({ last, cover }) => [
    ...handlingFibers,
    ...(last < cover / 8
      ? [
          {
            level: 'look',
            sentence: `The last piece covers only ${sayInches(last)}. See whether the others can be spread, or that end filled with an offcut.`,
          } as const,
        ]
      : []),
  ],
  sources: ['roll-sizes'],
  examples: [
    {
      says: '20 ft in wrap from a roll 48 in wide',
      given: { length: 240, wrap: 'R-4 wrap', wraps: exampleWraps },
      gives: 5,
    },
    {
      says: 'the same where the flange is part of the 48 in',
      given: { length: 240, wrap: 'R-4 wrap', wraps: exampleWraps, flange: 2 },
      gives: 6,
    },
  ],
});
