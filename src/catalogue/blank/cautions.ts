import type { Caution } from '../working.ts';

/** Whoever cuts a blank handles bare edges, and works at a shear. */
export const cutting: readonly Caution[] = [
  {
    level: 'care',
    sentence:
      'Sheared edges and burrs cut skin. Wear cut-resistant gloves and sleeves, but none near turning rolls and lock formers.',
    source: 'sheet-shop-practice',
  },
  {
    level: 'care',
    sentence: 'Keep hands clear of the blade and the hold-down of a shear, and leave its guard on.',
    source: 'machine-guard-rule',
  },
];

/** Seam allowances differ by machine, coil and gauge. */
export const testBlank: Caution = {
  level: 'look',
  sentence:
    'A lock former may pull more or less metal than its nominal seam. Form one test blank for each machine, coil and gauge before you cut the lot.',
  source: 'sheet-shop-practice',
};
