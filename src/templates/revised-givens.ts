import { writeAddress } from '../base/address.ts';
import { allowancesSheet } from '../workbook/comparison.ts';
import { type Cell, isFormula, type Workbook } from '../workbook/document.ts';
import { type GivenCell, givenCells, keyOf, matchGivens } from './match-givens.ts';
import type { OwnLines } from './own-lines.ts';
import { pairTables } from './pair-lines.ts';
import { isSameData } from './same-data.ts';

/** A cell that the newer revision has otherwise. */
export interface RevisedCell {
  /** `Wrap!C4`, where it stands afterwards. */
  readonly place: string;
  readonly before: Cell | null;
  readonly after: Cell | null;
  /** What is done where nobody says: allowances and what the shop wrote itself stay. */
  readonly usually: 'take' | 'leave';
  /** Whether it is filled in: an allowance or a usual value that the revision corrects. */
  readonly isGiven: boolean;
}

/** The allowances and usual values that the newer revision has otherwise than the older one did, by sheet; without the
 *  older one, the allowances that are otherwise than the job's. */
export function revisedGivens(
  job: Workbook,
  { workbook, tables }: OwnLines,
  givens: ReadonlyMap<string, GivenCell>,
  older: Workbook | undefined,
): ReadonlyMap<string, readonly RevisedCell[]> {
  const was = older ? shippedIn(job, older) : new Map<string, Cell>();
  const found = new Map<string, RevisedCell[]>();
  const offer = (
    { sheet, address }: GivenCell,
    before: Cell,
    after: Cell,
    usually: RevisedCell['usually'],
  ) => {
    const place = `${sheet.name}!${writeAddress(address)}`;
    const offered = found.get(sheet.id) ?? [];
    found.set(sheet.id, [...offered, { place, before, after, usually, isGiven: true }]);
  };
  const alone = linesOfPeople(tables);
  for (const other of givenCells(workbook)) {
    const { sheet, cell } = other;
    const mine = givens.get(keyOf(other));
    if (!mine) {
      // A line that the job does not have must bring no answers unasked.
      const isAlone = alone.has(`${sheet.id} ${other.address.row}`) && cell.content !== null;
      if (isAlone) offer(other, answered(cell, { content: null }), cell, 'leave');
      continue;
    }
    if (isSameData(mine.cell.content, cell.content)) continue;
    const isAllowance = sheet.name.toLowerCase() === allowancesSheet.toLowerCase();
    const shipped = was.get(keyOf(mine));
    if (shipped ? isSameData(shipped.content, cell.content) : !isAllowance) continue;
    // A usual value that is figured reads other cells where rows have moved, and says the same.
    if (shipped && isFormula(shipped.content) && isFormula(cell.content)) continue;
    const isUntouched = shipped !== undefined && isSameData(shipped.content, mine.cell.content);
    offer(other, answered(cell, mine.cell), cell, isAllowance && isUntouched ? 'take' : 'leave');
  }
  return found;
}

/** What the older revision had in the job's givens, by their keys. */
function shippedIn(job: Workbook, older: Workbook): ReadonlyMap<string, Cell> {
  const shipped = new Map<string, Cell>();
  const olds = new Map(givenCells(older).map((one) => [keyOf(one), one.cell]));
  for (const [key, mine] of matchGivens(job, older, pairTables(job, older))) {
    const cell = olds.get(key);
    if (cell) shipped.set(keyOf(mine), cell);
  }
  return shipped;
}

/** Rows of the newer template that people name and fill in, and that the job has not. */
function linesOfPeople(tables: OwnLines['tables']): ReadonlySet<string> {
  return new Set(
    tables.flatMap(({ sheet, namedBy, lines }) =>
      namedBy === 'words' || sheet.name.toLowerCase() === allowancesSheet.toLowerCase()
        ? []
        : lines.flatMap(({ mine, theirs }) => (mine === null && theirs ? [`${sheet.id} ${theirs.row}`] : [])),
    ),
  );
}

/** A given of the newer template with an answer of the job. */
export function answered(asked: Cell, { content, typed }: Pick<Cell, 'content' | 'typed'>): Cell {
  const { typed: _typed, ...rest } = asked;
  return { ...rest, content, ...(typed === undefined ? {} : { typed }) };
}
