import { digits } from './digits.ts';
import { type Cell, isFormula } from './document.ts';
import { readEntry } from './entry.ts';
import { showValue } from './show.ts';

/** What stands in the editor when a cell is opened: what was typed, or the content in a form that reads back to the
 *  very same content. */
export function textToEdit(cell: Cell | null): string {
  if (!cell || cell.content === null) return '';
  const { content, typed } = cell;
  if (isFormula(content)) return `=${content.formula}`;
  if (typeof content === 'boolean') return content ? 'TRUE' : 'FALSE';
  if (typeof content === 'string') return content;
  const plain = digits(content);
  const ways = [
    ...(typed === undefined ? [] : [typed]),
    showValue(content, cell.unit, cell.format).text.replace(/^(-?[\d,]+\.?\d*)$/, (bare) =>
      bare.replaceAll(',', ''),
    ),
    plain,
    `${digits(Number((content * 100).toPrecision(12)))} %`,
    // A bare number is taken in the cell's own way, which may be millimetres; with its mark it cannot be mistaken.
    cell.unit === 'ft' ? `${plain}′` : `${plain}″`,
  ];
  return ways.find((way) => isSame(readsAs(way, cell), content)) ?? plain;
}

function readsAs(text: string, cell: Cell): unknown {
  const entry = readEntry(text, withoutLimits(cell));
  return entry.ok ? entry.value.content : undefined;
}

/** What stands in the cell may have come from a formula or a file, past what the question takes now. */
function withoutLimits({ question: _question, ...cell }: Cell): Cell {
  return cell;
}

/** Apart by no more than the last binary places that a change of unit may cost. */
function isSame(read: unknown, content: number): boolean {
  return typeof read === 'number' && Math.abs(read - content) <= Math.abs(content) * 1e-12;
}
