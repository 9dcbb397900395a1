import type { Line } from '../form.ts';
import { length } from './lines.ts';

/** When a flat side is stiffened so that it does not drum. */
export const crossBreaks: readonly Line[] = [
  length(
    'cross_break_over',
    'Cross-break sides over',
    10,
    'From which width are flat sides cross-broken or beaded, so that they do not drum?',
    { least: 2, most: 120, why: 'it is a width of duct' },
    'one specification: sides over 10 in',
  ),
];
