import { done } from '../../base/outcome.ts';
import { type ToBuy, toBuy, wasteMeanings } from '../../trade/price/material.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount } from '../say.ts';
import type { Caution, Step } from '../working.ts';

export const neededArgument = quantity('ratio', {
  says: 'what the job needs, in whatever unit it is bought by: pounds, square feet, feet, pieces',
  least: 0,
  most: 100_000_000,
  why: 'no job of a shop needs a hundred million of anything',
});

/** The two arguments that say what is spoiled, and the one that says what it is sold by. */
export const wasteArguments = {
  waste: optional(
    quantity('percent', {
      says: 'the waste: 10 % is 0.1',
      least: 0,
      most: 0.95,
      why: 'past 95 % nearly nothing would be left to use',
    }),
    0.1,
    'a textbook of 1921 adds 10 %; 10 to 20 % is remembered for sheet metal, so use your own',
  ),
  waste_is: optional(
    choice(wasteMeanings, {
      says: 'what the waste is a share of: "added" to what the job needs, or the share "of bought" material that is lost',
    }),
    'added',
    'estimators mostly add it on top; a scrap bin measures the other',
  ),
  pack: optional<number | null>(
    quantity('ratio', {
      says: 'how much comes in one sheet, length, carton or bundle; blank where any amount can be bought',
      least: 0.01,
      most: 1_000_000,
      why: 'a pack holds something, and not a million of it',
    }),
    null,
    'metal is mostly priced by the pound; whole sheets need their own size here',
  ),
};

export const wasteFormula = String.raw`\text{with waste} = \text{needed} \times (1 + \text{waste}) \text{ (added)}, \quad \frac{\text{needed}}{1 - \text{waste}} \text{ (of bought)}`;

/** What to buy, in the unit of what is needed, or in whole packs. Source: arithmetic. */
export const priceBuy = defineFunction({
  name: 'PRICE.BUY',
  says: 'How much material to buy for what a job needs: with waste, and up to whole sheets or packs.',
  words: ['waste', 'how much to order', 'sheets to buy', 'scrap', 'order quantity', 'takeoff to order'],
  gives: { label: 'To buy', unit: 'ratio', orUnits: ['count'] },
  unitOf: ({ what }) => (what === 'packs' ? 'count' : 'ratio'),
  arguments: {
    needed: neededArgument,
    ...wasteArguments,
    what: optional(
      choice(['amount', 'packs'], {
        says: 'the amount, in the unit of what is needed, or the number of packs',
      }),
      'amount',
      'prices are mostly by the amount',
    ),
  },
  formula: [
    wasteFormula,
    String.raw`\text{packs} = \left\lceil \frac{\text{with waste}}{\text{pack}} \right\rceil, \quad \text{amount} = \text{packs} \times \text{pack}`,
  ],
  work: ({ needed, waste, waste_is, pack, what }) => {
    const buy = toBuy(needed, waste, waste_is, pack);
    return done({ ...buy, asked: what === 'packs' ? (buy.packs ?? buy.bought) : buy.bought });
  },
  result: ({ asked }) => asked,
  steps: (buy, given): readonly Step[] => [
    ...buySteps(buy, given),
    {
      label: 'To buy',
      sum: given.what === 'packs' && buy.packs !== null ? `packs of ${figure(given.pack ?? 0, 4)}` : '',
      value: buy.asked,
      unit: given.what === 'packs' ? 'count' : 'ratio',
    },
  ],
  drawing: (buy, { needed, pack }) => ({
    title: 'Needed and bought',
    describes: `The job needs ${figure(needed, 2)}; ${figure(buy.bought, 2)} is bought${buy.packs === null ? '' : `, in ${sayCount(buy.packs, 'pack')} of ${figure(pack ?? 0, 4)}`}.`,
    height: 116,
    marks: [
      bar(20, 34, 66, buy.bought === 0 ? 1 : needed / buy.bought, 'metal'),
      bar(20, 34, 66, 1, 'lap'),
      {
        type: 'measure',
        from: { x: 20, y: 24 },
        to: { x: 340, y: 24 },
        text: `bought ${figure(buy.bought, 2)}`,
      },
      { type: 'label', at: { x: 20, y: 90 }, text: `needed ${figure(needed, 2)}`, anchor: 'start' },
      {
        type: 'label',
        at: { x: 340, y: 108 },
        text: buy.packs === null ? 'any amount' : sayCount(buy.packs, 'pack'),
        anchor: 'end',
      },
    ],
  }),
  cautions: (buy, { waste, waste_is, what, pack }): readonly Caution[] => [
    wasteMeaning,
    ...(what === 'packs' && pack === null
      ? [
          {
            level: 'look',
            sentence: 'No pack is given, so the amount itself is shown and not a number of packs.',
          } as const,
        ]
      : []),
    ...(waste_is === 'of bought' && waste > 0.5
      ? [
          {
            level: 'look',
            sentence: `More than half of ${figure(buy.withWaste, 2)} would be thrown away. Check the waste.`,
          } as const,
        ]
      : []),
  ],
  sources: ['price-arithmetic', 'waste-from-memory'],
  examples: [
    { says: '480 lb with 15 % added', given: { needed: 480, waste: 0.15 }, gives: 552, tolerance: 1e-9 },
    {
      says: '480 lb where 15 % of what is bought is lost',
      given: { needed: 480, waste: 0.15, waste_is: 'of bought' },
      gives: 564.7059,
      tolerance: 0.0001,
    },
    {
      says: 'sheets of 40 sq ft for 236 sq ft that fit without waste',
      given: { needed: 236, waste: 0, pack: 40, what: 'packs' },
      gives: 6,
    },
  ],
});

export const wasteMeaning: Caution = {
  level: 'care',
  sentence:
    'Waste has two meanings, and 15 % is not the same in both: 552 or 564.7 lb for 480 lb. Seams, joints, hangers and drop are counted once only, here or in the blank.',
  source: 'price-arithmetic',
};

interface WasteGiven {
  readonly needed: number;
  readonly waste: number;
  readonly waste_is: 'added' | 'of bought';
  readonly pack: number | null;
}

export function buySteps(buy: ToBuy, { needed, waste, waste_is, pack }: WasteGiven): readonly Step[] {
  return [
    {
      label: 'With waste',
      sum:
        waste_is === 'added'
          ? `${figure(needed, 4)} × (1 + ${figure(waste, 4)})`
          : `${figure(needed, 4)} ÷ (1 − ${figure(waste, 4)})`,
      value: buy.withWaste,
      unit: 'ratio',
      source: 'price-arithmetic',
    },
    ...(buy.packs === null || pack === null
      ? []
      : [
          {
            label: 'Whole packs',
            sum: `${figure(buy.withWaste, 4)} ÷ ${figure(pack, 4)}, up to whole ones`,
            value: buy.packs,
            unit: 'count',
          } as const,
          {
            label: 'In them',
            sum: `${figure(buy.packs)} × ${figure(pack, 4)}`,
            value: buy.bought,
            unit: 'ratio',
          } as const,
        ]),
  ];
}

function bar(left: number, top: number, bottom: number, part: number, role: 'metal' | 'lap') {
  const right = left + 320 * part;
  return {
    type: 'outline',
    closed: true,
    role,
    points: [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ],
  } as const;
}
