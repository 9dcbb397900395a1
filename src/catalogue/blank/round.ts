import { done } from '../../base/outcome.ts';
import { measuredAt, roundBlank } from '../../trade/blank/round.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCut, sayInches } from '../say.ts';
import { cutting, testBlank } from './cautions.ts';
import { flatHeight, flatMarks, withSeamOnEdges } from './flat-drawing.ts';

export const blankRound = defineFunction({
  name: 'BLANK.ROUND',
  says: 'How wide to cut the flat blank of a straight round pipe.',
  words: [
    'round pipe',
    'girth',
    'circumference',
    'flat',
    'layout',
    'roll',
    'stovepipe',
    'stretchout of pipe',
  ],
  gives: { label: 'Blank width', unit: 'in' },
  arguments: {
    diameter: quantity('in', {
      says: 'the diameter of the pipe',
      least: 2,
      most: 120,
      why: 'pipe under 2 in or over 10 ft is not shop duct, so it is most likely a slip of the unit',
    }),
    seam: optional(
      quantity('in', {
        says: 'what the lengthwise seam takes in all, both edges together',
        least: 0,
        most: 6,
        why: 'no pipe seam takes more than a few inches of sheet',
      }),
      1,
      'a grooved lock made by hand takes 1 in in all (textbook of 1921); use your own figure for your machine',
    ),
    thickness: optional(
      quantity('in', {
        says: 'the thickness of the sheet; GAUGE.THICKNESS gives it',
        least: 0,
        most: 0.25,
        why: 'duct is made of sheet, and plate over 1/4 in is not rolled by this rule of thumb',
      }),
      0,
      'in light gauges the thickness adds less than 1/8 in to the girth and is mostly left out',
    ),
    measured: optional(
      choice(measuredAt, { says: 'where the diameter is measured, or "ignored" to leave the thickness out' }),
      'inside',
      'air ducts are sized by the clear inside (common practice, no source)',
    ),
  },
  formula: [
    String.raw`\text{blank} = \pi (\mathrm{diameter} + c \times \mathrm{thickness}) + \mathrm{seam}, \quad c = 1 \text{ (inside)},\ -1 \text{ (outside)},\ 0 \text{ (ignored)}`,
  ],
  work: ({ diameter, seam, thickness, measured }) => done(roundBlank(diameter, thickness, measured, seam)),
  result: ({ width }) => width,
  steps: ({ middleDiameter, girth, seam, width }, { diameter, thickness, measured }) => [
    ...(measured === 'ignored' || thickness === 0
      ? []
      : ([
          {
            label: 'Diameter at the middle of the sheet',
            sum: `${figure(diameter, 4)} ${signs[measured]} ${figure(thickness, 4)}`,
            value: middleDiameter,
            unit: 'in',
            source: 'drawing-cyclopedia-1906',
          },
        ] as const)),
    { label: 'Girth', sum: `π × ${figure(middleDiameter, 4)}`, value: girth, unit: 'in', source: 'geometry' },
    {
      label: 'Blank width',
      sum: `${figure(girth, 4)} + ${figure(seam, 4)}`,
      value: width,
      unit: 'in',
      source: 'geometry',
    },
  ],
  drawing: ({ girth, seam, width }, { diameter }) => ({
    title: 'Flat blank of a round pipe',
    describes: `A flat sheet ${sayCut(width)} wide: ${sayInches(girth)} of girth for a ${sayInches(
      diameter,
    )} pipe, with a seam of ${sayInches(seam)} in all, here split over both edges.`,
    height: flatHeight,
    marks: flatMarks({ strips: withSeamOnEdges(girth, seam), across: `blank ${sayCut(width)}` }, 0),
  }),
  cautions: (_, { thickness, measured }) =>
    thickness === 0 && measured === 'outside'
      ? [
          ...cutting,
          testBlank,
          {
            level: 'look',
            sentence:
              'The diameter is an outside one, but no sheet thickness is given, so nothing is taken off for it.',
          },
        ]
      : [...cutting, testBlank],
  sources: ['geometry', 'drafting-textbook-1921'],
  examples: [
    {
      says: 'a 6 in pipe with a seam of 1 in in all, thickness left out',
      given: { diameter: 6, seam: 1 },
      gives: 19.8496,
      tolerance: 0.0005,
      source: 'geometry',
    },
    {
      says: 'the bare girth of a pipe 12 in inside, of 24 ga galvanized',
      given: { diameter: 12, seam: 0, thickness: 0.0276, measured: 'inside' },
      gives: 37.7858,
      tolerance: 0.0005,
      source: 'geometry',
    },
    {
      says: 'the bare girth of a 7 in pipe; the textbook takes π as 3.1416 and prints 21.9912',
      given: { diameter: 7, seam: 0 },
      gives: 21.9912,
      tolerance: 0.0002,
      source: 'drafting-textbook-1921',
    },
  ],
});

const signs = { inside: '+', outside: '−' } as const;
