import { units } from '../base/unit.ts';
import { isFault } from '../base/value.ts';
import { writeCsv } from '../workbook/csv.ts';
import { digits } from '../workbook/digits.ts';
import { showValue } from '../workbook/show.ts';
import { textToEdit } from '../workbook/text-to-edit.ts';
import { unarmed } from '../workbook/unarmed.ts';
import { givenLabelled, isSameResult, lotColumns, type ResultColumn, resultsOf } from './columns.ts';
import type { LotOutcome } from './figure-lots.ts';
import { choiceOf, lotGivens } from './lot-givens.ts';
import { type Lot, type LotTable, typeNamed } from './lot-table.ts';
import type { LotsOrder } from './order-of-all.ts';

/** The lots with all that they choose and fill in, be it usual, and what was figured. The left part can be
 *  brought in again: the lots come to the same then, and say all of it themselves. */
export function lotsAsCsv(table: LotTable, outcomes: readonly (LotOutcome | null)[]): string {
  const { options, givens, results } = lotColumns(table.types);
  const heads = ['Lot', 'House type', ...options, ...givens, 'Remark', ...results.map(headOf)];
  const rows = table.rows.map((lot, at) => {
    const type = typeNamed(table, lot.type);
    return [
      lot.name,
      lot.type,
      ...options.map((option) => (type && choiceOf(type, lot, option)) ?? ''),
      ...givens.map((label) => givenText(table, lot, label)),
      lot.remark ?? '',
      ...results.map((column) => resultText(table, lot, outcomes[at] ?? null, column)),
    ];
  });
  return asFile([heads, ...rows]);
}

export function orderAsCsv({ lines }: LotsOrder): string {
  const rows = lines.map(({ item, quantity, unit, lots }) => [
    item,
    digits(quantity),
    unit,
    lots.map((one) => `${one.lot}: ${digits(one.quantity)}`).join('; '),
  ]);
  return asFile([['What', 'How many', 'Of what', 'Lot by lot'], ...rows]);
}

function asFile(rows: readonly (readonly string[])[]): string {
  return `\uFEFF${writeCsv(rows.map((row) => row.map(unarmed)))}`;
}

/** `Wrap, sq ft` */
function headOf({ name, cell }: ResultColumn): string {
  const label = cell.unit && cell.unit !== 'percent' ? units[cell.unit].label : '';
  return label === '' || name.endsWith(label) ? name : `${name}, ${label}`;
}

/** In a form that reads back to the very same value. */
export function givenText(table: LotTable, lot: Lot, label: string): string {
  const type = typeNamed(table, lot.type);
  const given = type && givenLabelled(type, label);
  const value = given ? lotGivens(type, lot)[given.place] : undefined;
  if (!given || value === undefined) return '';
  const { typed: _, ...asked } = given.cell;
  return textToEdit({ ...asked, content: value });
}

function resultText(table: LotTable, lot: Lot, outcome: LotOutcome | null, column: ResultColumn): string {
  const type = typeNamed(table, lot.type);
  const index = type ? resultsOf(type).findIndex((one) => isSameResult(one, column)) : -1;
  if (outcome?.type !== 'figured' || index < 0) return '';
  const value = outcome.figures.results[index] ?? null;
  return typeof value === 'number' && !isFault(value)
    ? digits(value)
    : showValue(value, column.cell.unit, column.cell.format).text;
}
