import { type Axis, type CellAddress, type CellRange, isInRange, writeAddress } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { limits } from '../../formula/limits.ts';
import { afterMoveLines } from '../../formula/lines.ts';
import { referencesIn } from '../../formula/references.ts';
import { lineAfterMove, type Move, stretchAfterMove } from '../../formula/stretch.ts';
import { acrossAfter } from '../across.ts';
import { sheetWithId } from '../cells.ts';
import { applyDifference, type Change, type Difference } from '../difference.ts';
import { isFormula, type NamedRange, type Sheet, type Workbook } from '../document.ts';
import { isSameSheet, keptPlacesAfter } from '../kept-places.ts';
import { goingAlong, type TornPair, tornPair } from '../paired-ranges.ts';
import { rewrittenFormulas } from '../rewriting.ts';
import { rowsAround } from '../table-rows.ts';
import { mostFrozen } from './sight.ts';

/** Whole rows or columns taken up and put before another one of the sheet. */
export interface MoveLinesCommand {
  readonly type: 'move_lines';
  readonly sheet: string;
  readonly axis: Axis;
  readonly at: number;
  readonly count: number;
  /** The line before which they come to stand, counted before the move. */
  readonly to: number;
}

export type MoveLinesFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'sheet_is_full'; readonly axis: Axis; readonly most: number }
  /** Something finds a line by its place beside lines that stay. */
  | ({ readonly code: 'lines_torn' } & TornPair)
  /** A formula would come to stand among the cells that it takes in. */
  | { readonly code: 'takes_in_itself'; readonly reader: string };

/** Every formula goes on reading the cells that it read; names, worked examples, hidden lines and widths go along. Rows that
 *  move inside their table take along the same lines of the tables that follow it. */
export function moveLines(
  workbook: Workbook,
  command: MoveLinesCommand,
): Outcome<Difference, MoveLinesFault> {
  const sheet = sheetWithId(workbook, command.sheet);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  if (command.axis === 'column') return moveLinesAlone(workbook, command);
  const { at, count, to } = command;
  const table = tableOf(sheet, at);
  const isInside =
    table !== null && at + count - 1 <= table.to.row && to >= table.from.row && to <= table.to.row + 1;
  const entered = to > 0 ? tableOf(sheet, to - 1) : null;
  const touched = [table, entered !== null && to <= entered.to.row ? entered : null];
  const blocks = touched.flatMap((range) => (range ? [{ sheet: sheet.id, range }] : []));
  const going = isInside ? goingAlong(workbook, sheet, table) : alone(workbook, blocks);
  if (!going.ok) return failed({ code: 'lines_torn', ...going.fault });
  const followers = isInside ? going.value.filter((one) => one.sheet !== sheet.id) : [];
  const changes: Change[] = [];
  let sofar = workbook;
  for (const block of [{ sheet: sheet.id, range: null }, ...followers]) {
    const down = block.range && table ? block.range.from.row - table.from.row : 0;
    const outcome = moveLinesAlone(sofar, { ...command, sheet: block.sheet, at: at + down, to: to + down });
    if (!outcome.ok) return outcome;
    changes.push(...outcome.value);
    sofar = applyDifference(sofar, outcome.value);
  }
  return done(changes);
}

function alone(workbook: Workbook, blocks: readonly NamedRange[]): Outcome<readonly NamedRange[], TornPair> {
  const torn = tornPair(workbook, blocks);
  return torn ? failed(torn) : done(blocks);
}

/** The rows of the table that a row stands in; null where it stands in none. */
function tableOf(sheet: Sheet, row: number): CellRange | null {
  const column = (sheet.rows[row] ?? []).findIndex((cell) => cell !== null);
  const rows = column < 0 ? null : rowsAround(sheet, { row, column });
  return rows && row >= rows.from.row && row <= rows.to.row ? rows : null;
}

/** The same for one sheet, whatever follows it. */
export function moveLinesAlone(
  workbook: Workbook,
  { sheet: id, axis, at, count, to }: MoveLinesCommand,
): Outcome<Difference, MoveLinesFault> {
  const sheet = sheetWithId(workbook, id);
  if (!sheet) return failed({ code: 'no_such_sheet' });
  const most = axis === 'row' ? limits.rows : limits.columns;
  if (to > most) return failed({ code: 'sheet_is_full', axis, most });
  if (to >= at && to <= at + count) return done([]);
  const move: Move = { at, count, to };
  const after = lineAfterMove(at, move);
  const place: Change = { type: 'lines_place', sheet: id, axis, count, before: at, after };
  const moved = applyDifference(workbook, [place]);
  const formulas = rewrittenFormulas(moved, (formula, ownSheet) =>
    afterMoveLines(formula, { ownSheet, sheet: sheet.name, ...move }, axis),
  );
  const itself = takesInItself(moved, formulas);
  if (itself) return failed({ code: 'takes_in_itself', ...itself });
  return done([
    place,
    ...frozenAfter(sheet, axis, move),
    ...(axis === 'column' ? acrossAfter(sheet, (stretch) => stretchAfterMove(stretch, move)) : []),
    ...formulas,
    ...namesAfter(workbook, id, axis, move),
    ...keptPlacesAfter(workbook, (kept) => {
      const line = lineAfterMove(kept[axis], move);
      return isSameSheet(kept.sheet, sheet.name) && line !== kept[axis] ? { ...kept, [axis]: line } : kept;
    }),
  ]);
}

/** The first formula that stands in a block which it takes in, and did not take in as it is now before. */
function takesInItself(moved: Workbook, formulas: readonly Change[]): { readonly reader: string } | null {
  for (const change of formulas) {
    if (change.type !== 'cell' || !change.after || !isFormula(change.after.content)) continue;
    const name = sheetWithId(moved, change.sheet)?.name ?? '';
    const isItself = referencesIn(change.after.content.formula).some(
      (one) =>
        one.type === 'range' &&
        (one.sheet === null || isSameSheet(one.sheet, name)) &&
        isInRange(change.address, rangeBetween(one.start, one.end)),
    );
    if (isItself) return { reader: `${name}!${writeAddress(change.address)}` };
  }
  return null;
}

function rangeBetween(one: CellAddress, other: CellAddress): CellRange {
  return {
    from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
    to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
  };
}

/** What stays in sight is a block at the edge: lines put into it are kept in sight, lines taken out of it are not. */
function frozenAfter({ id, frozen }: Sheet, axis: Axis, move: Move): readonly Change[] {
  const part = axis === 'row' ? 'rows' : 'columns';
  if (!frozen || frozen[part] === 0) return [];
  const isAllMoved = move.at === 0 && move.count >= frozen[part];
  const last = stretchAfterMove({ first: 0, last: frozen[part] - 1 }, move).last;
  const lines = isAllMoved ? 0 : Math.min(last + 1, mostFrozen[axis]);
  if (lines === frozen[part]) return [];
  return [{ type: 'frozen', sheet: id, before: frozen, after: { ...frozen, [part]: lines } }];
}

function namesAfter(workbook: Workbook, sheet: string, axis: Axis, move: Move): readonly Change[] {
  return Object.entries(workbook.names).flatMap(([name, before]): readonly Change[] => {
    if (before.sheet !== sheet) return [];
    const { from, to } = before.range;
    const { first, last } = stretchAfterMove({ first: from[axis], last: to[axis] }, move);
    if (first === from[axis] && last === to[axis]) return [];
    const range = { from: { ...from, [axis]: first }, to: { ...to, [axis]: last } };
    return [{ type: 'name', name, before, after: { sheet, range } }];
  });
}
