import { type CellBlock, type CellValue, isFault } from '../base/value.ts';
import { type Expression, everyPartOf } from '../formula/expression.ts';
import { showValue } from '../workbook/show.ts';
import type { Ask } from './ask.ts';

/** A formula with the values in place of its cells and names: `16 * 2 + 3`. Null where that would say nothing new. */
export async function sumOf(expression: Expression, formula: string, ask: Ask): Promise<string | null> {
  const references = [...everyPartOf(expression)].filter(
    (part) => part.type === 'cell' || part.type === 'name',
  );
  if (references.length === 0) return null;
  const values = await ask(references);
  let text = '';
  let at = 0;
  for (const [index, { from, to }] of references.entries()) {
    const value = values[index] ?? null;
    text += formula.slice(at, from) + (written(value) ?? formula.slice(from, to));
    at = to;
  }
  return text + formula.slice(at);
}

/** The value as a formula would have it; null for a block of cells. */
function written(value: CellValue | CellBlock): string | null {
  if (Array.isArray(value)) return null;
  const plain = value as CellValue; // not a block
  if (isFault(plain)) return 'no figure';
  if (plain === null) return 'blank';
  if (typeof plain === 'string') return `"${plain}"`;
  return showValue(plain).text;
}
