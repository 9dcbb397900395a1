import { done } from '../../base/outcome.ts';
import { bottomPins } from '../../trade/wrap/pins.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { figure, sayCount, sayFeet, sayInches } from '../say.ts';
import { runLength } from './arguments.ts';
import { handlingFibers } from './cautions.ts';

/** Pins and clips under wide duct. A whole number. Source: maker guide specification; the count is a rule of ours. */
export const wrapPins = defineFunction({
  name: 'WRAP.PINS',
  says: 'Pins with clips that keep wrap from sagging off the underside of wide duct.',
  words: ['pins', 'stick pins', 'weld pins', 'clips', 'washers', 'sagging wrap', 'underside'],
  gives: { label: 'Pins', unit: 'count' },
  arguments: {
    width: quantity('in', {
      says: 'the width of the underside',
      least: 2,
      most: 120,
      why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
    }),
    length: runLength,
    spacing: optional(
      quantity('in', {
        says: 'the widest gap between two pins, either way',
        least: 3,
        most: 36,
        why: 'closer than 3 in they tear the facing, and over 3 ft apart wrap sags between them',
      }),
      18,
      'a maker’s guide specification asks for 18 in at most',
    ),
    from: optional(
      quantity('in', {
        says: 'the width from which pins are asked for',
        least: 2,
        most: 120,
        why: 'it is a width of duct',
      }),
      24,
      'a maker’s guide specification asks for pins from 24 in of width',
    ),
  },
  formula: [
    String.raw`\text{pins} = \left\lceil \frac{\text{width}}{\text{spacing}} \right\rceil \times \left\lceil \frac{\text{length}}{\text{spacing}} \right\rceil \quad \text{where width} \ge \text{from, otherwise } 0`,
  ],
  work: ({ width, length, spacing, from }) => done(bottomPins(width, length, spacing, from)),
  result: ({ pins }) => pins,
  steps: ({ isWide, rows, inRow, pins }, { width, length, spacing, from }) => [
    ...(isWide
      ? [
          {
            label: 'Rows along the duct',
            sum: `${figure(width)} ÷ ${figure(spacing)}, up to a whole row`,
            value: rows,
            unit: 'count',
            source: 'wrap-guide-specification',
          } as const,
          {
            label: 'Pins in each row',
            sum: `${figure(length)} ÷ ${figure(spacing)}, up to a whole pin`,
            value: inRow,
            unit: 'count',
            source: 'wrap-guide-specification',
          } as const,
        ]
      : []),
    {
      label: 'Pins',
      sum: isWide ? `${rows} × ${inRow}` : `${figure(width)} in is narrower than ${figure(from)} in, so none`,
      value: pins,
      unit: 'count',
      source: 'wrap-guide-specification',
    },
  ],
  drawing: ({ rows, inRow, pins }, { width, length }) => pinsDrawing(rows, inRow, pins, width, length),
  cautions: ({ pins }) => [
    ...handlingFibers,
    ...(pins > 0
      ? [
          {
            level: 'care',
            sentence:
              'Cut pins flush and tape over every one: a point tears hands, and each hole in the facing lets vapor in.',
            source: 'stretch-out-permit-scan',
          } as const,
        ]
      : []),
    {
      level: 'look',
      sentence:
        'Makers differ: one advises against adhesive to stop sagging, other specifications call for it. Do what the specification of the job says.',
      source: 'wrap-guide-specification',
    },
  ],
  sources: ['wrap-guide-specification'],
  examples: [
    {
      says: '20 ft of duct 36 in wide',
      given: { width: 36, length: 240 },
      gives: 28,
      source: 'wrap-guide-specification',
    },
    {
      says: 'a 20 in duct needs none',
      given: { width: 20, length: 240 },
      gives: 0,
      source: 'wrap-guide-specification',
    },
  ],
});

/** More rows or pins than this are drawn as so many. */
const mostRows = 6;
const mostInRow = 14;

/** The underside of the run, seen from below. */
function pinsDrawing(
  rows: number,
  inRow: number,
  pins: number,
  width: Parameters<typeof sayInches>[0],
  length: Parameters<typeof sayInches>[0],
): Drawing {
  const [left, right, top, bottom] = [20, 340, 44, 116];
  const [drawnRows, drawnInRow] = [Math.min(rows, mostRows), Math.min(inRow, mostInRow)];
  const places = Array.from({ length: drawnRows * drawnInRow }, (_, index): Mark => {
    const row = Math.floor(index / drawnInRow);
    const place = index % drawnInRow;
    return {
      type: 'circle',
      center: {
        x: left + ((place + 0.5) / drawnInRow) * (right - left),
        y: top + ((row + 0.5) / drawnRows) * (bottom - top),
      },
      radius: 3,
      role: 'fastener',
    };
  });
  const isAll = drawnRows === rows && drawnInRow === inRow;
  return {
    title: 'Pins on the underside',
    describes:
      pins === 0
        ? `No pins: a duct ${sayInches(width)} wide is too narrow for them.`
        : `${sayCount(pins, 'pin')} on the underside of a duct ${sayInches(width)} wide and ${sayFeet(length)} long, in ${sayCount(rows, 'row')} of ${inRow}.`,
    height: 150,
    marks: [
      {
        type: 'outline',
        closed: true,
        role: 'wrap',
        points: [
          { x: left, y: top },
          { x: right, y: top },
          { x: right, y: bottom },
          { x: left, y: bottom },
        ],
      },
      ...places,
      { type: 'measure', from: { x: left, y: 30 }, to: { x: right, y: 30 }, text: `run ${sayFeet(length)}` },
      {
        type: 'label',
        at: { x: left, y: 138 },
        text:
          pins === 0
            ? 'too narrow for pins'
            : `${sayCount(rows, 'row')} of ${inRow}${isAll ? '' : ', some drawn'}`,
        anchor: 'start',
      },
      { type: 'label', at: { x: right, y: 138 }, text: `${sayInches(width)} wide`, anchor: 'end' },
    ],
  };
}
