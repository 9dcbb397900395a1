import type { Corner, Expression, Reference } from '../formula/expression.ts';
import { limits } from '../formula/limits.ts';
import { referencesIn } from '../formula/references.ts';
import { cellCount, type Reach } from './reach.ts';
import { withReferences } from './with-references.ts';

/** What a sound formula comes to: as the engine writes it, and what it reads. */
export interface Written {
  readonly written: string;
  readonly reaches: readonly Reach[];
}

/** Formulas of one column that say the same from where each stands: the first of them, which tells the engine about all. */
export interface Kind {
  readonly written: string;
  readonly row: number;
  readonly column: number;
}

/** Knows formulas that differ from one read before in nothing but the rows of their cells, as those of a column do; they
 *  need not be taken apart again. */
export interface FilledDown {
  /** Such a formula; null where it has to be read. The one that stands above it is the likeliest to be alike. */
  readonly like: (text: string, sheet: string, above: unknown) => FilledFormula | null;
  /** Remembers a formula that was read in that sheet and is sound. */
  readonly learn: (text: string, sheet: string, expression: Expression, written: WriteReading) => void;
}

/** Writes an expression for the engine and tells what it reads. */
export type WriteReading = (expression: Expression) => Written;

export function filledDown(): FilledDown {
  const known = new Map<string, Pattern | null>();
  return {
    like: (text, sheet, above) => {
      if (text.length > limits.characters) return null;
      const first = above instanceof FilledFormula && above.pattern.sheet === sheet ? above.pattern : null;
      const alike = first ? follow(first, text) : null;
      if (alike) return alike;
      const pattern = known.get(keyOf(text, sheet));
      return pattern ? follow(pattern, text) : null;
    },
    learn: (text, sheet, expression, write) => {
      const key = keyOf(text, sheet);
      if (!known.has(key)) known.set(key, patternOf(text, sheet, expression, write));
    },
  };
}

/** A formula that was filled down. What it reads is worked out when somebody asks: of most cells nobody ever does. */
export class FilledFormula implements Written {
  readonly type = 'sound';
  readonly text: string;
  readonly written: string;
  readonly pattern: Pattern;

  constructor(text: string, written: string, pattern: Pattern) {
    this.text = text;
    this.written = written;
    this.pattern = pattern;
  }

  get reaches(): readonly Reach[] {
    const rows = rowsIn(this.pattern, this.text);
    return rows ? reachesAt(this.pattern, rows) : [];
  }

  /** The kind it belongs to where it stands; the last one of its column is the likeliest. */
  kindAt(row: number, column: number): Kind | undefined {
    const { pattern, text, written } = this;
    const rows = rowsIn(pattern, text);
    if (!rows) return undefined;
    const last = pattern.kinds.get(column);
    const isAlike = (first: number, at: number) =>
      !pattern.isRow[at] || rows[at] === (pattern.isFixed[at] ? first : first - (last?.row ?? 0) + row);
    if (last?.rows.every(isAlike)) return last;
    const kind = { written, row, column, rows };
    pattern.kinds.set(column, kind);
    return kind;
  }
}

/** A formula with its numbers taken out; those that are rows may be others. */
interface Pattern {
  /** The sheet in which it stands, in small letters. */
  readonly sheet: string;
  /** What stands before, between and after the numbers. */
  readonly between: readonly string[];
  readonly numbers: readonly string[];
  readonly isRow: readonly boolean[];
  /** Which rows stay as they are when the formula is filled down. */
  readonly isFixed: readonly boolean[];
  /** Whether the engine gets the text as it was typed. */
  readonly isAsTyped: boolean;
  /** Pieces of what the engine gets, with the index of a number between every two. */
  readonly pieces: readonly (string | number)[];
  /** The rows stand in for the indexes of their numbers. */
  readonly reaches: readonly Reach[];
  /** Whether all it reads are single cells, which can never be too many. */
  readonly isOfCells: boolean;
  /** The kind that was met last in each column. */
  readonly kinds: Map<number, Kind & { readonly rows: readonly number[] }>;
}

const digits = /[0-9]+/g;
/** Rows beyond every sheet mark where the rows of a pattern go. */
const beyond = 1_000_000;
const marks = /(1000[0-9]{3})/;

function keyOf(text: string, sheet: string): string {
  return `${sheet}\n${text.replaceAll(digits, '0')}`;
}

function patternOf(text: string, sheet: string, expression: Expression, write: WriteReading): Pattern | null {
  const runs = [...text.matchAll(digits)].map((run) => ({ text: run[0], end: run.index + run[0].length }));
  // A name has become cells in the expression, whose places are not those of the text.
  if (referencesIn(text).some((one) => one.type === 'name')) return null;
  // A number of its own that looks like a mark; it may be written otherwise in the text, as 1E6 is.
  const plain = write(expression).written;
  if (runs.length > 500 || marks.test(plain)) return null;
  const isRow = runs.map(() => false);
  const marked = new Map<Reference, Reference>();
  for (const reference of referencesIn(expression)) {
    if (reference.type === 'name') return null;
    const colon = reference.type === 'range' ? text.lastIndexOf(':', reference.to) : reference.to;
    const ends = reference.type === 'range' ? [colon, reference.to] : [reference.to];
    const corners = reference.type === 'range' ? [reference.start, reference.end] : [reference];
    const places = ends.map((end) => runs.findIndex((run) => run.end === end));
    if (places.some((place, at) => Number(runs[place]?.text) - 1 !== corners[at]?.row)) return null;
    for (const place of places) isRow[place] = true;
    const [first = 0, last = first] = places;
    const at = (corner: Corner, place: number): Corner => ({ ...corner, row: beyond + place - 1 });
    marked.set(
      reference,
      reference.type === 'range'
        ? { ...reference, start: at(reference.start, first), end: at(reference.end, last) }
        : { ...reference, ...at(reference, first) },
    );
  }
  const { written, reaches } = write(withReferences(expression, (one) => marked.get(one) ?? one));
  const pieces = written.split(marks).map((piece, at) => (at % 2 === 0 ? piece : Number(piece) - beyond));
  const isFixed = runs.map(() => false);
  for (const [at, piece] of pieces.entries()) {
    if (typeof piece === 'number') isFixed[piece] = String(pieces[at - 1]).endsWith('$');
  }
  return {
    sheet,
    between: text.split(digits),
    numbers: runs.map((run) => run.text),
    isRow,
    isFixed,
    isAsTyped: plain === text,
    pieces,
    reaches,
    isOfCells: reaches.every(
      (reach) => reach.range.from.row === reach.range.to.row && cellCount(reach) === 1,
    ),
    kinds: new Map(),
  };
}

function follow(pattern: Pattern, text: string): FilledFormula | null {
  const rows = rowsIn(pattern, text);
  if (!rows) return null;
  if (!pattern.isOfCells) {
    const cells = reachesAt(pattern, rows).reduce((sum, reach) => sum + cellCount(reach), 0);
    if (cells > limits.cells) return null;
  }
  return new FilledFormula(text, pattern.isAsTyped ? text : writtenWith(pattern, rows), pattern);
}

function writtenWith({ pieces }: Pattern, rows: readonly number[]): string {
  return pieces.map((piece) => (typeof piece === 'string' ? piece : (rows[piece] ?? 0))).join('');
}

/** The rows that a text has where the pattern has some, each at the index of its number; null where the texts differ in
 *  anything else. */
function rowsIn({ between, numbers, isRow }: Pattern, text: string): readonly number[] | null {
  const rows: number[] = [];
  let at = 0;
  for (let index = 0; index < numbers.length; index += 1) {
    const before = between[index] ?? '';
    if (!text.startsWith(before, at)) return null;
    at += before.length;
    const number = numbers[index] ?? '';
    if (!isRow[index]) {
      if (!text.startsWith(number, at)) return null;
      at += number.length;
      rows.push(0);
      continue;
    }
    let row = 0;
    const start = at;
    for (let digit = digitAt(text, at); digit !== null; digit = digitAt(text, at)) {
      if (at === start && digit === 0) return null;
      row = row * 10 + digit;
      at += 1;
    }
    if (row === 0 || row > limits.rows) return null;
    rows.push(row);
  }
  const after = between[numbers.length] ?? '';
  return text.length === at + after.length && text.endsWith(after) ? rows : null;
}

function digitAt(text: string, at: number): number | null {
  const digit = text.charCodeAt(at) - 48;
  return digit >= 0 && digit <= 9 ? digit : null;
}

function reachesAt({ reaches }: Pattern, rows: readonly number[]): readonly Reach[] {
  const rowAt = (mark: number) => (rows[mark - beyond + 1] ?? 0) - 1;
  return reaches.map(({ sheet, range: { from, to } }): Reach => {
    const [one, other] = [rowAt(from.row), rowAt(to.row)];
    return {
      sheet,
      range: {
        from: { row: Math.min(one, other), column: from.column },
        to: { row: Math.max(one, other), column: to.column },
      },
    };
  });
}
