import { fittingEdges } from '../allowances/fitting-edges.ts';
import { bootSeam } from '../allowances/plenum-edges.ts';
import { lockSizes } from '../allowances/rectangular-seams.ts';
import { roundSeam } from '../allowances/round-seams.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { stockSheet } from '../allowances/stock.ts';

export const allowances = allowancesSheet({
  wraps: false,
  groups: [stockSheet, roundSeam, lockSizes, bootSeam, fittingEdges],
});
