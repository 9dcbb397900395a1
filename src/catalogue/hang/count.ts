import { done } from '../../base/outcome.ts';
import { type RunEnds, type RunHangers, runEnds, runHangers } from '../../trade/hang/count.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount, sayFeet } from '../say.ts';
import type { Step } from '../working.ts';
import { runArgument, spacingArgument } from './arguments.ts';
import { codeDecides, nearFittings, overhead } from './cautions.ts';
import { runDrawing } from './run-drawing.ts';

export const endsArgument = optional(
  choice(runEnds, {
    says: 'whether both ends of the run hang, or one or both are carried by equipment, a trunk or a wall',
  }),
  'both hang',
  'it is the most hangers, so nothing is left hanging by a joint',
);

const fittings = (says: string) =>
  optional(
    quantity('count', {
      says,
      least: 0,
      most: 1000,
      whole: true,
      why: 'more than a thousand on one run is most likely a slip',
    }),
    0,
    'a straight run has none',
  );

/** Hangers of a run. Inches. Source: arithmetic, and the duct standard of 2005 for elbows and branches. */
export const hangCount = defineFunction({
  name: 'HANG.COUNT',
  says: 'How many hangers a run takes, with those for its elbows and branches.',
  words: ['how many hangers', 'hangers', 'number of straps', 'supports', 'count hangers', 'both ends'],
  gives: { label: 'Hangers', unit: 'count' },
  arguments: {
    length: runArgument,
    spacing: spacingArgument,
    ends: endsArgument,
    elbows: fittings('elbows that want a hanger of their own, within 2 ft'),
    branches: fittings('branches that want a hanger of their own, within 4 ft'),
  },
  formula: [
    String.raw`\text{hangers} = \left\lceil \frac{\text{length}}{\text{spacing}} \right\rceil + 1 - \text{carried ends} + \text{elbows} + \text{branches}`,
  ],
  work: ({ length, spacing, ends, elbows, branches }) =>
    done(runHangers(length, spacing, ends, elbows + branches)),
  result: ({ hangers }) => hangers,
  steps: (run, { length, spacing, ends, elbows, branches }): readonly Step[] => [
    ...straightSteps(run, length, spacing, ends),
    {
      label: 'Hangers',
      sum: `${run.straight} + ${figure(elbows)} + ${figure(branches)}`,
      value: run.hangers,
      unit: 'count',
      source: 'duct-standard-2005',
    },
  ],
  drawing: (run, { length, ends }) =>
    runDrawing({
      title: 'Hangers of a run',
      describes: `A run of ${sayFeet(length)} on ${sayCount(run.straight, 'hanger')}, ${sayFeet(run.bay)} apart; ${figure(run.extra)} more for elbows and branches.`,
      places: placesOf(run, ends),
      ...carried(ends),
      note: `${sayCount(run.straight, 'hanger')}, ${sayFeet(run.bay)} apart`,
      length: sayFeet(length),
    }),
  cautions: (run) => [
    codeDecides,
    overhead,
    nearFittings,
    ...(run.hangers === 0
      ? [
          {
            level: 'look',
            sentence:
              'Both ends are carried and lie within one spacing, so no hanger is counted between them.',
          } as const,
        ]
      : []),
  ],
  sources: ['hanger-practice'],
  examples: [
    {
      says: 'a run of 40 ft that hangs at both ends, 10 ft apart',
      given: { length: 480, spacing: 120 },
      gives: 5,
    },
    {
      says: 'the same run with one end carried by the unit',
      given: { length: 480, spacing: 120, ends: 'one carried' },
      gives: 4,
    },
    {
      says: 'a run of 33 ft 4 in with an elbow and two branches',
      given: { length: 400, spacing: 120, elbows: 1, branches: 2 },
      gives: 8,
    },
  ],
});

export function straightSteps(
  run: RunHangers,
  length: number,
  spacing: number,
  ends: RunEnds,
): readonly Step[] {
  return [
    {
      label: 'Spaces between',
      sum: `${figure(length, 4)} ÷ ${figure(spacing, 4)}, up to whole ones`,
      value: run.bays,
      unit: 'count',
    },
    {
      label: 'Each of them',
      sum: `${figure(length, 4)} ÷ ${run.bays}`,
      value: run.bay,
      unit: 'in',
    },
    {
      label: 'On the straight',
      sum: {
        'both hang': `${run.bays} + 1`,
        'one carried': `${run.bays}`,
        'both carried': `${run.bays} − 1`,
      }[ends],
      value: run.straight,
      unit: 'count',
      source: 'hanger-practice',
    },
  ];
}

export function carried(ends: RunEnds): { readonly carriesStart: boolean; readonly carriesEnd: boolean } {
  return { carriesStart: ends !== 'both hang', carriesEnd: ends === 'both carried' };
}

/** Where hangers stand, from 0 at the start of the run to 1 at its end. */
export function placesOf(run: RunHangers, ends: RunEnds): readonly number[] {
  const first = ends === 'both hang' ? 0 : 1;
  return Array.from({ length: run.straight }, (_, index) => (index + first) / run.bays);
}
