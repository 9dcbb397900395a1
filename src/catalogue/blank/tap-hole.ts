import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { roundTap } from '../../trade/blank/round-tap.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { patternCautions } from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';
import {
  askFitting,
  curveAnswers,
  fittingGives,
  fittingSteps,
  fittingUnit,
  stationArgument,
} from './round-pattern.ts';
import {
  markFromTheBranch,
  sayTrunk,
  tapArguments,
  tapDivisions,
  tapFormulas,
  tapMarks,
} from './round-tap.ts';

export const blankTapHole = defineFunction({
  name: 'BLANK.TAPHOLE',
  says: 'The hole in a trunk for a round branch at any angle, on center or off, as it lies on the flat sheet.',
  words: ['tap', 'hole', 'saddle', 'branch', 'takeoff', 'tee', 'lateral', 'wye', 'opening', 'ordinates'],
  gives: { label: 'Hole', ...fittingGives },
  unitOf: fittingUnit,
  arguments: {
    ...tapArguments,
    what: optional(
      choice(['along', 'around', ...curveAnswers], {
        says: 'how far a mark lies along the trunk or round it from where the middle lines meet, the width (round the trunk) or length (along it) of the hole, its area, or its edge (a side)',
      }),
      'length',
      'the opening along the trunk shows first whether the tap fits',
    ),
    station: stationArgument('marks count from the throat, the side to which the branch leans'),
    divisions: tapDivisions,
  },
  formula: [
    ...tapFormulas,
    String.raw`\text{along} = a(p) \cos \mathrm{angle} + r \cos p \sin \mathrm{angle}`,
    String.raw`\text{around} = R \arcsin\frac{\mathrm{offset} + r \sin p}{R} \text{ (round trunk)}, \quad \mathrm{offset} + r \sin p \text{ (flat wall)}`,
  ],
  work: (given) => {
    const made = fromTrade(roundTap(given));
    if (!made.ok) return made;
    const { stations, hole } = made.value;
    const r = figure(given.branch / 2, 4);
    const e = figure(given.offset, 4);
    const asked = askFitting(
      {
        pieces: [hole],
        isCurve: true,
        figures: [],
        tables: [
          {
            is: 'along',
            label: 'Along the trunk',
            sum: `a × cos ${figure(given.angle, 4)}° + ${r} × cos p × sin ${figure(given.angle, 4)}°; ${tapMarks}`,
            values: stations.map((station) => station.along),
          },
          {
            is: 'around',
            label: 'Round the trunk',
            sum:
              given.trunk === null
                ? `${e} + ${r} × sin p`
                : `${figure(given.trunk / 2, 4)} × arcsin((${e} + ${r} × sin p) ÷ ${figure(given.trunk / 2, 4)})`,
            values: stations.map((station) => station.around),
          },
        ],
      },
      given,
    );
    return asked.ok ? done(asked.value) : asked;
  },
  result: ({ asked }) => asked,
  steps: (answer) => fittingSteps(answer),
  drawing: ({ pieces }, { branch, trunk, angle }) =>
    patternDrawing(
      `Hole for a ${sayInches(branch)} branch at ${figure(angle, 2)}° in ${sayTrunk(trunk, (size) => sayInches(inches(size)))}`,
      pieces,
    ),
  cautions: ({ pattern }) => [...patternCautions(pattern), markFromTheBranch],
  sources: ['geometry', 'sheet-shop-practice'],
  examples: [
    {
      says: 'the hole of an 8 in branch in a 12 in trunk, along the trunk',
      given: { branch: 8, trunk: 12 },
      gives: 8,
      tolerance: 0.000001,
      source: 'geometry',
    },
    {
      says: 'how far its side lies round the trunk, 12 marks',
      given: { branch: 8, trunk: 12, what: 'around', station: 4, divisions: 12 },
      gives: 4.3784,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the throat of a 6 in branch at 45° in a 10 in trunk, along the trunk',
      given: { branch: 6, trunk: 10, angle: 45, what: 'along' },
      gives: 9.2426,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'a 6 in branch 4 in off center of a 14 in trunk: its outer side, round the trunk',
      given: { branch: 6, trunk: 14, offset: 4, what: 'around', station: 4, divisions: 12 },
      gives: 10.9956,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the long axis of the hole of an 8 in branch at 45° in a flat wall',
      given: { branch: 8, angle: 45 },
      gives: 11.3137,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});
