import { ends } from '../allowances/ends.ts';
import { facingTape } from '../allowances/facing.ts';
import { fasteners } from '../allowances/fasteners.ts';
import { laborTable } from '../allowances/labor.ts';
import { metalSeal } from '../allowances/metal-seal.ts';
import { priceList } from '../allowances/price-list.ts';
import { rectangularSeams } from '../allowances/rectangular-seams.ts';
import { roundSeams } from '../allowances/round-seams.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { stock } from '../allowances/stock.ts';
import { tapFastening } from '../allowances/taps.ts';
import { wrapping } from '../allowances/wrap.ts';
import { hanging, sizing } from './sizing.ts';

export const houseAllowances = allowancesSheet({
  wraps: true,
  groups: [
    sizing,
    hanging,
    wrapping,
    stock,
    roundSeams,
    rectangularSeams,
    ends,
    metalSeal,
    facingTape,
    tapFastening,
    fasteners,
  ],
  tables: [laborTable, priceList],
});
