import { done } from '../../base/outcome.ts';
import { flexSag, sagPerFoot } from '../../trade/hang/sag.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayFeet, sayInches } from '../say.ts';
import { spacingArgument } from './arguments.ts';
import { codeDecides } from './cautions.ts';
import { line } from './run-drawing.ts';

/** Sag of flex between two supports. Inches. Source: flexible duct standard of 2010, 4.6; a parabola for the length. */
export const hangSag = defineFunction({
  name: 'HANG.SAG',
  says: 'How deep flex may sag between two supports, or how much longer the sag makes it.',
  words: ['flex sag', 'sag between straps', 'drooping flex', 'belly', 'half inch per foot'],
  gives: { label: 'Sag allowed', unit: 'in' },
  arguments: {
    spacing: { ...spacingArgument, says: 'how far apart the supports are' },
    per_foot: optional(
      quantity('in', {
        says: 'the sag allowed for each foot between supports',
        least: 0,
        most: 3,
        why: 'flex that sags more than 3 in a foot hangs in loops',
      }),
      sagPerFoot,
      '1/2 in, by the flexible duct standard of 2010, 4.6',
    ),
    what: optional(
      choice(['sag', 'longer'], { says: 'the depth of the sag, or what it adds to the length' }),
      'sag',
      'it is what one measures at the job',
    ),
  },
  formula: [
    String.raw`\text{sag} = \frac{\text{per\_foot} \times \text{spacing}}{12}`,
    String.raw`\text{longer} = \frac{\text{spacing}}{2} \left(\sqrt{1 + m^2} + \frac{\mathrm{asinh}\ m}{m}\right) - \text{spacing}, \quad m = \frac{4\,\text{sag}}{\text{spacing}}`,
  ],
  work: ({ spacing, per_foot, what }) => {
    const found = flexSag(spacing, per_foot);
    return done({ ...found, asked: what === 'sag' ? found.sag : found.longer });
  },
  result: ({ asked }) => asked,
  steps: ({ sag, longer }, { spacing, per_foot, what }) => [
    {
      label: 'Sag allowed',
      sum: `${figure(per_foot, 4)} × ${figure(spacing, 4)} ÷ 12`,
      value: sag,
      unit: 'in',
      source: 'flex-standard-2010',
    },
    ...(what === 'sag'
      ? []
      : [
          {
            label: 'Longer by',
            sum: `a parabola ${figure(sag, 4)} deep over ${figure(spacing, 4)}, less ${figure(spacing, 4)}`,
            value: longer,
            unit: 'in',
            source: 'geometry',
          } as const,
        ]),
  ],
  drawing: ({ sag, longer }, { spacing }) => ({
    title: 'Sag of flex between two supports',
    describes: `Flex held every ${sayFeet(spacing)} may sag ${sayInches(sag)}, which makes it ${figure(longer, 2)} in longer.`,
    height: 156,
    marks: [
      line(20, 22, 340, 22, 'guide'),
      line(40, 22, 40, 60, 'cut'),
      line(320, 22, 320, 60, 'cut'),
      line(40, 60, 320, 60, 'guide'),
      {
        type: 'outline',
        points: curve(58 * Math.min(1, (6 * sag) / spacing) + 4),
        closed: false,
        role: 'metal',
      },
      { type: 'label', at: { x: 180, y: 50 }, text: `sag ${sayInches(sag)}`, anchor: 'middle' },
      { type: 'measure', from: { x: 40, y: 146 }, to: { x: 320, y: 146 }, text: sayFeet(spacing) },
    ],
  }),
  cautions: (_, { spacing, per_foot }) => [
    codeDecides,
    {
      level: 'care',
      sentence:
        'Pull flex to its full length and cut off what is left over: sag and slack cost far more airflow than the strap saves.',
      source: 'flex-standard-2010',
    },
    ...(spacing > 48
      ? [
          {
            level: 'look',
            sentence: 'The flexible duct standard of 2010 wants supports at most 4 ft apart.',
            source: 'flex-standard-2010',
          } as const,
        ]
      : []),
    ...(per_foot > sagPerFoot
      ? [
          {
            level: 'look',
            sentence:
              'More than 1/2 in for each foot is deeper than the flexible duct standard of 2010 allows.',
            source: 'flex-standard-2010',
          } as const,
        ]
      : []),
  ],
  sources: ['flex-standard-2010'],
  examples: [
    { says: 'flex held every 4 ft', given: { spacing: 48 }, gives: 2, source: 'flex-standard-2010' },
    {
      says: 'what that sag adds to its length',
      given: { spacing: 48, what: 'longer' },
      gives: 0.2213,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});

/** A parabola between the two straps, so deep in the middle. */
function curve(depth: number): readonly { readonly x: number; readonly y: number }[] {
  return Array.from({ length: 41 }, (_, index) => {
    const along = index / 40;
    return { x: 40 + 280 * along, y: 60 + 4 * depth * along * (1 - along) };
  });
}
