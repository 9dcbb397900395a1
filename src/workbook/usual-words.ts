import type { Argument } from '../catalogue/argument.ts';
import { showValue } from './show.ts';

/** What an argument is taken to be when it is left out, and why. */
export function usualWords({ usual, range }: Argument<unknown>): string {
  if (!usual) return 'must be there';
  const { value, why } = usual;
  if (value === null) return `blank: ${why}`;
  if (typeof value === 'number' && range) return `${showValue(value, range.unit).text}: ${why}`;
  return `${typeof value === 'string' ? `"${value}"` : String(value)}: ${why}`;
}
