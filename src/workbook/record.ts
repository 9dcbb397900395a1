import { done, failed, type Outcome } from '../base/outcome.ts';
import { type SheetValues, writeBands } from './bands.ts';
import type { Row, Sheet } from './document.ts';
import { joinSheets, type KeptWorkbook, readStoredForm, storedNames } from './file.ts';
import type { FileFault } from './file-fault.ts';
import { newestVersion } from './migrations.ts';
import { cellReader, readValue } from './read-cell.ts';
import { type WorkbookRecord, workbookRecord } from './schema.ts';
import type { Values } from './values.ts';

/** Rows are never altered, so each is written once, and one that was read as it stands need not be written at all. */
const texts = new WeakMap<Row, string>();

/** A workbook as a record of a database: the same as in its file, but each row is one text, which a database takes and
 *  gives back twenty times sooner than the row's cells, and the values stand as they are in memory. */
export function recordOf({ workbook, values }: KeptWorkbook): WorkbookRecord {
  return {
    stretchout: newestVersion,
    workbook: {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({ ...sheet, rows: sheet.rows.map(textOf) })),
      names: storedNames(workbook),
    } as unknown as WorkbookRecord['workbook'], // the same fields, readonly in memory
    values: new Map([...values].map(([sheet, own]) => [sheet, new Map(own)])),
  };
}

/** Reads a record; one from the time before rows were texts is read as a file is. */
export function readRecord(data: unknown): Outcome<KeptWorkbook, FileFault> {
  if (!hasRows(data)) return readStoredForm(data);
  const parsed = workbookRecord.safeParse(data);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failed({ code: 'wrong_shape', place: issue?.path.join(' › ') ?? '', says: issue?.message ?? '' });
  }
  const readRow = rowReader();
  const sheets: Sheet[] = [];
  for (const { rows, ...rest } of parsed.data.workbook.sheets) {
    const own: Row[] = [];
    for (const [at, text] of rows.entries()) {
      const row = readRow(text);
      if (!row) return misshapen(`${rest.name} › ${at + 1}`, 'this row holds something that is no cell');
      own.push(row);
    }
    sheets.push({ ...rest, rows: own } as Sheet); // optional fields are absent, never undefined
  }
  const workbook = joinSheets(parsed.data.workbook, sheets);
  if (!workbook.ok) return workbook;
  const values = readValues(parsed.data.values);
  return values ? done({ workbook: workbook.value, values }) : misshapen('values', 'one of them is no value');
}

function textOf(row: Row): string {
  const known = texts.get(row) ?? JSON.stringify(row);
  texts.set(row, known);
  return known;
}

function rowReader(): (text: string) => Row | null {
  const readCell = cellReader();
  return (text) => {
    let cells: unknown;
    try {
      cells = JSON.parse(text);
    } catch {
      return null;
    }
    if (!Array.isArray(cells) || cells.length > columnsAtMost) return null;
    const row = cells.map(readCell);
    if (!isRow(row)) return null;
    texts.set(row, text);
    return row;
  };
}

const columnsAtMost = 702;

function isRow(cells: readonly (Row[number] | undefined)[]): cells is Row {
  return !cells.includes(undefined);
}

function readValues(stored: ReadonlyMap<string, unknown>): Values | null {
  const values = new Map<string, SheetValues>();
  for (const [sheet, cells] of stored) {
    if (!(cells instanceof Map)) return null;
    const own = writeBands();
    for (const [key, data] of cells) {
      const value = readValue(data);
      if (!Number.isInteger(key) || key < 0 || value === undefined) return null;
      own.put(key, value);
    }
    values.set(sheet, own.done());
  }
  return values;
}

function misshapen(place: string, says: string): Outcome<never, FileFault> {
  return failed({ code: 'wrong_shape', place, says });
}

function hasRows(data: unknown): boolean {
  return typeof data === 'object' && data !== null && 'values' in data && data.values instanceof Map;
}
