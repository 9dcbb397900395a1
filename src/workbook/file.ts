import { readAddress, writeAddress, writeRange } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { cellsOf } from './cells.ts';
import type { Cell, Sheet, Workbook } from './document.ts';
import type { FileFault } from './file-fault.ts';
import { bringUpToDate, newestVersion } from './migrations.ts';
import { placeKey, placeOfKey } from './place-key.ts';
import { liveValue } from './read-cell.ts';
import { type StoredWorkbook, type WorkbookFile, workbookFile } from './schema.ts';
import { brokenSeal, sealsOf } from './seal.ts';
import type { Values } from './values.ts';

/** A workbook on disk: the document and, beside it, the values as last figured. */
export interface KeptWorkbook {
  readonly workbook: Workbook;
  readonly values: Values;
}

/** A sheet of 26 columns by 20,000 rows makes a file of 48 MB, and what can be saved has to open again. */
export const largestFile = 49 * 1024 * 1024;

/** Text of a workbook file, indented so that two revisions compare line by line. */
export function writeWorkbookFile(kept: KeptWorkbook): string {
  return `${JSON.stringify(storedForm(kept), null, 1)}\n`;
}

/** The stored form as plain data, for a database that takes objects. */
export function storedForm({ workbook, values }: KeptWorkbook): WorkbookFile {
  const seals = sealsOf(workbook);
  return {
    stretchout: newestVersion,
    workbook: {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        id: sheet.id,
        name: sheet.name,
        says: sheet.says,
        columns: [...sheet.columns],
        ...(sheet.hiddenRows ? { hiddenRows: [...sheet.hiddenRows] } : {}),
        ...(sheet.frozen ? { frozen: sheet.frozen } : {}),
        cells: Object.fromEntries(
          [...cellsOf(sheet)].map(({ address, cell }) => [writeAddress(address), storedCell(cell)]),
        ),
      })),
      names: storedNames(workbook),
      examples: workbook.examples as WorkbookFile['workbook']['examples'], // readonly in memory, plain on disk
    } as StoredWorkbook, // the same fields, readonly in memory
    ...(seals ? { seals } : {}),
    values: Object.fromEntries(
      [...values].map(([sheet, cells]) => [
        sheet,
        Object.fromEntries([...cells].map(([key, value]) => [writeAddress(placeOfKey(key)), value])),
      ]),
    ),
  };
}

/** The names in order, each with its cells as text. */
export function storedNames({ names }: Workbook): StoredWorkbook['names'] {
  return Object.fromEntries(
    Object.entries(names)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, { sheet, range }]) => [name, { sheet, range: writeRange(range) }]),
  );
}

/** Reads the text of a workbook file of this or an earlier version. */
export function readWorkbookFile(text: string): Outcome<KeptWorkbook, FileFault> {
  const data = readFileData(text);
  return data.ok ? readStoredForm(data.value) : data;
}

/** The data in the text of a file, which nobody has looked at yet. */
export function readFileData(text: string): Outcome<unknown, FileFault> {
  if (text.length > largestFile) return failed({ code: 'too_large', got: text.length, most: largestFile });
  if (text.trim() === '') return failed({ code: 'empty' });
  if (/^(PK|%PDF|\uFFFD|<)/.test(text.trimStart())) return failed({ code: 'other_program' });
  let unsafeKey: string | undefined;
  let data: unknown;
  try {
    data = JSON.parse(text, (key, value) => {
      if (unsafeKeys.has(key)) unsafeKey = key;
      return value;
    });
  } catch (error) {
    return failed({ code: 'not_json', at: error instanceof Error ? error.message : '' });
  }
  if (unsafeKey !== undefined) return failed({ code: 'unsafe_key', key: unsafeKey });
  return done(data);
}

/** Reads the stored form from data that is already parsed, such as a record of the database. */
export function readStoredForm(data: unknown): Outcome<KeptWorkbook, FileFault> {
  const current = bringUpToDate(data);
  if (!current.ok) return current;
  const parsed = workbookFile.safeParse(current.value);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failed({ code: 'wrong_shape', place: issue?.path.join(' › ') ?? '', says: issue?.message ?? '' });
  }
  return liveForm(parsed.data);
}

const unsafeKeys = new Set(['__proto__', 'constructor', 'prototype']);

function liveForm(file: WorkbookFile): Outcome<KeptWorkbook, FileFault> {
  const tall = file.workbook.sheets.reduce((sum, sheet) => sum + heightOf(sheet), 0);
  if (tall > mostRows) {
    return failed({ code: 'wrong_shape', place: 'sheets', says: `${tall} rows in all, at most ${mostRows}` });
  }
  const workbook = joinSheets(file.workbook, file.workbook.sheets.map(liveSheet));
  if (!workbook.ok) return workbook;
  const broken = brokenSeal(workbook.value, file.seals ?? {});
  if (broken !== null) return failed({ code: 'broken_seal', sheet: broken });
  const values = new Map(
    Object.entries(file.values).map(([sheet, cells]) => [
      sheet,
      new Map(
        Object.entries(cells).flatMap(([address, value]) => {
          const place = readAddress(address);
          return place ? [[placeKey(place), liveValue(value)] as const] : [];
        }),
      ),
    ]),
  );
  return done({ workbook: workbook.value, values });
}

/** A workbook of sheets that have been read already, if they and its names go together. */
export function joinSheets(
  stored: Omit<StoredWorkbook, 'sheets'>,
  sheets: readonly Sheet[],
): Outcome<Workbook, FileFault> {
  const twice = sheets.find((sheet, index) => sheets.some((one, at) => at < index && clash(one, sheet)));
  if (twice) {
    return failed({
      code: 'wrong_shape',
      place: `sheets › ${twice.name}`,
      says: 'two sheets have this name or id',
    });
  }
  const names: Record<string, Workbook['names'][string]> = {};
  for (const [name, { sheet, range }] of Object.entries(stored.names)) {
    if (!sheets.some((one) => one.id === sheet)) {
      return failed({
        code: 'wrong_shape',
        place: `names › ${name}`,
        says: 'it points at a sheet that is not there',
      });
    }
    const [from = '', to = from] = range.split(':');
    const corner = { from: readAddress(from), to: readAddress(to) };
    if (corner.from && corner.to) names[name] = { sheet, range: { from: corner.from, to: corner.to } };
  }
  return done({ ...stored, sheets, names } as Workbook); // optional fields are absent, never undefined
}

/** Of all sheets together. A small file may name a cell far down on each of many sheets. */
const mostRows = 300_000;

function heightOf({ cells }: StoredWorkbook['sheets'][number]): number {
  return Object.keys(cells).reduce(
    (most, address) => Math.max(most, Number(address.replace(/^[A-Z]+/, ''))),
    0,
  );
}

function liveSheet(stored: StoredWorkbook['sheets'][number]): Sheet {
  const { cells, ...rest } = stored;
  const rows: (Cell | null)[][] = [];
  for (const [address, { content = null, ...other }] of Object.entries(cells)) {
    const place = readAddress(address);
    if (!place) continue;
    while (rows.length <= place.row) rows.push([]);
    const row = rows[place.row] ?? [];
    while (row.length <= place.column) row.push(null);
    row[place.column] = { content, ...other } as Cell; // optional fields are absent, never undefined
  }
  return { ...rest, rows } as Sheet; // optional fields are absent, never undefined
}

function storedCell({ content, ...other }: Cell): StoredWorkbook['sheets'][number]['cells'][string] {
  const stored = { ...other, ...(content === null ? {} : { content }) };
  return stored as StoredWorkbook['sheets'][number]['cells'][string]; // the same fields, readonly in memory
}

function clash(one: Sheet, other: Sheet): boolean {
  return one.id === other.id || one.name.toLowerCase() === other.name.toLowerCase();
}
