import { done } from '../../base/outcome.ts';
import { roundCap } from '../../trade/blank/round-cap.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing } from '../drawing.ts';
import { figure, sayCut, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import { cutting, testBlank } from './cautions.ts';
import { fittingUnit, roundDiameter } from './round-pattern.ts';

export const blankRoundCap = defineFunction({
  name: 'BLANK.CAP',
  says: 'The disc of a round end cap, with its turned flange.',
  words: ['cap', 'end cap', 'round cap', 'bottom', 'closure', 'disc', 'circle', 'flange'],
  gives: { label: 'Disc', unit: 'in', orUnits: ['sqft'] },
  unitOf: fittingUnit,
  arguments: {
    diameter: roundDiameter('the diameter of the pipe'),
    flange: optional(
      quantity('in', {
        says: 'what is turned up all round',
        least: 0,
        most: 2,
        why: 'a deeper flange does not turn on a disc without splitting or folds',
      }),
      0.25,
      'bottoms have 1/8 to 1/4 in turned (workshop textbook); use your own figure for your machine',
    ),
    what: optional(
      choice(['width', 'turned', 'girth', 'area'], {
        says: 'the width of the disc to cut, the circle on which its flange is turned, once round the turned cap, or the area of the disc',
      }),
      'width',
      'the disc is cut first',
    ),
    ease: optional(
      quantity('in', {
        says: 'what is added to the diameter so that the cap goes over the pipe, or less than 0 so that it goes inside',
        least: -1,
        most: 1,
        why: 'more play than 1 in is no fit',
      }),
      0,
      'light sheet gives way by its own thickness (common practice, no source)',
    ),
  },
  formula: [String.raw`\text{disc} = \mathrm{diameter} + \mathrm{ease} + 2 \times \mathrm{flange}`],
  work: ({ diameter, flange, ease, what }) => {
    const made = roundCap(diameter, flange, ease);
    const answers = { width: made.disc, turned: made.turned, girth: made.girth, area: made.area };
    return done({ ...made, asked: answers[what] });
  },
  result: ({ asked }) => asked,
  steps: ({ disc, turned, girth, area }, { diameter, flange, ease, what }) => {
    const steps: Readonly<Record<'turned' | 'girth' | 'width' | 'area', Step>> = {
      turned: {
        label: 'Circle of the flange',
        sum: `${figure(diameter, 4)} ${ease < 0 ? '−' : '+'} ${figure(Math.abs(ease), 4)}`,
        value: turned,
        unit: 'in',
        source: 'geometry',
      },
      girth: {
        label: 'Once round the turned cap',
        sum: `π × ${figure(turned, 4)}`,
        value: girth,
        unit: 'in',
        source: 'geometry',
      },
      width: {
        label: 'Disc to cut',
        sum: `${figure(turned, 4)} + 2 × ${figure(flange, 4)}`,
        value: disc,
        unit: 'in',
        source: 'geometry',
      },
      area: {
        label: 'Area of the disc',
        sum: `π × ${figure(disc, 4)}² ÷ 4 ÷ 144`,
        value: area,
        unit: 'sqft',
        source: 'geometry',
      },
    };
    const { turned: first, width, girth: second, area: third } = steps;
    return [...[first, width, second, third].filter((step) => step !== steps[what]), steps[what]];
  },
  drawing: ({ disc, turned }, { flange }) => capDrawing(disc, turned, flange),
  cautions: () => [...cutting, testBlank],
  sources: ['geometry', 'workshop-textbook', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the disc for an 8 in pipe, 3/8 in flange',
      given: { diameter: 8, flange: 0.375 },
      gives: 8.75,
      tolerance: 0.000001,
      source: 'geometry',
    },
    {
      says: 'the disc for a 12 in pipe, 1/2 in flange, to go 1/16 in inside',
      given: { diameter: 12, flange: 0.5, ease: -0.0625 },
      gives: 12.9375,
      tolerance: 0.000001,
      source: 'geometry',
    },
  ],
});

function capDrawing(
  disc: Parameters<typeof sayCut>[0],
  turned: Parameters<typeof sayInches>[0],
  flange: Parameters<typeof sayInches>[0],
): Drawing {
  const center = { x: 140, y: 146 };
  const outer = 96;
  const inner = (outer * turned) / disc;
  return {
    title: 'Disc of a round end cap',
    describes: `A disc ${sayCut(disc)} across; the dashed circle ${sayInches(turned)} across is where ${sayInches(flange)} is turned up all round.`,
    height: 266,
    marks: [
      {
        type: 'measure',
        from: { x: center.x - outer, y: 34 },
        to: { x: center.x + outer, y: 34 },
        text: `disc ${sayCut(disc)}`,
      },
      { type: 'circle', center, radius: outer, role: 'metal' },
      { type: 'circle', center, radius: inner, role: 'bend' },
      {
        type: 'label',
        at: { x: center.x, y: center.y + 4 },
        text: `turned at ${sayInches(turned)}`,
        anchor: 'middle',
      },
      {
        type: 'label',
        at: { x: 24, y: 260 },
        text: `flange ${sayInches(flange)} all round`,
        anchor: 'start',
      },
    ],
  };
}
