import { type Cell, isFormula } from '../../workbook/document.ts';
import { readEntry } from '../../workbook/entry.ts';
import { showValue } from '../../workbook/show.ts';

/** What stands in the editor when a cell is opened: what was typed, or the content in a form that reads back to the
 *  very same content. */
export function textToEdit(cell: Cell | null): string {
  if (!cell || cell.content === null) return '';
  const { content, typed } = cell;
  if (isFormula(content)) return `=${content.formula}`;
  if (typed !== undefined) return typed;
  if (typeof content === 'boolean') return content ? 'TRUE' : 'FALSE';
  if (typeof content === 'string') return content;
  const ways = [
    showValue(content, cell.unit, cell.format).text,
    `${Number((content * 100).toPrecision(12))} %`,
    `${content}″`,
    String(content),
  ];
  return ways.find((way) => readsAs(way, cell) === content) ?? String(content);
}

function readsAs(text: string, cell: Cell): unknown {
  const entry = readEntry(text, cell);
  return entry.ok ? entry.value.content : undefined;
}
