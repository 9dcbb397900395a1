import type { AllowanceCell, AllowanceRow } from './rows.ts';

/** A column that is not the same on both sides. */
export interface AllowanceColumn {
  readonly heading: string;
  /** Null where there is no such line. */
  readonly mine: AllowanceCell | null;
  readonly theirs: AllowanceCell | null;
}

/** A line or a single allowance of two workbooks. */
export interface AllowanceComparison {
  readonly id: string;
  readonly table: string;
  readonly key: string;
  readonly label: string;
  readonly is: 'same' | 'differs' | 'only_here' | 'only_there';
  /** Those that differ; of a line on one side only, all that say something. */
  readonly columns: readonly AllowanceColumn[];
}

/** The allowances of two workbooks side by side, by table and key, whichever case they are written in. What a formula figures
 *  here stays, and a column that only one side has is not compared. */
export function compareAllowances(
  mine: readonly AllowanceRow[],
  theirs: readonly AllowanceRow[],
): readonly AllowanceComparison[] {
  const there = new Map(theirs.map((row) => [row.id, row]));
  const here = new Set(mine.map(({ id }) => id));
  const compared = mine.map((row): AllowanceComparison => {
    const other = there.get(row.id);
    if (!other) return alone(row, 'only_here');
    const columns = [...row.cells].flatMap(([heading, own]): readonly AllowanceColumn[] => {
      const cell = other.cells.get(heading);
      return !cell || own.isFigured || isSameAllowance(own, cell)
        ? []
        : [{ heading, mine: own, theirs: cell }];
    });
    return { ...named(row), is: columns.length === 0 ? 'same' : 'differs', columns };
  });
  return [...compared, ...theirs.flatMap((row) => (here.has(row.id) ? [] : [alone(row, 'only_there')]))];
}

/** Keys that differ only in their case are the same to every formula. */
function isSameAllowance(one: AllowanceCell, other: AllowanceCell): boolean {
  return one.content === other.content && !isOtherUnit(one, other);
}

/** The same number means something else. */
export function isOtherUnit(one: AllowanceCell, other: AllowanceCell): boolean {
  const [unit, otherUnit] = [one.cell?.unit, other.cell?.unit];
  if (one.content === null && other.content === null) return false;
  return unit !== undefined && otherUnit !== undefined && unit !== otherUnit;
}

function alone(row: AllowanceRow, is: 'only_here' | 'only_there'): AllowanceComparison {
  const columns = [...row.cells].flatMap(([heading, cell]): readonly AllowanceColumn[] => {
    if (cell.shows === '' || cell.isFigured) return [];
    return [{ heading, mine: is === 'only_here' ? cell : null, theirs: is === 'only_there' ? cell : null }];
  });
  return { ...named(row), is, columns };
}

function named({ id, table, key, label }: AllowanceRow) {
  return { id, table, key, label };
}
