import { referencesIn } from '../formula/references.ts';
import { sheetNamed } from '../workbook/cells.ts';
import { type Cell, isFormula, type Sheet, type Workbook } from '../workbook/document.ts';

/** A row that asks something: one line of a table, or a question that stands alone. */
export interface AskingLine {
  readonly row: number;
  /** What stands first in it, in words; empty where nothing does. */
  readonly name: string;
  /** Where its name is read from another sheet's line. */
  readonly leader: { readonly sheet: string; readonly row: number } | null;
  readonly cells: readonly { readonly column: number; readonly cell: Cell }[];
}

/** Lines of a sheet that ask alike, each stretch without a gap on its own. */
export interface AskingTable {
  readonly asks: ReadonlySet<string>;
  readonly stretches: readonly (readonly AskingLine[])[];
  /** Who names its lines: the person that answers, the template's words, or the lines of another sheet. */
  readonly namedBy: 'given' | 'words' | 'leader';
}

/** The tables of a sheet that take answers, from the top. */
export function askingTables(workbook: Workbook, sheet: Sheet): readonly AskingTable[] {
  const found = new Map<string, AskingLine[][]>();
  sheet.rows.forEach((_, row) => {
    const line = askingLine(workbook, sheet, row);
    if (!line) return;
    const key = JSON.stringify([...asksOf(line)].sort());
    const stretches = found.get(key) ?? [];
    found.set(key, stretches);
    const last = stretches.at(-1);
    if (last?.at(-1)?.row === row - 1) last.push(line);
    else stretches.push([line]);
  });
  return [...found.values()].map((stretches) => {
    const lines = stretches.flat();
    return {
      asks: new Set(lines.flatMap((line) => [...asksOf(line)])),
      stretches,
      namedBy: namedBy(sheet, lines),
    };
  });
}

function asksOf({ cells }: AskingLine): ReadonlySet<string> {
  return new Set(cells.flatMap(({ cell }) => cell.question?.asks ?? []));
}

function askingLine(workbook: Workbook, sheet: Sheet, row: number): AskingLine | null {
  const cells = (sheet.rows[row] ?? []).flatMap((cell, column) =>
    cell?.role === 'given' && cell.question ? [{ column, cell }] : [],
  );
  if (cells.length === 0) return null;
  return { row, name: nameOf(sheet, row), leader: leaderOf(workbook, sheet, row), cells };
}

/** What stands first in a row, if it was typed. A number that was filled in names nothing, nor does what stands behind a
 *  line's first answer. */
function nameOf(sheet: Sheet, row: number): string {
  for (const cell of sheet.rows[row] ?? []) {
    if (!cell || isFormula(cell.content)) continue;
    const { content, role } = cell;
    if (content !== null && content !== '') {
      return typeof content === 'string' || role !== 'given' ? String(content) : '';
    }
    if (role === 'given') return '';
  }
  return '';
}

function leaderOf(workbook: Workbook, sheet: Sheet, row: number): AskingLine['leader'] {
  const first = (sheet.rows[row] ?? []).find((cell) => cell !== null && cell.content !== null);
  if (!first || !isFormula(first.content)) return null;
  for (const one of referencesIn(first.content.formula)) {
    if (one.type !== 'cell' || one.sheet === null || one.rowFixed) continue;
    const leading = sheetNamed(workbook, one.sheet);
    if (leading && leading.id !== sheet.id) return { sheet: leading.id, row: one.row };
  }
  return null;
}

function namedBy(sheet: Sheet, lines: readonly AskingLine[]): AskingTable['namedBy'] {
  if (lines.every(({ leader }) => leader !== null)) return 'leader';
  const isByGiven = lines.every(({ row }) => {
    const first = (sheet.rows[row] ?? []).find((cell) => cell !== null && !isFormula(cell.content));
    return first?.role === 'given';
  });
  return isByGiven ? 'given' : 'words';
}

/** The tables of two sheets that go together: each with the one that asks most of what it asks. */
export function tablePairs(
  mine: readonly AskingTable[],
  theirs: readonly AskingTable[],
): readonly { readonly mine: AskingTable; readonly theirs: AskingTable }[] {
  const left = new Set(mine);
  const meet = (other: AskingTable, isWhole: boolean) => {
    let best: AskingTable | null = null;
    let most = 0;
    for (const one of left) {
      const shared = [...other.asks].filter((asks) => one.asks.has(asks)).length;
      if (isWhole && (shared !== other.asks.size || shared !== one.asks.size)) continue;
      if (shared > most) [best, most] = [one, shared];
    }
    if (best) left.delete(best);
    return best;
  };
  const whole = new Map(theirs.map((other) => [other, meet(other, true)]));
  return theirs.flatMap((other) => {
    const one = whole.get(other) ?? meet(other, false);
    return one ? [{ mine: one, theirs: other }] : [];
  });
}
