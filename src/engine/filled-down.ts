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

/** Knows formulas that differ from one read before in nothing but the rows of their cells, as those of a column do; they
 *  need not be taken apart again. */
export interface FilledDown {
  /** What such a formula comes to; null where it has to be read. */
  readonly like: (text: string, sheet: string) => Written | null;
  /** Remembers a formula that was read in that sheet and is sound. */
  readonly learn: (text: string, sheet: string, expression: Expression, written: WriteReading) => void;
}

/** Writes an expression for the engine and tells what it reads. */
export type WriteReading = (expression: Expression) => Written;

export function filledDown(): FilledDown {
  const known = new Map<string, Pattern | null>();
  return {
    like: (text, sheet) => {
      const pattern = known.get(keyOf(text, sheet));
      return pattern && text.length <= limits.characters ? follow(pattern, text) : null;
    },
    learn: (text, sheet, expression, write) => {
      const key = keyOf(text, sheet);
      if (!known.has(key)) known.set(key, patternOf(text, expression, write));
    },
  };
}

/** A formula with its numbers taken out; those that are rows may be others. */
interface Pattern {
  readonly numbers: readonly string[];
  readonly isRow: readonly boolean[];
  /** Pieces of what the engine gets, with the index of a number between every two. */
  readonly pieces: readonly (string | number)[];
  /** The rows stand in for the indexes of their numbers. */
  readonly reaches: readonly Reach[];
}

const digits = /[0-9]+/g;
/** Rows beyond every sheet mark where the rows of a pattern go. */
const beyond = 1_000_000;
const marks = /(1000[0-9]{3})/;

function keyOf(text: string, sheet: string): string {
  return `${sheet}\n${text.replaceAll(digits, '0')}`;
}

function patternOf(text: string, expression: Expression, write: WriteReading): Pattern | null {
  const runs = [...text.matchAll(digits)].map((run) => ({ text: run[0], end: run.index + run[0].length }));
  // A name has become cells in the expression, whose places are not those of the text.
  if (referencesIn(text).some((one) => one.type === 'name')) return null;
  if (text.includes('1000') || runs.length > 500) return null;
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
  return { numbers: runs.map((run) => run.text), isRow, pieces, reaches };
}

function follow({ numbers, isRow, pieces, reaches }: Pattern, text: string): Written | null {
  const own = text.match(digits) ?? [];
  for (const [at, number] of own.entries()) {
    if (!isRow[at] && number !== numbers[at]) return null;
    if (isRow[at] && (number.startsWith('0') || Number(number) > limits.rows)) return null;
  }
  const rowAt = (mark: number) => Number(own[mark - beyond + 1]) - 1;
  const read = reaches.map(({ sheet, range: { from, to } }): Reach => {
    const [one, other] = [rowAt(from.row), rowAt(to.row)];
    return {
      sheet,
      range: {
        from: { row: Math.min(one, other), column: from.column },
        to: { row: Math.max(one, other), column: to.column },
      },
    };
  });
  if (read.reduce((sum, reach) => sum + cellCount(reach), 0) > limits.cells) return null;
  let written = '';
  for (const piece of pieces) written += typeof piece === 'string' ? piece : own[piece];
  return { written, reaches: read };
}
