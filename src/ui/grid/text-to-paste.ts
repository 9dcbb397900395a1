import { units } from '../../base/unit.ts';
import type { Plain } from '../../base/value.ts';
import { digits } from '../../workbook/digits.ts';
import type { Cell } from '../../workbook/document.ts';

/** A value as an entry that the target reads as the very same measure: lengths with their mark, since a bare number may
 *  mean feet or millimetres there; a value of another unit with that unit, so that it is refused and not mistaken. */
export function textToPaste(value: Plain, source: Cell | null, target: Cell | null): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return value;
  const unit = source?.unit;
  if (unit === 'in') return `${digits(value)}″`;
  if (unit === 'ft') return `${digits(value)}′`;
  if (unit !== undefined && target?.unit !== undefined && unit !== target.unit) {
    return `${digits(value)} ${units[unit].label}`.trim();
  }
  return target?.unit === 'percent' ? `${digits(Number((value * 100).toPrecision(15)))} %` : digits(value);
}
