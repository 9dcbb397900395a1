import { leakageLimits } from '../allowances/leakage-limits.ts';
import { allowancesSheet } from '../allowances/sheet.ts';

export const allowances = allowancesSheet({ wraps: false, groups: [leakageLimits] });
