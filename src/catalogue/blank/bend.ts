import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { type Bend, bend, printedRule, startingK } from '../../trade/blank/bend.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Point } from '../drawing.ts';
import { figure } from '../say.ts';
import type { Step } from '../working.ts';
import { cutting, testBlank } from './cautions.ts';

export const blankBend = defineFunction({
  name: 'BLANK.BEND',
  says: 'How much of the flat goes into a bend, or how much the flat is shorter than the outside sizes.',
  words: ['bend allowance', 'bend deduction', 'set back', 'setback', 'k factor', 'brake', 'neutral line'],
  gives: { label: 'Bend allowance', unit: 'in' },
  arguments: {
    angle: quantity('deg', {
      says: 'the angle bent through: 90 makes a square corner',
      least: 0,
      most: 170,
      why: 'past 170° the outside faces meet far away or nowhere, and the rule tells of a hem no more',
    }),
    radius: quantity('in', {
      says: 'the inside radius of the bend',
      least: 0,
      most: 12,
      why: 'a larger radius is rolled, not bent',
    }),
    thickness: quantity('in', {
      says: 'the thickness of the sheet; GAUGE.THICKNESS gives it',
      least: 0.005,
      most: 0.25,
      why: 'duct is made of sheet between 0.005 and 1/4 in',
    }),
    what: optional(
      choice(['allowance', 'deduction', 'set-back'], {
        says: 'the allowance (metal in the bend), the deduction (off the outside sizes) or the set-back (start of the bend to the outside corner)',
      }),
      'allowance',
      'the blank is the flats with an allowance for each bend',
    ),
    k: optional<number | null>(
      quantity('ratio', {
        says: 'the K factor: where the neutral line lies, as a share of the thickness from the inside',
        least: 0,
        most: 0.5,
        why: 'the neutral line lies between the inside face and the middle of the sheet',
      }),
      null,
      '0.33 for a radius under the thickness, 0.40 up to 3 thicknesses, 0.45 above (from memory, not verified); measure your own',
    ),
    rule: optional(
      choice(['K factor', 'printed rule'], {
        says: 'by a K factor, or by the printed rule for aircraft sheet, which has its own',
      }),
      'K factor',
      'a K factor can be measured on a test bend',
    ),
  },
  formula: [
    String.raw`A = \theta \times (\mathrm{radius} + \mathrm{k} \times \mathrm{thickness}), \quad \theta = \frac{\pi}{180} \times \mathrm{angle} \quad \text{(allowance, K factor)}`,
    String.raw`A = \mathrm{angle} \times (0.0173 \times \mathrm{radius} + 0.0078 \times \mathrm{thickness}) \quad \text{(allowance, printed rule)}`,
    String.raw`S = (\mathrm{radius} + \mathrm{thickness}) \tan\frac{\mathrm{angle}}{2} \quad \text{(set-back)}`,
    String.raw`\text{deduction} = 2 S - A`,
  ],
  work: ({ angle, radius, thickness, what, k, rule }) => {
    const factor = k ?? startingK(radius, thickness);
    const bent = bend(angle, radius, thickness, rule === 'K factor' ? { by: rule, k: factor } : { by: rule });
    return done({ ...bent, factor, asked: askedOf(bent, what) });
  },
  result: ({ asked }) => asked,
  steps: (bent, { angle, radius, thickness, what, k, rule }) => {
    const [a, r, t] = [angle, radius, thickness].map((one) => figure(one, 4));
    const allowance: Step =
      rule === 'K factor'
        ? {
            label: 'Bend allowance',
            sum: `${a}° × π ÷ 180 × (${r} + ${figure(bent.factor, 4)} × ${t})`,
            value: bent.allowance,
            unit: 'in',
            source: 'geometry',
          }
        : {
            label: 'Bend allowance by the printed rule',
            sum: `${a} × (${printedRule.perRadius} × ${r} + ${printedRule.perThickness} × ${t})`,
            value: bent.allowance,
            unit: 'in',
            source: 'navy-structural-course',
          };
    const setBack: Step = {
      label: 'Set-back',
      sum: `(${r} + ${t}) × tan(${a}° ÷ 2)`,
      value: bent.setBack,
      unit: 'in',
      source: 'airframe-handbook',
    };
    const deduction: Step = {
      label: 'Bend deduction',
      sum: `2 × ${figure(bent.setBack, 4)} − ${figure(bent.allowance, 4)}`,
      value: bent.deduction,
      unit: 'in',
      source: 'geometry',
    };
    const factor: readonly Step[] =
      rule === 'K factor' && k === null
        ? [
            {
              label: 'K factor to start from',
              sum: '',
              value: bent.factor,
              unit: 'ratio',
              source: 'bend-factor',
            },
          ]
        : [];
    if (what === 'allowance') return [...factor, setBack, allowance];
    return what === 'deduction'
      ? [...factor, allowance, setBack, deduction]
      : [...factor, allowance, setBack];
  },
  drawing: ({ factor, ...bent }, { angle, radius, thickness, rule }) =>
    bendDrawing(bent, angle, [
      `${figure(angle, 2)}°, inside radius ${figure(radius, 4)} in`,
      `sheet ${figure(thickness, 4)} in, ${rule === 'K factor' ? `K ${figure(factor, 3)}` : rule}`,
    ]),
  cautions: (_, { k, rule }) => [
    ...cutting,
    testBlank,
    ...(k === null && rule === 'K factor'
      ? [
          {
            level: 'look',
            sentence:
              'No K factor was given, so one to start from is used, from memory and not verified. Bend a test strip, measure it and type your own.',
            source: 'bend-factor',
          } as const,
        ]
      : []),
  ],
  sources: ['geometry', 'airframe-handbook'],
  examples: [
    {
      says: 'a square bend in 24 ga, radius as the thickness, K 0.33',
      given: { angle: 90, radius: 0.0276, thickness: 0.0276, k: 0.33 },
      gives: 0.0577,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'what comes off the outside sizes for a bend of 45° in 20 ga',
      given: { angle: 45, radius: 0.0625, thickness: 0.0396, what: 'deduction', k: 0.4 },
      gives: 0.0231,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the set-back of a square bend',
      given: { angle: 90, radius: 0.16, thickness: 0.04, what: 'set-back' },
      gives: 0.2,
      tolerance: 0.000001,
      source: 'airframe-handbook',
    },
  ],
});

function askedOf(bent: Bend, what: 'allowance' | 'deduction' | 'set-back') {
  if (what === 'allowance') return bent.allowance;
  return what === 'deduction' ? bent.deduction : bent.setBack;
}

/** The bent edge, magnified: two flanks of equal length and an arc that turns through the angle. */
function bendDrawing(bent: Bend, angle: number, of: readonly string[]): Drawing {
  const turn = (angle * Math.PI) / 180;
  const [inner, sheet, flank, corner] = [26, 14, 70, { x: 130, y: 78 }];
  const along = (radius: number): readonly Point[] => [
    { x: corner.x - flank, y: corner.y + inner - radius },
    ...Array.from({ length: 25 }, (_, index) => {
      const at = (turn * index) / 24;
      return {
        x: corner.x + radius * Math.sin(at),
        y: corner.y + inner - radius * Math.cos(at),
      };
    }),
    {
      x: corner.x + radius * Math.sin(turn) + flank * Math.cos(turn),
      y: corner.y + inner - radius * Math.cos(turn) + flank * Math.sin(turn),
    },
  ];
  const outside = along(inner + sheet);
  const inside = along(inner);
  const line = (at: number) => {
    const ends = [inside[at], outside[at]].filter((point) => point !== undefined);
    return { type: 'outline', points: ends, closed: false, role: 'bend' } as const;
  };
  const texts = [
    `allowance ${figure(bent.allowance, 4)} in, between the dashed lines`,
    `set-back ${figure(bent.setBack, 4)} in`,
    `deduction ${figure(inches(bent.deduction), 4)} in`,
  ];
  return {
    title: `A bend of ${figure(angle, 2)}°`,
    describes: `The edge of a bent sheet: ${[...of, ...texts].join('; ')}.`,
    height: 290,
    marks: [
      ...of.map(
        (text, index) =>
          ({ type: 'label', at: { x: 24, y: 22 + 18 * index }, text, anchor: 'start' }) as const,
      ),
      { type: 'outline', points: [...outside, ...[...inside].reverse()], closed: true, role: 'metal' },
      line(1),
      line(25),
      ...texts.map(
        (text, index) =>
          ({ type: 'label', at: { x: 24, y: 234 + 20 * index }, text, anchor: 'start' }) as const,
      ),
    ],
  };
}
