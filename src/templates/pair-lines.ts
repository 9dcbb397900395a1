import { allowancesSheet, counterpart } from '../workbook/comparison.ts';
import type { Sheet, Workbook } from '../workbook/document.ts';
import { type AskingLine, type AskingTable, askingTables, tablePairs } from './table-lines.ts';

/** A line of the job's table and the line of the newer template that takes its answers; null where only the other has it. */
export interface PairedLine {
  readonly mine: AskingLine | null;
  readonly theirs: AskingLine | null;
}

export interface PairedTable {
  readonly own: Sheet;
  readonly sheet: Sheet;
  readonly namedBy: AskingTable['namedBy'];
  /** The job's lines in their order, then those that only the template has. */
  readonly lines: readonly PairedLine[];
}

/** How the lines that ask something go together, in all tables of a job and of the newer revision, which has the job's ids.
 *  Lines that the template names go by their names, and so do those of its allowances; those that people name, by their
 *  place; those that read another table's lines, as those do. */
export function pairTables(job: Workbook, newer: Workbook, older?: Workbook): readonly PairedTable[] {
  const tables = newer.sheets.flatMap((sheet) => {
    const own = counterpart(job, sheet);
    if (!own || own.id !== sheet.id) return [];
    const old = older && counterpart(older, own);
    const olds = older && old ? askingTables(older, old) : null;
    const mine = askingTables(job, own);
    return tablePairs(mine, askingTables(newer, sheet)).map((pair) => ({
      ...pair,
      own,
      sheet,
      namesBefore: olds && namesIn(olds, pair.mine),
    }));
  });
  const done: PairedTable[] = [];
  for (const isFollowing of [false, true]) {
    for (const { mine, theirs, own, sheet, namesBefore } of tables) {
      const isLed = mine.namedBy === 'leader' && theirs.namedBy === 'leader';
      if (isLed !== isFollowing) continue;
      const namedBy = isLed ? 'leader' : theirs.namedBy;
      const isListed = sheet.name.toLowerCase() === allowancesSheet.toLowerCase();
      const lines = stretchPairs(mine, theirs).flatMap(([some, others]) => {
        if (isLed) return byLeader(some, others, done);
        if (namedBy === 'given' && !isListed) return byPlace(some, others);
        return byName(some, others, namesBefore, isListed && namedBy === 'given');
      });
      if (lines.length > 0) done.push({ own, sheet, namedBy, lines });
    }
  }
  return done;
}

function namesIn(olds: readonly AskingTable[], mine: AskingTable): ReadonlySet<string> {
  const met = olds.filter(({ asks }) => [...asks].some((one) => mine.asks.has(one)));
  return new Set(met.flatMap(({ stretches }) => stretches.flat().map(({ name }) => name)));
}

/** Stretches go together one by one. Where one side has a single one, all lines are one table; where a table came or went,
 *  nothing but the place tells which line is which. */
function stretchPairs(
  { stretches: mine }: AskingTable,
  { stretches: theirs }: AskingTable,
): readonly (readonly [readonly AskingLine[], readonly AskingLine[]])[] {
  if (mine.length === theirs.length) return mine.map((some, at) => [some, theirs[at] ?? []] as const);
  const isOneTable = mine.flat().length === theirs.flat().length || mine.length === 1 || theirs.length === 1;
  return isOneTable ? [[mine.flat(), theirs.flat()]] : [];
}

function byPlace(mine: readonly AskingLine[], theirs: readonly AskingLine[]): readonly PairedLine[] {
  return Array.from({ length: Math.max(mine.length, theirs.length) }, (_, at) => ({
    mine: mine[at] ?? null,
    theirs: theirs[at] ?? null,
  }));
}

function byLeader(
  mine: readonly AskingLine[],
  theirs: readonly AskingLine[],
  leaders: readonly PairedTable[],
): readonly PairedLine[] {
  const rows = new Map<string, number>();
  for (const { own, lines } of leaders) {
    for (const line of lines)
      if (line.mine && line.theirs) rows.set(`${own.id} ${line.mine.row}`, line.theirs.row);
  }
  const left = new Set(theirs);
  const isLed = mine.some(({ leader }) => leader && rows.has(`${leader.sheet} ${leader.row}`));
  if (!isLed) return byPlace(mine, theirs);
  const paired = mine.map((one): PairedLine => {
    const row = one.leader ? rows.get(`${one.leader.sheet} ${one.leader.row}`) : undefined;
    const met = theirs.find(
      (other) => left.has(other) && other.leader?.sheet === one.leader?.sheet && other.leader?.row === row,
    );
    if (met) left.delete(met);
    return { mine: one, theirs: met ?? null };
  });
  return [...paired, ...[...left].map((one) => ({ mine: null, theirs: one }))];
}

function byName(
  mine: readonly AskingLine[],
  theirs: readonly AskingLine[],
  namesBefore: ReadonlySet<string> | null,
  isListed: boolean,
): readonly PairedLine[] {
  const met = new Map<AskingLine, AskingLine>();
  const left = new Set(theirs);
  const meet = (one: AskingLine, other: AskingLine) => {
    met.set(one, other);
    left.delete(other);
  };
  for (const one of mine) {
    const other =
      one.name === '' ? undefined : theirs.find((line) => left.has(line) && line.name === one.name);
    if (other) meet(one, other);
  }
  /** Whether a line may have been called otherwise, by the shop or by the template. */
  const isRenamed = (one: AskingLine, other: AskingLine) => {
    if (other.name === '') return one.name === '' || (isListed && isBlank(other));
    if (one.name === '') return isListed && namesBefore?.has(other.name) === true;
    if (namesBefore) return isListed ? namesBefore.has(other.name) : namesBefore.has(one.name);
    return !isListed && mine.length === theirs.length;
  };
  // A line below one that is met goes with the line below that one.
  for (const [at, one] of mine.entries()) {
    const above = at === 0 ? null : met.get(mine[at - 1] ?? one);
    const other = above === null ? theirs[0] : above && theirs[theirs.indexOf(above) + 1];
    if (!met.has(one) && other && left.has(other) && isRenamed(one, other)) meet(one, other);
  }
  for (const isNamed of [false, true]) {
    for (const one of mine) {
      if (met.has(one) || (one.name !== '') !== isNamed || (isNamed && !isListed)) continue;
      const blank = theirs.find((other) => left.has(other) && (isNamed ? isBlank(other) : other.name === ''));
      if (blank) meet(one, blank);
    }
  }
  return [
    ...mine.map((one) => ({ mine: one, theirs: met.get(one) ?? null })),
    ...[...left].map((one) => ({ mine: null, theirs: one })),
  ];
}

function isBlank({ name, cells }: AskingLine): boolean {
  return name === '' && cells.every(({ cell }) => cell.content === null);
}
