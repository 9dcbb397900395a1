import { CellError, EmptyValue, type SimpleRangeValue } from 'hyperformula';
import type { CellBlock, CellValue } from '../base/value.ts';
import { faultOf } from './carried-fault.ts';

/** What passes between the engine and its functions; the package has no name for this type. */
export type InsideValue = SimpleRangeValue['data'][number][number];

/** A value from inside the engine, with all its digits. */
export function plainValue(inside: InsideValue): CellValue {
  if (inside === EmptyValue) return null;
  if (inside instanceof CellError) return faultOf(inside);
  if (typeof inside === 'number') return inside + 0; // no minus zero
  if (typeof inside === 'string' || typeof inside === 'boolean') return inside;
  return typeof inside === 'object' ? inside.val + 0 : null; // a number that carries its look, such as a percentage
}

export function plainBlock(inside: SimpleRangeValue): CellBlock {
  return inside.data.map((row) => row.map(plainValue));
}
