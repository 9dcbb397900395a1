import type { CellAddress, CellRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { onNextLine } from '../../formula/next-line.ts';
import { cellAt, sheetWithId } from '../cells.ts';
import { applyDifference, type Change, type Difference } from '../difference.ts';
import { type Cell, isFormula, type NamedRange, type Sheet, type Workbook } from '../document.ts';
import { tablesTogether } from '../followers.ts';
import { rowsAround } from '../table-rows.ts';
import { changeLines, type LinesFault } from './lines.ts';
import { type MoveLinesFault, moveLinesAlone } from './move-lines.ts';
import { changeOf } from './write.ts';

/** A line of a table comes or goes, and with it the same line of every table that follows this one. */
export interface TableLineCommand {
  /** Below the one that is named, like it in all but what people fill in; or that one is taken out. */
  readonly type: 'put_in_line' | 'take_out_line';
  readonly sheet: string;
  readonly address: CellAddress;
}

export type TableLineFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'no_line_here' }
  | LinesFault
  | MoveLinesFault;

export function changeTableLine(
  workbook: Workbook,
  { type, sheet: id, address }: TableLineCommand,
): Outcome<Difference, TableLineFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const tables = tablesThrough(workbook, sheet, address);
  const own = tables.find((one) => one.sheet === id);
  if (!own) return failed({ code: 'no_line_here' });
  const place = address.row - own.range.from.row;
  const changes: Change[] = [];
  let sofar = workbook;
  const carryOn = (outcome: Outcome<Difference, LinesFault | MoveLinesFault>) => {
    if (!outcome.ok) return false;
    changes.push(...outcome.value);
    sofar = applyDifference(sofar, outcome.value);
    return true;
  };
  for (const table of tables) {
    const at = table.range.from.row + place;
    const lines = { sheet: table.sheet, axis: 'row', at, count: 1 } as const;
    const outcome = changeLines(sofar, {
      ...lines,
      type: type === 'put_in_line' ? 'insert_lines' : 'remove_lines',
    });
    if (!carryOn(outcome)) return outcome;
    if (type === 'take_out_line') continue;
    // Put in above and then moved below, so that whatever takes in the line as its last takes in the new one too.
    const moved = moveLinesAlone(sofar, { ...lines, type: 'move_lines', to: at + 2 });
    if (!carryOn(moved)) return moved;
  }
  return done(type === 'take_out_line' ? changes : [...changes, ...likeLines(sofar, tables, place)]);
}

/** The table around a cell, the one that it follows, and all that follow that one. */
export function tablesThrough(workbook: Workbook, sheet: Sheet, address: CellAddress): readonly NamedRange[] {
  const rows = rowsAround(sheet, address);
  if (!rows || address.row < rows.from.row || address.row > rows.to.row) return [];
  return tablesTogether(workbook, sheet, rows);
}

function* likeLines(workbook: Workbook, tables: readonly NamedRange[], place: number): Generator<Change> {
  const lines = tables.map(({ sheet, range }) => ({
    sheet: sheetWithId(workbook, sheet)?.name ?? '',
    range: longer(range),
  }));
  for (const table of tables) {
    const sheet = sheetWithId(workbook, table.sheet);
    if (!sheet) continue;
    const row = table.range.from.row + place;
    for (let { column } = table.range.from; column <= table.range.to.column; column += 1) {
      const like = cellAt(sheet, { row, column });
      const after = like && likeCell(like, (formula) => onNextLine(formula, sheet.name, lines));
      yield* changeOf(sheet, { row: row + 1, column }, null, after);
    }
  }
}

function longer({ from, to }: CellRange): CellRange {
  return { from, to: { ...to, row: to.row + 1 } };
}

/** The same cell for another line: without what was filled in, and with its formula where that reads its line. One that
 *  does not would tell the same figure twice. */
function likeCell(cell: Cell, formulaOf: (formula: string) => string): Cell | null {
  const { content, typed: _typed, note: _note, ...dress } = cell;
  if (isFormula(content)) {
    const formula = formulaOf(content.formula);
    if (formula !== content.formula) return { ...dress, content: { formula } };
    if (dress.role === 'figured') return null;
  }
  const isPlain = dress.role === 'text' && Object.keys(dress).length === 1;
  return isPlain ? null : { ...dress, content: null };
}
