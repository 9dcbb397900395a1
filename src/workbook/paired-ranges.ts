import { type CellRange, writeAddress } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { type Call, type Expression, everyPartOf, type Reference } from '../formula/expression.ts';
import { parseFormula } from '../formula/parse.ts';
import { cellsOf, sheetNamed } from './cells.ts';
import { isFormula, type NamedRange, type Sheet, type Workbook } from './document.ts';
import { followersOf, tablesTogether } from './followers.ts';

/** A formula that goes by the place of a line: it finds a line in one column and takes the same one of another, and the two
 *  would no longer go together. */
export interface TornPair {
  readonly reader: string;
  readonly one: string;
  readonly other: string;
}

/** The first formula that pairs a column of lines that change places with one of lines that do not. The blocks change
 *  places alike. */
export function tornPair(workbook: Workbook, blocks: readonly NamedRange[]): TornPair | null {
  if (blocks.length === 0) return null;
  const names = new Set(Object.keys(workbook.names).map((name) => name.toLowerCase()));
  for (const sheet of workbook.sheets) {
    for (const { address, cell } of cellsOf(sheet)) {
      if (!isFormula(cell.content) || !mayPair(cell.content.formula, names)) continue;
      const { formula } = cell.content;
      const parsed = parseFormula(formula);
      if (!parsed.ok) continue;
      const torn = tornIn(workbook, sheet, parsed.value, blocks);
      if (!torn) continue;
      const text = ({ from, to }: Reference) => formula.slice(from, to);
      return {
        reader: `${sheet.name}!${writeAddress(address)}`,
        one: text(torn[0]),
        other: text(torn[1]),
      };
    }
  }
  return null;
}

/** The tables whose lines change places when those of one do: itself and those that follow it; where that would tear a
 *  pair, the one that leads them too, with all that follow it. */
export function goingAlong(
  workbook: Workbook,
  sheet: Sheet,
  range: CellRange,
): Outcome<readonly NamedRange[], TornPair> {
  const below = [{ sheet: sheet.id, range }, ...followersOf(workbook, sheet, range)];
  const torn = tornPair(workbook, below);
  if (!torn) return done(below);
  const together = tablesTogether(workbook, sheet, range);
  const isMore = together.length > below.length && together.some((one) => one.sheet === sheet.id);
  return isMore && !tornPair(workbook, together) ? done(together) : failed(torn);
}

/** Whether a formula has two blocks in it, written out or by name. Taking a formula apart takes much longer. */
function mayPair(formula: string, names: ReadonlySet<string>): boolean {
  let blocks = formula.split(':').length - 1;
  if (blocks > 1 || names.size === 0) return blocks > 1;
  for (const [word] of formula.matchAll(/[\p{L}_][\p{L}\d_.]*/gu)) {
    if (names.has(word.toLowerCase())) blocks += 1;
    if (blocks > 1) return true;
  }
  return false;
}

function tornIn(
  workbook: Workbook,
  sheet: Sheet,
  formula: Expression,
  blocks: readonly NamedRange[],
): readonly [Reference, Reference] | null {
  for (const call of everyPartOf(formula)) {
    if (call.type !== 'call') continue;
    const columns = pairedIn(call).flatMap((reference) => {
      const place = placeOf(workbook, sheet, reference);
      return place && isColumn(place.range) ? [{ reference, ...place }] : [];
    });
    for (const [at, one] of columns.entries()) {
      for (const other of columns.slice(at + 1)) {
        const isAlike = heightOf(one.range) === heightOf(other.range);
        if (isAlike && lineIn(one, blocks) !== lineIn(other, blocks)) return [one.reference, other.reference];
      }
    }
  }
  return null;
}

/** In these the order of what is handed over makes no difference. */
const inAnyOrder = new Set(
  'SUM COUNT COUNTA COUNTBLANK MIN MAX AVERAGE MEDIAN PRODUCT AND OR TEXTJOIN CONCATENATE IF IFERROR'.split(
    ' ',
  ),
);

/** The references of a call that go together line by line: its own, and with INDEX those that MATCH looks in. */
function pairedIn(call: Call): readonly Reference[] {
  if (inAnyOrder.has(call.name)) return [];
  const own = call.arguments.filter(isReference);
  if (call.name !== 'INDEX') return own;
  const [, ...places] = call.arguments;
  const matches = places
    .filter((one) => one.type !== 'missing')
    .flatMap((one) => [...everyPartOf(one)])
    .filter((one) => one.type === 'call' && one.name === 'MATCH')
    .flatMap((one) => (one.type === 'call' ? one.arguments.slice(1, 2).filter(isReference) : []));
  return [...own.slice(0, 1), ...matches];
}

function isReference(one: Call['arguments'][number]): one is Reference {
  return one.type === 'range' || one.type === 'name';
}

function placeOf(workbook: Workbook, own: Sheet, reference: Reference): NamedRange | null {
  if (reference.type === 'cell') return null;
  if (reference.type === 'name') {
    const wanted = reference.name.toLowerCase();
    return Object.entries(workbook.names).find(([name]) => name.toLowerCase() === wanted)?.[1] ?? null;
  }
  const { start, end } = reference;
  const sheet = reference.sheet === null ? own : sheetNamed(workbook, reference.sheet);
  if (!sheet) return null;
  return {
    sheet: sheet.id,
    range: {
      from: { row: Math.min(start.row, end.row), column: Math.min(start.column, end.column) },
      to: { row: Math.max(start.row, end.row), column: Math.max(start.column, end.column) },
    },
  };
}

function isColumn({ from, to }: CellRange): boolean {
  return from.column === to.column && from.row < to.row;
}

function heightOf({ from, to }: CellRange): number {
  return to.row - from.row + 1;
}

/** At which of the lines that change places a column begins; null where it has none of them. */
function lineIn({ sheet, range }: NamedRange, blocks: readonly NamedRange[]): number | null {
  const block = blocks.find(
    (one) =>
      one.sheet === sheet &&
      range.from.column >= one.range.from.column &&
      range.from.column <= one.range.to.column &&
      range.from.row <= one.range.to.row &&
      range.to.row >= one.range.from.row,
  );
  return block ? range.from.row - block.range.from.row : null;
}
