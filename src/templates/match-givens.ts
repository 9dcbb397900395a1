import { type CellAddress, writeAddress } from '../base/address.ts';
import { cellAt, cellsOf } from '../workbook/cells.ts';
import { counterpart } from '../workbook/comparison.ts';
import type { Cell, Sheet, Workbook } from '../workbook/document.ts';

/** A given of a workbook. */
export interface GivenCell {
  readonly sheet: Sheet;
  readonly address: CellAddress;
  readonly cell: Cell;
}

export function givenCells(workbook: Workbook): readonly GivenCell[] {
  return workbook.sheets.flatMap((sheet) =>
    [...cellsOf(sheet)].flatMap(({ address, cell }) =>
      cell.role === 'given' ? [{ sheet, address, cell }] : [],
    ),
  );
}

export function keyOf({ sheet, address }: { readonly sheet: Sheet; readonly address: CellAddress }): string {
  return `${sheet.id} ${writeAddress(address)}`;
}

/** Which given of another workbook is the same one: by the name of its cell, then by sheet and question, then by place. A
 *  question that is asked down a column is met line by line. By the key of the given in the other workbook. */
export function matchGivens(job: Workbook, newer: Workbook): ReadonlyMap<string, GivenCell> {
  const own = givenCells(job);
  const theirs = givenCells(newer);
  const met = new Map<string, GivenCell>();
  const taken = new Set<string>();
  const meet = (mine: GivenCell | undefined, other: GivenCell | undefined) => {
    if (!mine || !other || taken.has(keyOf(mine)) || met.has(keyOf(other))) return;
    if (mine.cell.unit !== other.cell.unit) return;
    taken.add(keyOf(mine));
    met.set(keyOf(other), mine);
  };

  const ownByName = namedGivens(job, own);
  const theirsByName = namedGivens(newer, theirs);
  for (const [name, other] of theirsByName) meet(ownByName.get(name), other);

  const ownRuns = runsOf(own.filter((one) => !taken.has(keyOf(one))));
  const theirRuns = runsOf(theirs.filter((one) => !met.has(keyOf(one))));
  for (const [key, runs] of theirRuns) {
    const [asked] = runs.flat();
    const sheet = asked && counterpart(job, asked.sheet);
    const mine = sheet ? (ownRuns.get(`${sheet.id} ${asked.cell.question?.asks}`) ?? []) : [];
    // Where a table came or went, nothing but the place tells which line is which.
    if (key === '' || mine.length !== runs.length) continue;
    for (const [at, run] of runs.entries()) {
      for (const [line, other] of run.entries()) meet(mine[at]?.[line], other);
    }
  }

  for (const other of theirs) {
    const sheet = counterpart(job, other.sheet);
    const cell = sheet && cellAt(sheet, other.address);
    if (!sheet || cell?.role !== 'given') continue;
    if (cell.question?.asks === other.cell.question?.asks || !isAskedElsewhere(other, cell, theirs)) {
      meet({ sheet, address: other.address, cell }, other);
    }
  }
  return met;
}

/** Whether what a cell asks is asked by other cells of the sheet that it would be matched to; then its place means little. */
function isAskedElsewhere({ sheet }: GivenCell, { question }: Cell, theirs: readonly GivenCell[]): boolean {
  if (!question) return false;
  return theirs.some((one) => one.sheet === sheet && one.cell.question?.asks === question.asks);
}

function namedGivens(workbook: Workbook, givens: readonly GivenCell[]): ReadonlyMap<string, GivenCell> {
  const byKey = new Map(givens.map((one) => [keyOf(one), one]));
  const named = new Map<string, GivenCell>();
  for (const [name, { sheet, range }] of Object.entries(workbook.names)) {
    const { from, to } = range;
    const given = byKey.get(`${sheet} ${writeAddress(from)}`);
    if (given && from.row === to.row && from.column === to.column) named.set(name.toLowerCase(), given);
  }
  return named;
}

/** Givens that ask the same, by sheet and question, each stretch down a column on its own. */
function runsOf(givens: readonly GivenCell[]): ReadonlyMap<string, readonly (readonly GivenCell[])[]> {
  const found = new Map<string, GivenCell[][]>();
  const downColumns = [...givens].sort(
    (one, other) => one.address.column - other.address.column || one.address.row - other.address.row,
  );
  for (const given of downColumns) {
    const { question } = given.cell;
    if (!question) continue;
    const key = `${given.sheet.id} ${question.asks}`;
    const runs = found.get(key) ?? [];
    found.set(key, runs);
    const last = runs.at(-1);
    const before = last?.at(-1)?.address;
    const goesOn = before?.column === given.address.column && before.row === given.address.row - 1;
    if (last && goesOn) last.push(given);
    else runs.push([given]);
  }
  return found;
}
