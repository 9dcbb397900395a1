import { type CellRange, writeRange } from '../base/address.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { cellAt, sheetWithId } from '../workbook/cells.ts';
import { readCheck } from '../workbook/check.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { showValue } from '../workbook/show.ts';
import { shownValue, standingOf } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';
import { refusal } from './answer.ts';
import type { Command } from './command.ts';
import { figured } from './figured-workbook.ts';
import { columns, fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';

/** The name of the block that holds what is to be ordered. */
const orderName = 'order';

interface OrderLine {
  readonly item: string;
  readonly quantity: string;
  readonly unit: string;
  /** Why there is no quantity. */
  readonly fault: string | null;
}

export const takeoff: Command = {
  name: 'takeoff',
  form: 'takeoff FILE',
  says: 'Prints the order quantities of a workbook.',
  tells: [
    `They stand in the block of cells named “${orderName}”: a row of headings, then one row for each thing to buy, with what it is, how many and of what in its first three columns. Rows without a quantity, or with 0, are left out. A row with a check in place of a quantity is printed under the others when it does not hold.`,
    'The shell gets 1 when a quantity has no figure, or a check of the workbook says stop.',
  ],
  run: async (words) => {
    const read = readWords(words, []);
    if (!read.ok) return refusal(read.fault);
    const [path, ...more] = read.value.plain;
    if (path === undefined || more.length > 0) {
      return refusal(`One file is wanted. Write: stretchout ${takeoff.form}`);
    }
    const opened = await openFile(path);
    if (!opened.ok) return refusal(opened.fault);
    const { workbook, values } = await figured(opened.value.workbook);
    const order = orderOf(workbook);
    if (!order) {
      return refusal(
        `This workbook has no order: no block of cells in it is named “${orderName}”. Name one, with what it is, how many and of what in its first three columns.`,
      );
    }
    const lines = orderLines(order.sheet, order.range, values);
    const warnings = orderWarnings(order.sheet, order.range, values);
    const stops = workbook.sheets.reduce((sum, sheet) => sum + standingOf(sheet, values).stops, 0);
    const place = `from ${order.sheet.name}!${writeRange(order.range)}`;
    const parts = [`To order for ${workbook.title}\n${place}`, writeLines(lines), ...warnings];
    if (stops > 0) {
      const what = stops === 1 ? '1 cell of this workbook says' : `${stops} cells of this workbook say`;
      parts.push(fold(`${what} stop. Do not order yet: see “stretchout check” first.`));
    }
    return { text: parts.join('\n\n'), exit: stops > 0 || lines.some((line) => line.fault) ? 1 : 0 };
  },
};

function orderOf(workbook: Workbook): { readonly sheet: Sheet; readonly range: CellRange } | null {
  const name = Object.keys(workbook.names).find((one) => one.toLowerCase() === orderName);
  const named = name === undefined ? undefined : workbook.names[name];
  const sheet = named ? sheetWithId(workbook, named.sheet) : undefined;
  return named && sheet ? { sheet, range: named.range } : null;
}

function orderLines(sheet: Sheet, { from, to }: CellRange, values: Values): readonly OrderLine[] {
  const lines: OrderLine[] = [];
  for (let row = from.row + 1; row <= to.row; row += 1) {
    const read = (column: number) => {
      const address = { row, column: from.column + column };
      const cell = cellAt(sheet, address);
      return { cell, value: shownValue(sheet, address, cell, values) };
    };
    const [item, quantity, unit] = [read(0), read(1), read(2)];
    if (quantity.cell?.role === 'check' || isNothing(quantity.value)) continue;
    const { cell, value } = quantity;
    lines.push({
      item: showValue(item.value).text,
      quantity: showValue(value, cell?.unit, cell?.format).text,
      unit: showValue(unit.value).text,
      fault: isFault(value) ? value.sentence : null,
    });
  }
  return lines;
}

/** What the checks of the order say of it, such as which piece it is without. */
function orderWarnings(sheet: Sheet, { from, to }: CellRange, values: Values): readonly string[] {
  const warnings: string[] = [];
  for (let row = from.row + 1; row <= to.row; row += 1) {
    const address = { row, column: from.column + 1 };
    const cell = cellAt(sheet, address);
    if (cell?.role !== 'check') continue;
    const said = readCheck(shownValue(sheet, address, cell, values));
    if (said && said.verdict !== 'holds') warnings.push(fold(said.sentence, `${said.verdict}: `, '  '));
  }
  return warnings;
}

function isNothing(quantity: CellValue): boolean {
  return quantity === null || quantity === '' || quantity === 0;
}

function writeLines(lines: readonly OrderLine[]): string {
  if (lines.length === 0) return '  nothing to order';
  const widest = Math.max(...lines.map(({ quantity }) => quantity.length));
  const table = columns(lines.map(({ item, quantity, unit }) => [quantity.padStart(widest), unit, item]));
  const faults = lines.flatMap(({ item, fault }) =>
    fault === null ? [] : [fold(fault, `  ${item}: `, '    ')],
  );
  return [table, ...faults].join('\n');
}
