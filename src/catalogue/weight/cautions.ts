import type { Caution } from '../working.ts';

/** Whoever wants a weight is about to lift or hang it. */
export const lifting: readonly Caution[] = [
  {
    level: 'care',
    sentence:
      'Sheet edges cut: wear cut-resistant gloves and sleeves. Carry long sheets with two people, and not in wind.',
    source: 'sheet-shop-practice',
  },
];

/** A hung duct weighs more than its metal. */
export const hanging: Caution = {
  level: 'look',
  sentence:
    'Cleats, hangers, insulation and dampers are not in this weight. Hangers are for the local code and licensed practice to size.',
};
