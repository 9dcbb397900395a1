import { crossBreaks } from '../allowances/cross-breaks.ts';
import { ends } from '../allowances/ends.ts';
import { facingTape } from '../allowances/facing.ts';
import { fasteners } from '../allowances/fasteners.ts';
import { metalSeal } from '../allowances/metal-seal.ts';
import { pricesTable } from '../allowances/prices.ts';
import { rectangularLocks } from '../allowances/rectangular-seams.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { stock } from '../allowances/stock.ts';
import { metalHoles, wrapHoles } from '../allowances/tap-cutouts.ts';
import { tapFastening } from '../allowances/taps.ts';
import { wrapping } from '../allowances/wrap.ts';

export const allowances = allowancesSheet({
  wraps: true,
  groups: [
    wrapping,
    stock,
    rectangularLocks,
    crossBreaks,
    ends,
    metalSeal,
    facingTape,
    metalHoles,
    wrapHoles,
    tapFastening,
    fasteners,
  ],
  tables: [pricesTable],
});
