import {
  givenLabelled,
  isSameResult,
  type LotColumns,
  optionNamed,
  type ResultColumn,
  resultsOf,
} from '../../lots/columns.ts';
import type { LotCommand } from '../../lots/commands.ts';
import { givenText } from '../../lots/csv-out.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import { choiceOf, lotGivens } from '../../lots/lot-givens.ts';
import { isSameName, type Lot, type LotTable, typeName, typeNamed } from '../../lots/lot-table.ts';
import { wordLeftOut } from '../../lots/wording.ts';
import { showValue } from '../../workbook/show.ts';
import { showResult, unitOver } from './result-show.ts';

/** A column of the lot table on the screen. */
export type GridColumn =
  | { readonly kind: 'name' }
  | { readonly kind: 'type' }
  | { readonly kind: 'option'; readonly name: string }
  | { readonly kind: 'given'; readonly label: string }
  | { readonly kind: 'state' }
  | { readonly kind: 'result'; readonly column: ResultColumn }
  | { readonly kind: 'remark' };

/** What comes of a lot stands right beside how it stands, in sight without moving; what it says follows. */
export function gridColumns({ options, givens, results }: LotColumns): readonly GridColumn[] {
  return [
    { kind: 'name' },
    { kind: 'type' },
    { kind: 'state' },
    ...results.map((column) => ({ kind: 'result', column }) as const),
    ...options.map((name) => ({ kind: 'option', name }) as const),
    ...givens.map((label) => ({ kind: 'given', label }) as const),
    { kind: 'remark' },
  ];
}

/** Which columns are in sight: what differs from lot to lot and what comes of it, the figures alone, or all there are. */
export type Sight = 'differs' | 'figures' | 'all';

export function columnsInSight(
  table: LotTable,
  columns: readonly GridColumn[],
  sight: Sight,
): readonly GridColumn[] {
  if (sight === 'all') return columns;
  return columns.filter((column) => {
    if (column.kind !== 'option' && column.kind !== 'given' && column.kind !== 'remark') return true;
    return sight === 'differs' && table.rows.some((lot) => saysOwn(table, lot, column));
  });
}

function saysOwn(table: LotTable, lot: Lot, column: GridColumn): boolean {
  const type = typeNamed(table, lot.type);
  if (column.kind === 'remark') return lot.remark !== undefined;
  if (column.kind === 'option') return Object.keys(lot.options).some((name) => isSameName(name, column.name));
  if (column.kind !== 'given' || !type) return false;
  const given = givenLabelled(type, column.label);
  return given !== undefined && lot.overrides[given.place] !== undefined;
}

export function headOf(column: GridColumn): string {
  switch (column.kind) {
    case 'name':
      return 'Lot';
    case 'type':
      return 'House type';
    case 'option':
      return column.name;
    case 'given':
      return column.label;
    case 'state':
      return 'Stands';
    case 'result':
      return column.column.name;
    case 'remark':
      return 'Remark';
  }
}

/** The unit of a result, where neither its name nor its figures say it. */
export function unitUnder(column: GridColumn): string | null {
  const unit = column.kind === 'result' ? unitOver(column.column) : null;
  return unit === null || headOf(column).endsWith(unit) ? null : unit;
}

/** What a cell of the lot table shows. */
export interface GridCell {
  readonly text: string;
  /** `own`: the lot itself says it. `usual`: it is as its type has it. `none`: its type knows no such thing. */
  readonly says: 'own' | 'usual' | 'figured' | 'none';
  /** Set for what cannot be used, or wants a look. */
  readonly mark?: 'look' | 'stop';
  readonly title?: string;
  /** What it offers, where it is picked from a few. */
  readonly choices?: readonly string[];
}

const nothing: GridCell = { text: '', says: 'none' };

export function gridCell(
  table: LotTable,
  lot: Lot,
  column: GridColumn,
  outcome: LotOutcome | null,
): GridCell {
  const type = typeNamed(table, lot.type);
  switch (column.kind) {
    case 'name':
      return { text: lot.name, says: 'own' };
    case 'type':
      return { text: lot.type, says: 'own', choices: table.types.map(typeName) };
    case 'option': {
      const option = type && optionNamed(type, column.name);
      if (!type || !option) return nothing;
      return {
        text: choiceOf(type, lot, column.name) ?? '',
        says: lot.options[option.name] === undefined ? 'usual' : 'own',
        choices: option.choices.map(({ name }) => name),
      };
    }
    case 'given': {
      const given = type && givenLabelled(type, column.label);
      if (!type || !given) return nothing;
      const value = lotGivens(type, lot)[given.place] ?? null;
      return {
        text: showValue(value, given.cell.unit, given.cell.format).text,
        says: lot.overrides[given.place] === undefined ? 'usual' : 'own',
        ...(given.cell.question ? { title: given.cell.question.asks } : {}),
        ...(given.cell.question?.choices ? { choices: given.cell.question.choices } : {}),
      };
    }
    case 'state':
      return stateCell(outcome);
    case 'result': {
      const index = type ? resultsOf(type).findIndex((one) => isSameResult(one, column.column)) : -1;
      if (index < 0) return nothing;
      if (outcome?.type !== 'figured') return { text: outcome ? '' : '…', says: 'figured' };
      return { text: showResult(column.column, outcome.figures.results[index] ?? null), says: 'figured' };
    }
    case 'remark':
      return { text: lot.remark ?? '', says: 'own' };
  }
}

function stateCell(outcome: LotOutcome | null): GridCell {
  if (!outcome) return { text: 'not figured', says: 'figured' };
  if (outcome.type === 'refused') return { text: '✕ cannot be figured', says: 'figured', mark: 'stop' };
  if (outcome.type === 'disagrees') {
    return {
      text: '✕ not to be trusted',
      says: 'figured',
      mark: 'stop',
      title: wordLeftOut({ code: 'disagrees', place: outcome.place }),
    };
  }
  const count = (kind: string) => outcome.figures.concerns.filter((one) => one.kind === kind).length;
  const [stops, looks] = [count('stop'), count('look')];
  if (stops > 0) return { text: `✕ ${stops} stop`, says: 'figured', mark: 'stop' };
  if (looks > 0) return { text: `! ${looks} look`, says: 'figured', mark: 'look' };
  return { text: '✓ holds', says: 'figured' };
}

export function canEdit(column: GridColumn, cell: GridCell): boolean {
  return column.kind !== 'state' && column.kind !== 'result' && cell.says !== 'none';
}

/** What stands in the field when a cell is opened: empty where nothing was said, so that emptying it changes nothing. */
export function textToChange(table: LotTable, lot: Lot, column: GridColumn): string {
  switch (column.kind) {
    case 'name':
      return lot.name;
    case 'remark':
      return lot.remark ?? '';
    case 'given':
      return givenText(table, lot, column.label);
    default:
      return '';
  }
}

/** The command that writes what was typed or chosen into a cell; null where it writes nothing. */
export function commandFor(
  table: LotTable,
  at: number,
  column: GridColumn,
  typed: string,
): LotCommand | null {
  switch (column.kind) {
    case 'name':
      return { type: 'name_lot', at, name: typed };
    case 'type':
      return { type: 'set_type', at, house: typed };
    case 'option':
      return { type: 'choose', at, option: column.name, choice: usualChoice(table, at, column.name, typed) };
    case 'given':
      return { type: 'override', at, label: column.label, typed };
    case 'remark':
      return { type: 'remark', at, remark: typed };
    default:
      return null;
  }
}

/** The usual choice is nothing of the lot's own. */
function usualChoice(table: LotTable, at: number, option: string, typed: string): string | null {
  const lot = table.rows[at];
  const type = lot && typeNamed(table, lot.type);
  const usual = type && optionNamed(type, option)?.usual;
  return usual !== undefined && isSameName(usual, typed) ? null : typed;
}
