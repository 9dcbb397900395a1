import { isFormula, type Row, type Sheet } from '../workbook/document.ts';
import { type RowPair, rowPairs } from '../workbook/row-pairs.ts';
import { noValues } from '../workbook/values.ts';

/** How the lines of a job's sheet and of its newer revision go together. */
export interface LinePairs {
  readonly rows: readonly RowPair[];
  /** By the column afterwards; null where the job has no such column. */
  readonly columnBefore: (column: number) => number | null;
  /** Whether anything stands elsewhere than it stood. */
  readonly isShifted: boolean;
}

/** Rows go together by what the template says in them, but for those of which it is known; columns by their headings. What
 *  people fill in plays no part, so that a revision which was taken is met again line by line. */
export function linePairs(own: Sheet, sheet: Sheet, known: readonly RowPair[] = []): LinePairs {
  const columns = columnPairs(own, sheet);
  const rows = withKnown(isInPlace(own, sheet) ? inPlace(own, sheet) : movedRows(own, sheet), known);
  return {
    rows,
    columnBefore: (column) => (columns === null ? column : (columns.get(column) ?? null)),
    isShifted: columns !== null || rows.some(({ before, after }) => before !== null && before !== after),
  };
}

function withKnown(rows: readonly RowPair[], known: readonly RowPair[]): readonly RowPair[] {
  const mine = new Set(known.map(({ before }) => before));
  const theirs = new Set(known.map(({ after }) => after));
  const others = rows.flatMap(({ before, after }): readonly RowPair[] => {
    const left = {
      before: mine.has(before) ? null : before,
      after: theirs.has(after) ? null : after,
    };
    return left.before === null && left.after === null ? [] : [left];
  });
  return [...others, ...known];
}

/** Whether every row that the template names stands where it stood. */
function isInPlace(own: Sheet, sheet: Sheet): boolean {
  return sheet.rows.every((row, index) => {
    const column = row.findIndex((cell) => cell !== null && cell.role !== 'given' && cell.content !== null);
    const [theirs, mine] = [row[column]?.content, own.rows[index]?.[column]?.content];
    if (theirs === undefined || theirs === null) return true;
    return isFormula(theirs) ? mine !== undefined && mine !== null && isFormula(mine) : mine === theirs;
  });
}

function inPlace(own: Sheet, sheet: Sheet): readonly RowPair[] {
  const count = Math.max(own.rows.length, sheet.rows.length);
  return Array.from({ length: count }, (_, row) => ({
    before: row < own.rows.length ? row : null,
    after: row < sheet.rows.length ? row : null,
  }));
}

/** Rows that say something hold the others in place; blank ones between them go together one by one. */
function movedRows(own: Sheet, sheet: Sheet): readonly RowPair[] {
  const [mine, theirs] = [tellingRows(own), tellingRows(sheet)];
  const anchors = rowPairs(
    { sheet: { ...own, rows: mine.map(({ row }) => row) }, values: noValues },
    { sheet: { ...sheet, rows: theirs.map(({ row }) => row) }, values: noValues },
  ).flatMap(({ before, after }) => {
    const [met, other] = [mine[before ?? -1], theirs[after ?? -1]];
    return met && other ? [{ before: met.index, after: other.index }] : [];
  });
  const ends = [...anchors, { before: own.rows.length, after: sheet.rows.length }];
  const telling = {
    before: new Set(mine.map(({ index }) => index)),
    after: new Set(theirs.map(({ index }) => index)),
  };
  const pairs: RowPair[] = [];
  let [before, after] = [0, 0];
  for (const end of ends) {
    for (; before < end.before; before += 1) {
      const blank = telling.before.has(before) ? -1 : nextBlank(after, end.after, telling.after);
      if (blank < 0) {
        pairs.push({ before, after: null });
        continue;
      }
      for (; after < blank; after += 1) pairs.push({ before: null, after });
      pairs.push({ before, after });
      after += 1;
    }
    for (; after < end.after; after += 1) pairs.push({ before: null, after });
    if (before < own.rows.length && after < sheet.rows.length) pairs.push({ before, after });
    [before, after] = [before + 1, after + 1];
  }
  return pairs;
}

function nextBlank(from: number, end: number, telling: ReadonlySet<number>): number {
  for (let row = from; row < end; row += 1) if (!telling.has(row)) return row;
  return -1;
}

/** The rows that hold something beside answers and formulas, without those. */
function tellingRows({ rows }: Sheet): readonly { readonly index: number; readonly row: Row }[] {
  return rows.flatMap((cells, index) => {
    const row = cells.map((cell) => (cell?.role === 'given' ? null : cell));
    const tells = row.some((cell) => cell !== null && cell.content !== null && !isFormula(cell.content));
    return tells ? [{ index, row }] : [];
  });
}

/** Null where every column with headings stands where it stood. */
function columnPairs(own: Sheet, sheet: Sheet): ReadonlyMap<number, number> | null {
  const [mine, theirs] = [headings(own), headings(sheet)];
  if (theirs.every((key, column) => key === '' || (mine[column] ?? '') === key)) return null;
  const pairs = new Map<number, number>();
  let from = 0;
  for (const [column, key] of theirs.entries()) {
    const met = key === '' ? -1 : mine.indexOf(key, from);
    if (met >= 0) {
      pairs.set(column, met);
      from = met + 1;
    } else if (key === '' && mine[from] === '') {
      pairs.set(column, from);
      from += 1;
    }
  }
  return pairs;
}

function headings({ rows }: Sheet): readonly string[] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return Array.from({ length: width }, (_, column) =>
    rows
      .flatMap((row) => {
        const cell = row[column];
        return cell?.role === 'heading' && typeof cell.content === 'string' ? [cell.content] : [];
      })
      .join('\n'),
  );
}
