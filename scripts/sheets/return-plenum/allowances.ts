import { returnAir } from '../allowances/air-limits.ts';
import { tapeWaste } from '../allowances/facing.ts';
import { fastenerWaste, screws } from '../allowances/fasteners.ts';
import { metalSeal } from '../allowances/metal-seal.ts';
import { flexReturns, plenumEdges } from '../allowances/plenum-edges.ts';
import { rectangularSeamSizes } from '../allowances/rectangular-seams.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { stock } from '../allowances/stock.ts';
import { metalHoles } from '../allowances/tap-cutouts.ts';
import { tapScrews } from '../allowances/taps.ts';

export const allowances = allowancesSheet({
  wraps: false,
  groups: [
    returnAir,
    stock,
    plenumEdges,
    rectangularSeamSizes,
    flexReturns,
    metalSeal,
    tapeWaste,
    metalHoles,
    tapScrews,
    screws,
    fastenerWaste,
  ],
});
