import { assertNever, done, failed, type Outcome } from '../base/outcome.ts';
import type { Workbook } from '../workbook/document.ts';
import { givenLabelled, optionNamed } from './columns.ts';
import { enterGiven, type GivenFault } from './enter-given.ts';
import { type Loss, lotOfType, type OtherUsual, otherUsuals } from './lot-of-type.ts';
import {
  freeName,
  isSameName,
  type Lot,
  type LotTable,
  longestLotName,
  longestRemark,
  mostLots,
  mostTypes,
  typeName,
  typeNamed,
} from './lot-table.ts';

/** What a person can do to a lot table. Lots are told by their place in it. */
export type LotCommand =
  | { readonly type: 'retitle'; readonly title: string }
  /** A new lot of a type, with nothing said of it yet; under all others, or at a place among them. */
  | { readonly type: 'add_lot'; readonly house: string; readonly name?: string; readonly at?: number }
  | { readonly type: 'copy_lot'; readonly at: number }
  | { readonly type: 'remove_lots'; readonly at: number; readonly count: number }
  | { readonly type: 'move_lot'; readonly from: number; readonly to: number }
  | { readonly type: 'name_lot'; readonly at: number; readonly name: string }
  | { readonly type: 'set_type'; readonly at: number; readonly house: string }
  /** Null: as is usual. */
  | { readonly type: 'choose'; readonly at: number; readonly option: string; readonly choice: string | null }
  /** An empty entry leaves the given to the type and its options. */
  | { readonly type: 'override'; readonly at: number; readonly label: string; readonly typed: string }
  | { readonly type: 'remark'; readonly at: number; readonly remark: string }
  | { readonly type: 'add_type'; readonly workbook: Workbook }
  /** What lots say that the new one does not know is dropped, if that is agreed to. */
  | {
      readonly type: 'replace_type';
      readonly house: string;
      readonly workbook: Workbook;
      readonly drops: boolean;
    }
  | { readonly type: 'remove_type'; readonly house: string }
  /** Lots that have been read from a file, under those that are there or in their place. */
  | {
      readonly type: 'bring_in';
      readonly lots: readonly Lot[];
      readonly instead: boolean;
      readonly file: string;
    };

export type LotCommandFault =
  | { readonly code: 'no_title' }
  | { readonly code: 'no_such_lot' }
  | { readonly code: 'no_lot_name' }
  | { readonly code: 'lot_name_taken'; readonly name: string }
  | { readonly code: 'too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'too_many_lots'; readonly got: number; readonly most: number }
  | { readonly code: 'no_such_type'; readonly name: string; readonly known: readonly string[] }
  | { readonly code: 'no_such_option'; readonly name: string; readonly type: string }
  | { readonly code: 'not_a_choice'; readonly typed: string; readonly choices: readonly string[] }
  | { readonly code: 'no_such_given'; readonly name: string; readonly type: string }
  | GivenFault
  | { readonly code: 'not_a_house_type'; readonly title: string }
  | { readonly code: 'type_taken'; readonly name: string }
  | { readonly code: 'type_in_use'; readonly name: string; readonly lots: readonly string[] }
  | { readonly code: 'too_many_types'; readonly most: number }
  | {
      readonly code: 'replacing_loses';
      readonly name: string;
      readonly losses: readonly Loss[];
      readonly usuals: readonly OtherUsual[];
    };

/** The table after a command, or why it is refused; then nothing has changed. */
export function runLotCommand(table: LotTable, command: LotCommand): Outcome<LotTable, LotCommandFault> {
  switch (command.type) {
    case 'retitle': {
      const title = command.title.trim();
      if (title === '') return failed({ code: 'no_title' });
      return title.length > 120
        ? failed({ code: 'too_long', got: title.length, most: 120 })
        : done({ ...table, title });
    }
    case 'add_lot':
      return addLot(table, command);
    case 'copy_lot': {
      const lot = table.rows[command.at];
      if (!lot) return failed({ code: 'no_such_lot' });
      const name = freeName(lot.name, namesOf(table));
      return withRows(table, table.rows.toSpliced(command.at + 1, 0, { ...lot, name }));
    }
    case 'remove_lots':
      if (!table.rows[command.at]) return failed({ code: 'no_such_lot' });
      return done({ ...table, rows: table.rows.toSpliced(command.at, command.count) });
    case 'move_lot': {
      const lot = table.rows[command.from];
      if (!lot || !table.rows[command.to]) return failed({ code: 'no_such_lot' });
      return done({ ...table, rows: table.rows.toSpliced(command.from, 1).toSpliced(command.to, 0, lot) });
    }
    case 'add_type':
      return addType(table, command.workbook);
    case 'replace_type':
      return replaceType(table, command);
    case 'remove_type': {
      const type = typeNamed(table, command.house);
      if (!type) return failed(noSuchType(table, command.house));
      const name = typeName(type);
      const lots = table.rows.filter((lot) => isSameName(lot.type, name)).map((lot) => lot.name);
      if (lots.length > 0) return failed({ code: 'type_in_use', name, lots });
      return done({ ...table, types: table.types.filter((one) => one !== type) });
    }
    case 'bring_in':
      return withRows(table, command.instead ? command.lots : [...table.rows, ...command.lots]);
    default:
      return changeLot(table, command);
  }
}

type OneLotCommand = Extract<
  LotCommand,
  { readonly type: 'name_lot' | 'set_type' | 'choose' | 'override' | 'remark' }
>;

function changeLot(table: LotTable, command: OneLotCommand): Outcome<LotTable, LotCommandFault> {
  const lot = table.rows[command.at];
  if (!lot) return failed({ code: 'no_such_lot' });
  const changed = changedLot(table, lot, command);
  if (!changed.ok) return changed;
  if (JSON.stringify(changed.value) === JSON.stringify(lot)) return done(table);
  return withRows(table, table.rows.with(command.at, changed.value));
}

function changedLot(table: LotTable, lot: Lot, command: OneLotCommand): Outcome<Lot, LotCommandFault> {
  switch (command.type) {
    case 'name_lot':
      return done({ ...lot, name: command.name.trim() });
    case 'remark': {
      const { remark: _, ...others } = lot;
      const remark = command.remark.trim();
      if (remark.length > longestRemark) {
        return failed({ code: 'too_long', got: remark.length, most: longestRemark });
      }
      return done(remark === '' ? others : { ...others, remark });
    }
    case 'set_type': {
      const type = typeNamed(table, command.house);
      if (!type) return failed(noSuchType(table, command.house));
      return done(lotOfType(lot, typeNamed(table, lot.type), type).lot);
    }
    case 'choose': {
      const type = typeNamed(table, lot.type);
      if (!type) return failed(noSuchType(table, lot.type));
      const option = optionNamed(type, command.option);
      if (!option) return failed({ code: 'no_such_option', name: command.option, type: lot.type });
      const { [option.name]: _, ...others } = lot.options;
      const typed = command.choice?.trim() ?? '';
      if (typed === '') return done({ ...lot, options: others });
      const choices = option.choices.map(({ name }) => name);
      const choice = choices.find((one) => isSameName(one, typed));
      if (choice === undefined) return failed({ code: 'not_a_choice', typed, choices });
      return done({ ...lot, options: { ...others, [option.name]: choice } });
    }
    case 'override': {
      const type = typeNamed(table, lot.type);
      if (!type) return failed(noSuchType(table, lot.type));
      const given = givenLabelled(type, command.label);
      if (!given) return failed({ code: 'no_such_given', name: command.label, type: lot.type });
      const entered = enterGiven(given, command.typed);
      if (!entered.ok) return entered;
      const { [given.place]: _, ...others } = lot.overrides;
      if (entered.value === null) return done({ ...lot, overrides: others });
      return done({ ...lot, overrides: { ...others, [given.place]: entered.value } });
    }
    default:
      return assertNever(command);
  }
}

function addLot(
  table: LotTable,
  { house, name, at = table.rows.length }: Extract<LotCommand, { type: 'add_lot' }>,
): Outcome<LotTable, LotCommandFault> {
  const type = typeNamed(table, house);
  if (!type) return failed(noSuchType(table, house));
  const lot: Lot = {
    name: name?.trim() ?? freeName(table.rows.at(-1)?.name ?? 'Lot 1', namesOf(table)),
    type: typeName(type),
    options: {},
    overrides: {},
  };
  return withRows(table, table.rows.toSpliced(at, 0, lot));
}

/** Holds what must be true of all lots together. */
function withRows(table: LotTable, rows: readonly Lot[]): Outcome<LotTable, LotCommandFault> {
  if (rows.length > mostLots) return failed({ code: 'too_many_lots', got: rows.length, most: mostLots });
  const met = new Set<string>();
  for (const { name } of rows) {
    if (name === '') return failed({ code: 'no_lot_name' });
    if (name.length > longestLotName)
      return failed({ code: 'too_long', got: name.length, most: longestLotName });
    const key = name.trim().toLowerCase();
    if (met.has(key)) return failed({ code: 'lot_name_taken', name });
    met.add(key);
  }
  return done({ ...table, rows });
}

function addType(table: LotTable, workbook: Workbook): Outcome<LotTable, LotCommandFault> {
  const name = typeName(workbook);
  if (!isHouseType(workbook)) return failed({ code: 'not_a_house_type', title: workbook.title });
  if (typeNamed(table, name)) return failed({ code: 'type_taken', name });
  if (table.types.length >= mostTypes) return failed({ code: 'too_many_types', most: mostTypes });
  return done({ ...table, types: [...table.types, workbook] });
}

export function isHouseType(workbook: Workbook): boolean {
  return workbook.kind === 'template' && workbook.house !== undefined;
}

function replaceType(
  table: LotTable,
  { house, workbook, drops }: Extract<LotCommand, { type: 'replace_type' }>,
): Outcome<LotTable, LotCommandFault> {
  const old = typeNamed(table, house);
  if (!old) return failed(noSuchType(table, house));
  if (!isHouseType(workbook)) return failed({ code: 'not_a_house_type', title: workbook.title });
  const name = typeName(workbook);
  const namesake = typeNamed(table, name);
  if (namesake && namesake !== old) return failed({ code: 'type_taken', name });
  const losses: Loss[] = [];
  const usuals: OtherUsual[] = [];
  const rows = table.rows.map((lot) => {
    if (!isSameName(lot.type, typeName(old))) return lot;
    const turned = lotOfType(lot, old, workbook);
    losses.push(...turned.losses);
    usuals.push(...otherUsuals(lot, old, workbook));
    return turned.lot;
  });
  if (losses.length + usuals.length > 0 && !drops) {
    return failed({ code: 'replacing_loses', name, losses, usuals });
  }
  return done({ ...table, types: table.types.map((one) => (one === old ? workbook : one)), rows });
}

function namesOf({ rows }: LotTable): readonly string[] {
  return rows.map(({ name }) => name);
}

function noSuchType({ types }: LotTable, name: string): LotCommandFault {
  return { code: 'no_such_type', name, known: types.map(typeName) };
}
