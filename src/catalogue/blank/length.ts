import { done } from '../../base/outcome.ts';
import { blankLength } from '../../trade/blank/length.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCut, sayInches } from '../say.ts';
import { cutting } from './cautions.ts';
import type { FlatStrip } from './flat-drawing.ts';
import { flatHeight, flatMarks } from './flat-drawing.ts';

const end = (which: string) =>
  optional(
    quantity('in', {
      says: `what the joint takes at the ${which} end: turned back for a drive, 0 for a plain S slip, the crimp of a round pipe`,
      least: 0,
      most: 6,
      why: 'no end joint of shop duct takes more than a few inches of sheet',
    }),
    0.5,
    'a drive cleat needs 1/2 in turned back on each duct edge (trade-school study cards)',
  );

export const blankLengthways = defineFunction({
  name: 'BLANK.LENGTH',
  says: 'How long to cut a blank so that the section comes out at its finished length.',
  words: [
    'cut length',
    'joint length',
    'section length',
    'drive',
    's and drive',
    'end allowance',
    'crimp',
    'slip',
  ],
  gives: { label: 'Cut length', unit: 'in' },
  arguments: {
    finished: quantity('in', {
      says: 'the finished length of the section, joint to joint',
      least: 1,
      most: 240,
      why: 'a section under 1 in or over 20 ft is not made from one sheet',
    }),
    first_end: end('first'),
    second_end: end('second'),
  },
  formula: [String.raw`\text{cut length} = \mathrm{finished} + \mathrm{first\_end} + \mathrm{second\_end}`],
  work: ({ finished, first_end, second_end }) => done({ cut: blankLength(finished, first_end, second_end) }),
  result: ({ cut }) => cut,
  steps: ({ cut }, { finished, first_end, second_end }) => [
    {
      label: 'Cut length',
      sum: `${figure(finished, 4)} + ${figure(first_end, 4)} + ${figure(second_end, 4)}`,
      value: cut,
      unit: 'in',
      source: 'geometry',
    },
  ],
  drawing: ({ cut }, { finished, first_end, second_end }) => {
    const strips: readonly FlatStrip[] = [
      { is: 'seam', width: first_end, name: 'joint' },
      { is: 'panel', width: finished, name: 'section' },
      { is: 'seam', width: second_end, name: 'joint' },
    ];
    return {
      title: 'Length of a blank with its joints',
      describes: `A flat sheet cut ${sayCut(cut)} long: ${sayInches(finished)} finished, ${sayInches(
        first_end,
      )} for the joint at one end and ${sayInches(second_end)} at the other.`,
      height: flatHeight,
      marks: flatMarks({ strips, across: `cut ${sayCut(cut)}` }, 0),
    };
  },
  cautions: () => [
    ...cutting,
    {
      level: 'look',
      sentence:
        'Drive edges stand on two sides only. Notch the corners, and cut the allowance off the S slip sides.',
      source: 'sheet-shop-practice',
    },
  ],
  sources: ['geometry', 'drive-edge-cards'],
  examples: [
    {
      says: 'a 60 in section for drive cleats at both ends',
      given: { finished: 60 },
      gives: 61,
      source: 'geometry',
    },
    {
      says: 'a 24 in pipe with a 1 1/2 in crimp at one end',
      given: { finished: 24, first_end: 1.5, second_end: 0 },
      gives: 25.5,
      source: 'geometry',
    },
  ],
});
