import { done, failed, type Outcome } from '../base/outcome.ts';
import type { Workbook } from '../workbook/document.ts';
import { readFileData, readStoredForm, storedForm } from '../workbook/file.ts';
import type { FileFault } from '../workbook/file-fault.ts';
import { brokenSeal, type Seals, sealsOf } from '../workbook/seal.ts';
import { noValues } from '../workbook/values.ts';
import { isHouseType } from './commands.ts';
import { type LotTable, typeName, typeNamed } from './lot-table.ts';
import { type LotTableFile, lotTableFile, storedLots } from './schema.ts';

export const newestLotVersion = 1;

/** Why a lot table file is refused. Nothing of it has been taken over. */
export type LotFileFault =
  | FileFault
  | { readonly code: 'not_a_lot_table' }
  /** One of its house types cannot be read. */
  | { readonly code: 'broken_type'; readonly at: number; readonly fault: FileFault }
  | { readonly code: 'not_a_house_type'; readonly name: string }
  | { readonly code: 'type_twice'; readonly name: string }
  | { readonly code: 'lot_twice'; readonly name: string }
  | { readonly code: 'lot_without_type'; readonly lot: string; readonly type: string };

/** The stored form as plain data, for a database that takes objects. */
export function storedLotTable({ types, ...lots }: LotTable): LotTableFile {
  const seals = Object.fromEntries(
    types.flatMap((type) => {
      const own = lockSeals(type);
      return own ? [[typeName(type), own]] : [];
    }),
  );
  return {
    stretchoutLots: newestLotVersion,
    lots: lots as LotTableFile['lots'], // the same fields, readonly in memory
    types: types.map((workbook) => storedForm({ workbook, values: noValues })),
    ...(Object.keys(seals).length > 0 ? { seals } : {}),
  };
}

/** Text of a lot table file, indented so that two of them compare line by line. */
export function writeLotTableFile(table: LotTable): string {
  return `${JSON.stringify(storedLotTable(table), null, 1)}\n`;
}

export function readLotTableFile(text: string): Outcome<LotTable, LotFileFault> {
  const data = readFileData(text);
  return data.ok ? readStoredLotTable(data.value) : data;
}

/** Reads the stored form from data that is already parsed, such as a record of the database. */
export function readStoredLotTable(data: unknown): Outcome<LotTable, LotFileFault> {
  if (typeof data !== 'object' || data === null || !('stretchoutLots' in data)) {
    return failed({ code: 'not_a_lot_table' });
  }
  const version = data.stretchoutLots;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failed({ code: 'unknown_version', got: String(version) });
  }
  if (version > newestLotVersion) {
    return failed({ code: 'newer_version', got: version, newest: newestLotVersion });
  }
  const parsed = lotTableFile.safeParse(data);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failed({ code: 'wrong_shape', place: issue?.path.join(' › ') ?? '', says: issue?.message ?? '' });
  }
  const types: Workbook[] = [];
  for (const [at, stored] of parsed.data.types.entries()) {
    const type = readStoredForm(stored);
    if (!type.ok) return failed({ code: 'broken_type', at, fault: type.fault });
    types.push(type.value.workbook);
  }
  const { lots, seals = {} } = parsed.data;
  const table = byTheirNames({ ...lots, types } as LotTable); // optional fields are absent, never undefined
  const fault = togetherFault(table) ?? sealFault(table, seals);
  return fault ? failed(fault) : done(table);
}

/** A lot table from its lots as data that nobody has looked at yet, and types that have been read already. */
export function joinLotTable(lots: unknown, types: readonly Workbook[]): Outcome<LotTable, LotFileFault> {
  const parsed = storedLots.safeParse(lots);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failed({ code: 'wrong_shape', place: issue?.path.join(' › ') ?? '', says: issue?.message ?? '' });
  }
  const table = byTheirNames({ ...parsed.data, types } as LotTable); // optional fields are absent, never undefined
  const fault = togetherFault(table);
  return fault ? failed(fault) : done(table);
}

/** Each lot names its type the way the type itself does, whatever case the file has it in. */
function byTheirNames(table: LotTable): LotTable {
  return {
    ...table,
    rows: table.rows.map((lot) => {
      const type = typeNamed(table, lot.type);
      return type ? { ...lot, type: typeName(type) } : lot;
    }),
  };
}

/** What each part of a file may be by itself, and all of them together may not. */
function togetherFault(table: LotTable): LotFileFault | null {
  for (const [at, type] of table.types.entries()) {
    const name = typeName(type);
    if (!isHouseType(type)) return { code: 'not_a_house_type', name };
    if (typeNamed({ types: table.types.slice(0, at) }, name)) return { code: 'type_twice', name };
  }
  const met = new Set<string>();
  for (const { name, type } of table.rows) {
    const key = name.toLowerCase();
    if (met.has(key)) return { code: 'lot_twice', name };
    met.add(key);
    if (!typeNamed(table, type)) return { code: 'lot_without_type', lot: name, type };
  }
  return null;
}

function sealFault(table: LotTable, seals: { readonly [type: string]: Seals }): LotFileFault | null {
  for (const [at, type] of table.types.entries()) {
    const sheet = brokenSeal(asJob(type), seals[typeName(type)] ?? {});
    if (sheet !== null) return { code: 'broken_type', at, fault: { code: 'broken_seal', sheet } };
  }
  return null;
}

/** Each lot is a job from its type, so the locks of the type are sealed here as in a job's file. */
function lockSeals(type: Workbook): Seals | null {
  return sealsOf(asJob(type));
}

function asJob(type: Workbook): Workbook {
  return { ...type, kind: 'job' };
}
