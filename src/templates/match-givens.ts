import { type CellAddress, writeAddress } from '../base/address.ts';
import { cellAt, cellsOf } from '../workbook/cells.ts';
import { counterpart } from '../workbook/comparison.ts';
import type { Cell, Sheet, Workbook } from '../workbook/document.ts';
import type { PairedLine, PairedTable } from './pair-lines.ts';
import type { AskingLine } from './table-lines.ts';

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

/** Which given of another workbook is the same one: by the name of its cell, then by its line, then by place. By the key of
 *  the given in the other workbook. */
export function matchGivens(
  job: Workbook,
  newer: Workbook,
  tables: readonly PairedTable[],
): ReadonlyMap<string, GivenCell> {
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

  const lined = new Set<string>();
  for (const { own: mySheet, sheet, lines } of tables) {
    for (const line of lines) {
      if (line.mine) lined.add(rowKey(mySheet, line.mine.row, 'mine'));
      if (line.theirs) lined.add(rowKey(sheet, line.theirs.row, 'theirs'));
      for (const [one, other] of answersOf(line)) meet(givenAt(mySheet, one), givenAt(sheet, other));
    }
  }

  for (const other of theirs) {
    const sheet = counterpart(job, other.sheet);
    const cell = sheet && cellAt(sheet, other.address);
    if (!sheet || cell?.role !== 'given') continue;
    // Lines that go with others, or with none, are no longer told by their place.
    const { row } = other.address;
    if (lined.has(rowKey(sheet, row, 'mine')) || lined.has(rowKey(other.sheet, row, 'theirs'))) continue;
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

/** The answers of a line beside those of the other: by question, then by column. */
function answersOf({ mine, theirs }: PairedLine): readonly (readonly [Answer, Answer])[] {
  if (!mine || !theirs) return [];
  const left = new Set(mine.cells);
  const find = (is: (one: AskingLine['cells'][number]) => boolean) => {
    const met = [...left].find(is);
    if (met) left.delete(met);
    return met;
  };
  const asked = theirs.cells.map((other) => ({
    other,
    one: find(({ cell }) => cell.question?.asks === other.cell.question?.asks),
  }));
  return asked.flatMap(({ other, one }) => {
    const met = one ?? find(({ column }) => column === other.column);
    return met
      ? [
          [
            { row: mine.row, ...met },
            { row: theirs.row, ...other },
          ] as const,
        ]
      : [];
  });
}

interface Answer {
  readonly row: number;
  readonly column: number;
  readonly cell: Cell;
}

function givenAt(sheet: Sheet, { row, column, cell }: Answer): GivenCell {
  return { sheet, address: { row, column }, cell };
}

function rowKey({ id }: Sheet, row: number, side: 'mine' | 'theirs'): string {
  return `${side} ${id} ${row}`;
}
