import { done, type Outcome } from '../../base/outcome.ts';
import { endCap } from '../../trade/blank/end-cap.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { figure, sayInches } from '../say.ts';
import {
  askPattern,
  ductSide,
  type Pattern,
  patternArguments,
  patternCautions,
  patternGives,
  patternSteps,
  patternUnit,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

export const blankEndCap = defineFunction({
  name: 'BLANK.ENDCAP',
  says: 'The flat blank of a cap that closes a rectangular duct, with its flanges and notches.',
  words: ['end cap', 'cap', 'closure', 'blank off', 'bottom', 'flange', 'notch'],
  gives: { label: 'End cap', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    width: ductSide('the width of the duct'),
    depth: ductSide('the depth of the duct'),
    ...patternArguments(1, '1 is the cap'),
    flange: optional(
      quantity('in', {
        says: 'what is turned up on each side; a square of it is notched out at each corner',
        least: 0,
        most: 6,
        why: 'a deeper flange is a piece of duct of its own',
      }),
      1,
      'it takes a row of screws (common practice, no source)',
    ),
    ease: optional(
      quantity('in', {
        says: 'what is added to width and depth so that the cap goes over the duct, or less than 0 so that it goes inside',
        least: -1,
        most: 1,
        why: 'more play than 1 in is no fit',
      }),
      0,
      'light sheet gives way by its own thickness (common practice, no source)',
    ),
  },
  formula: [
    String.raw`\mathrm{width} + \mathrm{ease} + 2 \times \mathrm{flange} \quad \text{by} \quad \mathrm{depth} + \mathrm{ease} + 2 \times \mathrm{flange}`,
  ],
  work: ({ width, depth, flange, ease, ...question }): Outcome<Pattern, CallFault> => {
    const pattern = askPattern([endCap(width, depth, flange, ease)], question);
    return pattern.ok ? done(pattern.value) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { width, depth, flange, ease }) => [
    ...[width, depth].map((size, index) => ({
      label: index === 0 ? 'Across the cap' : 'Up the cap',
      sum: `${figure(size, 4)} + ${figure(ease, 4)} + 2 × ${figure(flange, 4)}`,
      value: size + ease + 2 * flange,
      unit: 'in' as const,
      source: 'geometry' as const,
    })),
    ...patternSteps(pattern),
  ],
  drawing: ({ pieces }, { width, depth, flange }) =>
    patternDrawing(
      `End cap for ${sayInches(width)} × ${sayInches(depth)}, flange ${sayInches(flange)}`,
      pieces,
    ),
  cautions: (pattern) => patternCautions(pattern),
  sources: ['geometry', 'sheet-shop-practice'],
  examples: [
    {
      says: 'how wide to shear a cap for 20 × 8 in with 1 in flanges',
      given: { width: 20, depth: 8 },
      gives: 22,
      source: 'geometry',
    },
    {
      says: 'how long to shear a cap for 14 × 10 in with 3/4 in flanges',
      given: { width: 14, depth: 10, what: 'length', flange: 0.75 },
      gives: 11.5,
      source: 'geometry',
    },
  ],
});
