import { done } from '../../base/outcome.ts';
import { hangerPlace, runHangers } from '../../trade/hang/count.ts';
import { quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCount, sayFeet } from '../say.ts';
import { runArgument, spacingArgument } from './arguments.ts';
import { codeDecides, nearFittings, overhead } from './cautions.ts';
import { carried, endsArgument, placesOf, straightSteps } from './count.ts';
import { runDrawing } from './run-drawing.ts';

/** Where one hanger of a run stands. Inches. Faults: `no_such_hanger`. Source: arithmetic. */
export const hangPlace = defineFunction({
  name: 'HANG.PLACE',
  says: 'How far from the start of a run a hanger stands, when they are spread evenly.',
  words: ['lay out hangers', 'where does the hanger go', 'mark hangers', 'hanger position', 'chalk line'],
  gives: { label: 'From the start', unit: 'in' },
  arguments: {
    length: runArgument,
    spacing: spacingArgument,
    number: quantity('count', {
      says: 'which hanger, counted from 1 at the start of the run',
      least: 1,
      most: 1001,
      whole: true,
      why: 'no run has more hangers than that',
    }),
    ends: { ...endsArgument, says: `${endsArgument.says}; a single carried end is the start` },
  },
  formula: [
    String.raw`\text{place} = (\text{number} - 1) \times \frac{\text{length}}{\lceil \text{length} / \text{spacing} \rceil} \text{ (both hang)}`,
    String.raw`\text{place} = \text{number} \times \frac{\text{length}}{\lceil \text{length} / \text{spacing} \rceil} \text{ (start carried)}`,
  ],
  work: ({ length, spacing, number, ends }) => {
    const run = runHangers(length, spacing, ends, 0);
    const place = fromTrade(hangerPlace(run, ends, number));
    return place.ok ? done({ run, place: place.value }) : place;
  },
  result: ({ place }) => place,
  steps: ({ run, place }, { length, spacing, number, ends }) => [
    ...straightSteps(run, length, spacing, ends),
    {
      label: 'From the start',
      sum: `${ends === 'both hang' ? `(${figure(number)} − 1)` : figure(number)} × ${figure(run.bay, 4)}`,
      value: place,
      unit: 'in',
    },
  ],
  drawing: ({ run, place }, { length, number, ends }) =>
    runDrawing({
      title: `Hanger ${figure(number)} of a run`,
      describes: `Hanger ${figure(number)} of ${figure(run.straight)} stands ${sayFeet(place)} from the start of a run of ${sayFeet(length)}.`,
      places: placesOf(run, ends),
      ...carried(ends),
      marked: place / length,
      note: `${sayCount(run.straight, 'hanger')}, number ${figure(number)} at ${sayFeet(place)}`,
      length: sayFeet(length),
    }),
  cautions: () => [codeDecides, overhead, nearFittings],
  sources: ['hanger-practice'],
  examples: [
    {
      says: 'the third hanger of a run of 33 ft 4 in that hangs at both ends',
      given: { length: 400, spacing: 120, number: 3 },
      gives: 200,
    },
    {
      says: 'the first hanger of the same run when the unit carries its start',
      given: { length: 400, spacing: 120, number: 1, ends: 'one carried' },
      gives: 100,
    },
  ],
});
