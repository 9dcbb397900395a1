import type { Axis, CellAddress } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import { withCells } from './cells.ts';
import type { Cell, Column, Frozen, NamedRange, Sheet, Workbook, WorkedExample } from './document.ts';
import { type Line, withColumn, withHiddenRows, withLines, withLinesElsewhere } from './lines.ts';

/** One reversible change. `before` and `after` are whole values, so that turning it round is swapping them. */
export type Change =
  | {
      readonly type: 'cell';
      readonly sheet: string;
      readonly address: CellAddress;
      readonly before: Cell | null;
      readonly after: Cell | null;
    }
  | { readonly type: 'title'; readonly before: string; readonly after: string }
  | { readonly type: 'kind'; readonly before: Workbook['kind']; readonly after: Workbook['kind'] }
  | {
      readonly type: 'examples';
      readonly before: readonly WorkedExample[];
      readonly after: readonly WorkedExample[];
    }
  /** What a workbook is beside its cells: where it comes from, what it is a type of, whether its locks hold. */
  | { readonly type: 'standing'; readonly before: WorkbookStanding; readonly after: WorkbookStanding }
  | {
      readonly type: 'name';
      readonly name: string;
      readonly before: NamedRange | null;
      readonly after: NamedRange | null;
    }
  /** Rows or columns put in, taken out or replaced from a place on. */
  | {
      readonly type: 'lines';
      readonly sheet: string;
      readonly axis: Axis;
      readonly at: number;
      readonly before: readonly Line[];
      readonly after: readonly Line[];
    }
  /** Rows or columns that stand elsewhere on their sheet: the first of them, before and after. */
  | {
      readonly type: 'lines_place';
      readonly sheet: string;
      readonly axis: Axis;
      readonly count: number;
      readonly before: number;
      readonly after: number;
    }
  | {
      readonly type: 'column';
      readonly sheet: string;
      readonly at: number;
      readonly before: Column;
      readonly after: Column;
    }
  /** The rows that are not shown. */
  | {
      readonly type: 'hidden_rows';
      readonly sheet: string;
      readonly before: readonly number[];
      readonly after: readonly number[];
    }
  /** Null where the sheet says nothing of what stays in sight. */
  | {
      readonly type: 'frozen';
      readonly sheet: string;
      readonly before: Frozen | null;
      readonly after: Frozen | null;
    }
  /** The sentence over the grid. */
  | { readonly type: 'sheet_says'; readonly sheet: string; readonly before: string; readonly after: string }
  | { readonly type: 'sheet_name'; readonly sheet: string; readonly before: string; readonly after: string }
  /** A sheet moved in the list, by its index. */
  | { readonly type: 'sheet_place'; readonly before: number; readonly after: number }
  /** A sheet put in, taken out or replaced at a place in the list. */
  | {
      readonly type: 'sheet';
      readonly index: number;
      readonly before: Sheet | null;
      readonly after: Sheet | null;
    };

/** Null where the workbook does not say. */
export interface WorkbookStanding {
  readonly template: Workbook['template'] | null;
  readonly revisions: Workbook['revisions'] | null;
  readonly house: Workbook['house'] | null;
  readonly locksOff: true | null;
}

export function workbookStanding(workbook: Workbook): WorkbookStanding {
  const { template = null, revisions = null, house = null, locksOff = null } = workbook;
  return { template, revisions, house, locksOff };
}

/** Whether a change is one of looks and words only, so that every figure stays what it is. */
export function isLookOnly(change: Change): boolean {
  switch (change.type) {
    case 'title':
    case 'kind':
    case 'examples':
    case 'standing':
    case 'column':
    case 'hidden_rows':
    case 'frozen':
    case 'sheet_says':
    case 'sheet_place':
      return true;
    case 'cell':
      return change.before !== null && change.before.content === change.after?.content;
    default:
      return false;
  }
}

/** What a command did, in order: enough to do it again and to take it back. */
export type Difference = readonly Change[];

export function applyDifference(workbook: Workbook, difference: Difference): Workbook {
  let changed = workbook;
  for (let at = 0; at < difference.length; at += 1) {
    const change = difference[at];
    if (change?.type !== 'cell') {
      if (change) changed = applyChange(changed, change);
      continue;
    }
    const run = [change];
    for (let next = difference[at + 1]; isCellOf(next, change.sheet); next = difference[at + 1]) {
      run.push(next);
      at += 1;
    }
    changed = withSheet(changed, change.sheet, (sheet) => withCells(sheet, run));
  }
  return changed;
}

type CellChange = Extract<Change, { type: 'cell' }>;

function isCellOf(change: Change | undefined, sheet: string): change is CellChange {
  return change?.type === 'cell' && change.sheet === sheet;
}

export function invertDifference(difference: Difference): Difference {
  return difference
    .map((change) => ({ ...change, before: change.after, after: change.before }) as Change)
    .reverse(); // each variant swaps two values of one type
}

function applyChange(workbook: Workbook, change: Change): Workbook {
  switch (change.type) {
    case 'cell':
      return withSheet(workbook, change.sheet, (sheet) => withCells(sheet, [change]));
    case 'lines':
      return withSheet(workbook, change.sheet, (sheet) => withLines(sheet, change));
    case 'lines_place':
      return withSheet(workbook, change.sheet, (sheet) => withLinesElsewhere(sheet, change));
    case 'sheet_name':
      return withSheet(workbook, change.sheet, (sheet) => ({ ...sheet, name: change.after }));
    case 'sheet_says':
      return withSheet(workbook, change.sheet, (sheet) => ({ ...sheet, says: change.after }));
    case 'column':
      return withSheet(workbook, change.sheet, (sheet) => withColumn(sheet, change.at, change.after));
    case 'hidden_rows':
      return withSheet(workbook, change.sheet, (sheet) => withHiddenRows(sheet, change.after));
    case 'frozen':
      return withSheet(workbook, change.sheet, ({ frozen: _before, ...sheet }) =>
        change.after ? { ...sheet, frozen: change.after } : sheet,
      );
    case 'sheet_place': {
      const sheets = [...workbook.sheets];
      sheets.splice(change.after, 0, ...sheets.splice(change.before, 1));
      return { ...workbook, sheets };
    }
    case 'title':
      return { ...workbook, title: change.after };
    case 'kind':
      return { ...workbook, kind: change.after };
    case 'examples':
      return { ...workbook, examples: change.after };
    case 'standing':
      return withStanding(workbook, change.after);
    case 'name': {
      const { [change.name]: _replaced, ...others } = workbook.names;
      return { ...workbook, names: change.after ? { ...others, [change.name]: change.after } : others };
    }
    case 'sheet': {
      const sheets = [...workbook.sheets];
      sheets.splice(change.index, change.before ? 1 : 0, ...(change.after ? [change.after] : []));
      return { ...workbook, sheets };
    }
    default:
      return assertNever(change);
  }
}

function withStanding(
  { template: _1, revisions: _2, house: _3, locksOff: _4, ...workbook }: Workbook,
  { template, revisions, house, locksOff }: WorkbookStanding,
): Workbook {
  return {
    ...workbook,
    ...(template ? { template } : {}),
    ...(revisions ? { revisions } : {}),
    ...(house ? { house } : {}),
    ...(locksOff ? { locksOff } : {}),
  };
}

function withSheet(workbook: Workbook, id: string, change: (sheet: Sheet) => Sheet): Workbook {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => (sheet.id === id ? change(sheet) : sheet)),
  };
}
