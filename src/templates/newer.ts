import { type CellAddress, readAddress, writeAddress } from '../base/address.ts';
import { cellAt, sheetWithId, withCells } from '../workbook/cells.ts';
import { allowancesSheet, counterpart } from '../workbook/comparison.ts';
import { type Change, type Difference, workbookStanding } from '../workbook/difference.ts';
import { type Cell, isFormula, type NamedRange, type Sheet, type Workbook } from '../workbook/document.ts';
import { readKeptPlace } from '../workbook/kept-places.ts';
import type { RowPair } from '../workbook/row-pairs.ts';
import { type LinePairs, linePairs } from './line-pairs.ts';
import { givenCells, keyOf, matchGivens } from './match-givens.ts';
import { type OwnLines, withOwnLines } from './own-lines.ts';
import { withOwnRows } from './own-rows.ts';
import { answered, type RevisedCell, revisedGivens } from './revised-givens.ts';
import { isSameData } from './same-data.ts';

/** What a newer revision of its template would make of a job. */
export interface NewerRevision {
  /** The job as it would be. */
  readonly after: Workbook;
  /** Empty where the job is at that revision already, in every cell. */
  readonly difference: Difference;
  /** Cells that can be taken or left one by one; all else comes as a whole. */
  readonly choices: readonly RevisedCell[];
  readonly told: readonly RevisionNote[];
  /** Why it cannot be taken; empty where it can. */
  readonly refused: readonly RevisionRefusal[];
}

/** Lines of the job that hold answers, and for which the newer revision's table has no room. */
export interface RevisionRefusal {
  readonly code: 'line_without_room';
  readonly place: string;
}

/** What a newer revision has no place for, or what has to be looked at afterwards. */
export type RevisionNote =
  | { readonly code: 'given_without_home'; readonly place: string; readonly cell: Cell }
  /** A formula answers the given; it reads cells that may have gone elsewhere. */
  | { readonly code: 'answer_is_formula'; readonly place: string }
  | { readonly code: 'own_sheet_stays'; readonly sheet: string }
  | { readonly code: 'own_row_stays'; readonly place: string }
  /** What was written in a row that the template no longer has, or never had. */
  | { readonly code: 'own_cell_goes'; readonly place: string }
  | { readonly code: 'own_name_goes'; readonly name: string };

export interface NewerWishes {
  /** Places of `choices` that are to be otherwise than they usually are. */
  readonly turned?: ReadonlySet<string>;
  /** The template as it was when the job was made, where it is at hand: then it is known what the shop changed. */
  readonly older?: Workbook;
}

/** The difference that brings a job to a newer revision of its template. The job keeps its title, its givens, its own
 *  allowances, its own sheets and names; everything else becomes as the template has it. */
export function newerRevision(job: Workbook, newer: Workbook, wishes: NewerWishes = {}): NewerRevision {
  const told: RevisionNote[] = [];
  const pairing = pairSheets(job, newer);
  const grown = withOwnRows(pairing.renewed, job, wishes.older);
  for (const place of grown.places) told.push({ code: 'own_row_stays', place });

  const lined = withOwnLines(grown.workbook, job, wishes.older);
  for (const place of lined.places) told.push({ code: 'own_row_stays', place });

  const givens = matchGivens(job, lined.workbook, lined.tables);
  const corrected = revisedGivens(job, lined, givens, wishes.older && pairSheets(job, wishes.older).renewed);
  const choices: RevisedCell[] = [];
  const isTaken = ({ place, usually }: RevisedCell) =>
    (usually === 'take') !== (wishes.turned?.has(place) === true);
  const sheets = lined.workbook.sheets.map((sheet) => {
    const own = sheetWithId(job, sheet.id);
    if (!own) return sheet;
    const pairs = linePairs(own, sheet, rowsOf(lined.tables, sheet));
    const revised = revisedCells(own, sheet, pairs, wishes);
    told.push(...goneCells(own, pairs, wishes));
    const offered = corrected.get(sheet.id) ?? [];
    choices.push(...revised, ...offered);
    const changed: { address: CellAddress; after: Cell | null }[] = [...revised, ...offered]
      .filter((choice) => !isTaken(choice))
      .map(({ place, before }) => ({ address: addressIn(place), after: before }));
    const taken = new Set(offered.filter(isTaken).map(({ place }) => place));
    for (const [key, mine] of givens) {
      const address = keyOfSheet(sheet, key);
      const cell = address && cellAt(sheet, address);
      if (!address || !cell) continue;
      const place = `${sheet.name}!${writeAddress(address)}`;
      if (taken.has(place)) continue;
      const after = answered(cell, mine.cell);
      if (!isSameData(after, cell)) changed.push({ address, after });
      if (isFormula(after.content)) told.push({ code: 'answer_is_formula', place });
    }
    return changed.length === 0 ? sheet : withCells(sheet, changed);
  });

  const housed = new Set([...givens.values()].map(keyOf));
  const renewedIds = new Set(sheets.map(({ id }) => id));
  for (const given of givenCells(job)) {
    if (!renewedIds.has(given.sheet.id) || given.cell.content === null || housed.has(keyOf(given))) continue;
    const place = `${given.sheet.name}!${writeAddress(given.address)}`;
    told.push({ code: 'given_without_home', place, cell: given.cell });
  }
  const ownSheets = namedApart(
    job.sheets.filter(({ id }) => !renewedIds.has(id)),
    sheets,
  );
  for (const { name } of ownSheets) told.push({ code: 'own_sheet_stays', sheet: name });

  const names = namesAfter(job, lined, ownSheets, told);
  const standing = workbookStanding(job);
  const template = newer.template ?? { name: newer.title, revision: 1 };
  const refused = lined.without.map((place): RevisionRefusal => ({ code: 'line_without_room', place }));
  const after: Workbook = { ...job, template, sheets: [...sheets, ...ownSheets], names };
  return { after, difference: differenceTo(job, after, standing), choices, told, refused };
}

/** The newer template with the ids that its sheets have in the job. */
function pairSheets(job: Workbook, newer: Workbook): { readonly renewed: Workbook } {
  const taken = new Set<string>();
  const ids = new Map<string, string>();
  for (const sheet of newer.sheets) {
    const own = counterpart(job, sheet);
    const id = own && !taken.has(own.id) ? own.id : freeId(sheet.id, job, taken);
    taken.add(id);
    ids.set(sheet.id, id);
  }
  const idOf = (id: string) => ids.get(id) ?? id;
  const sheets = newer.sheets.map((sheet) => ({ ...sheet, id: idOf(sheet.id) }));
  const names = Object.fromEntries(
    Object.entries(newer.names).map(([name, named]) => [name, { ...named, sheet: idOf(named.sheet) }]),
  );
  return { renewed: { ...newer, sheets, names } };
}

/** The shop's own sheets; one with a name that the template has taken since gets another. */
function namedApart(own: readonly Sheet[], sheets: readonly Sheet[]): readonly Sheet[] {
  const taken = new Set([...sheets, ...own].map(({ name }) => name.toLowerCase()));
  const theirs = new Set(sheets.map(({ name }) => name.toLowerCase()));
  return own.map((sheet) => {
    if (!theirs.has(sheet.name.toLowerCase())) return sheet;
    let name = `Own ${sheet.name}`.slice(0, 28);
    for (let turn = 2; taken.has(name.toLowerCase()); turn += 1) name = `${name.slice(0, 26)} ${turn}`;
    taken.add(name.toLowerCase());
    return { ...sheet, name };
  });
}

function freeId(wanted: string, job: Workbook, taken: ReadonlySet<string>): string {
  let id = wanted;
  while (taken.has(id) || sheetWithId(job, id)) id = `${id}-new`;
  return id;
}

/** The cells of a sheet that come out otherwise and can be taken or left one by one. A formula that stands elsewhere than
 *  it stood reads other cells, so it comes as a whole. */
function revisedCells(
  own: Sheet,
  sheet: Sheet,
  pairs: LinePairs,
  { older }: NewerWishes,
): readonly RevisedCell[] {
  const { isShifted } = pairs;
  const old = older && counterpart(older, own);
  const isAllowances = sheet.name.toLowerCase() === allowancesSheet.toLowerCase();
  return pairs.rows.flatMap(({ before: rowBefore, after: row }): readonly RevisedCell[] => {
    if (row === null) return [];
    const width = Math.max(sheet.rows[row]?.length ?? 0, own.rows[rowBefore ?? -1]?.length ?? 0);
    return Array.from({ length: width }, (_, column) => column).flatMap((column): readonly RevisedCell[] => {
      const address = { row, column };
      const columnBefore = pairs.columnBefore(column);
      const placeBefore =
        rowBefore === null || columnBefore === null ? null : { row: rowBefore, column: columnBefore };
      const before = placeBefore && cellAt(own, placeBefore);
      const after = cellAt(sheet, address);
      // What only looks or asks otherwise comes along without a word.
      if (before?.role === 'given' || after?.role === 'given' || isSameContent(before, after)) return [];
      if (isShifted && [before, after].some((cell) => cell !== null && isFormula(cell.content))) return [];
      const was = old && placeBefore ? cellAt(old, placeBefore) : undefined;
      const usually = isShops(before, after, was, isAllowances) ? 'leave' : 'take';
      return [{ place: `${sheet.name}!${writeAddress(address)}`, before, after, usually, isGiven: false }];
    });
  });
}

/** How the rows of a sheet go together that hold lines of its tables. */
function rowsOf(tables: OwnLines['tables'], { id }: Sheet): readonly RowPair[] {
  return tables
    .filter(({ sheet }) => sheet.id === id)
    .flatMap(({ lines }) =>
      lines.flatMap(({ mine, theirs }) => (mine && theirs ? [{ before: mine.row, after: theirs.row }] : [])),
    );
}

/** What the shop may have written in rows that go. */
function goneCells(own: Sheet, pairs: LinePairs, { older }: NewerWishes): readonly RevisionNote[] {
  const old = older && counterpart(older, own);
  const known = new Set((old?.rows ?? []).flatMap((row) => row.map((cell) => JSON.stringify(cell?.content))));
  return pairs.rows.flatMap(({ before, after }) => {
    if (before === null || after !== null) return [];
    return (own.rows[before] ?? []).flatMap((cell, column): readonly RevisionNote[] => {
      if (!cell || cell.role === 'given' || cell.locked || cell.content === null) return [];
      if (known.has(JSON.stringify(cell.content))) return [];
      return [{ code: 'own_cell_goes', place: `${own.name}!${writeAddress({ row: before, column })}` }];
    });
  });
}

/** Whether a cell is the shop's own: its allowance, or something that it wrote where the template has nothing. */
function isShops(
  before: Cell | null,
  after: Cell | null,
  was: Cell | null | undefined,
  isAllowances: boolean,
): boolean {
  if (!before || before.locked) return false;
  // It is known what the template had there.
  if (was !== undefined) return !isSameContent(was, before);
  if (after === null) return before.content !== null;
  const isPlain = (cell: Cell) => cell.role === 'text' && !isFormula(cell.content);
  return isAllowances && isPlain(before) && isPlain(after) && !isSameContent(before, after);
}

function isSameContent(one: Cell | null, other: Cell | null): boolean {
  return isSameData(one?.content ?? null, other?.content ?? null);
}

/** The template's names, and the job's own on its own sheets. One on a sheet of the template goes along where its cells
 *  stand as they stood. */
function namesAfter(
  job: Workbook,
  { workbook: renewed, tables }: OwnLines,
  ownSheets: readonly Sheet[],
  told: RevisionNote[],
): Workbook['names'] {
  const names: Record<string, NamedRange> = { ...renewed.names };
  const known = new Set(Object.keys(renewed.names).map((name) => name.toLowerCase()));
  for (const [name, named] of Object.entries(job.names)) {
    if (known.has(name.toLowerCase())) continue;
    const before = sheetWithId(job, named.sheet);
    const after = sheetWithId(renewed, named.sheet);
    const stays =
      ownSheets.some(({ id }) => id === named.sheet) ||
      (before && after && !linePairs(before, after, rowsOf(tables, after)).isShifted);
    if (stays) names[name] = named;
    else told.push({ code: 'own_name_goes', name });
  }
  return names;
}

function differenceTo(
  job: Workbook,
  after: Workbook,
  standing: ReturnType<typeof workbookStanding>,
): Difference {
  const changes: Change[] = [];
  const laid: Sheet[] = [...job.sheets];
  for (const [index, sheet] of after.sheets.entries()) {
    const at = laid.findIndex(({ id }) => id === sheet.id);
    const before = laid[at];
    if (!before) {
      changes.push({ type: 'sheet', index, before: null, after: sheet });
      laid.splice(index, 0, sheet);
      continue;
    }
    if (at !== index) {
      changes.push({ type: 'sheet_place', before: at, after: index });
      laid.splice(index, 0, ...laid.splice(at, 1));
    }
    if (!isSameData(before, sheet)) changes.push({ type: 'sheet', index, before, after: sheet });
  }
  for (const name of new Set([...Object.keys(job.names), ...Object.keys(after.names)])) {
    const [before = null, is = null] = [job.names[name], after.names[name]];
    if (!isSameData(before, is)) changes.push({ type: 'name', name, before, after: is });
  }
  const becomes = { ...standing, template: after.template ?? null };
  if (!isSameData(standing, becomes)) changes.push({ type: 'standing', before: standing, after: becomes });
  return changes;
}

function addressIn(place: string): CellAddress {
  const at = readKeptPlace(place);
  return at ? { row: at.row, column: at.column } : { row: 0, column: 0 };
}

function keyOfSheet({ id }: Sheet, key: string): CellAddress | null {
  return key.startsWith(`${id} `) ? readAddress(key.slice(id.length + 1)) : null;
}
