import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCsv } from './csv.ts';

/** One figure that somebody outside this project gave, or that was worked out apart from it. */
export interface PublishedRow {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: string;
  /** As written: one figure, several (`30.0 x 9.3`, `11.25, 33.75`), or words. */
  readonly expected: string;
  readonly unit: string;
  readonly tolerance: number;
  readonly source: string;
  readonly status: string;
}

/** What a row starts from, where its inputs are written `D_in=12; L_ft=20` or `D1 = 10, H = 6 in`. */
export interface RowInputs {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}

/** The product's own figure for a row, its figures in the order of the row, or its words. */
export type Proof = (inputs: RowInputs, row: PublishedRow) => number | readonly number[] | string;

/** Rows that nothing in the product answers yet, and why. */
export interface NotYet {
  readonly why: string;
  readonly ids: readonly string[];
}

export function publishedRows(file: string): readonly PublishedRow[] {
  const text = readFileSync(new URL(`data/${file}`, import.meta.url), 'utf8');
  return readCsv(text).map((row) => ({
    id: row.id ?? '',
    quantity: row.quantity ?? '',
    inputs: row.inputs ?? '',
    expected: row.expected ?? '',
    unit: row.unit ?? '',
    tolerance: toleranceOf(row.tolerance ?? '', row.expected ?? ''),
    source: row.source ?? '',
    status: row.status ?? '',
  }));
}

/** One test for each row that has a proof, and one that every row has either a proof or a reason why not yet. */
export function holdAgainst(
  file: string,
  proofs: Readonly<Record<string, Proof>>,
  notYet: readonly NotYet[],
): void {
  const rows = publishedRows(file);
  describe(`figures of ${file}`, () => {
    for (const row of rows) {
      const proof = proofs[row.id];
      if (proof === undefined) continue;
      it(`${row.id}: ${row.quantity} (${row.inputs}) is ${row.expected} ${row.unit} - ${row.source} [${row.status}]`, () => {
        const got = proof(inputsOf(row), row);
        if (typeof got === 'string') return expect(got).toBe(row.expected);
        const figures = typeof got === 'number' ? [got] : got;
        const wanted = figuresIn(row.expected);
        expect(figures).toHaveLength(wanted.length);
        for (const [index, figure] of figures.entries()) {
          const miss = Math.abs(figure - (wanted[index] ?? Number.NaN));
          expect(miss, `got ${figures.join(', ')}`).toBeLessThanOrEqual(row.tolerance + 1e-12);
        }
      });
    }

    it('each has a proof, or a reason why not yet', () => {
      const listed = notYet.flatMap((group) => group.ids);
      expect([...Object.keys(proofs), ...listed].sort()).toEqual(rows.map((row) => row.id).sort());
      expect(notYet.filter((group) => group.why.trim() === '' || group.ids.length === 0)).toEqual([]);
      expect(rows.filter((row) => row.expected === '' || !(isInWords(row) || row.tolerance >= 0))).toEqual(
        [],
      );
    });
  });
}

/** `0.05`, or a share of the figure: `0.5 %`. */
function toleranceOf(written: string, expected: string): number {
  const share = /^([0-9.]+) ?%$/.exec(written)?.[1];
  return share === undefined ? Number(written) : (Number(share) / 100) * Math.abs(Number(expected));
}

function figuresIn(expected: string): readonly number[] {
  return expected.split(/,| x | and |\//).map(Number);
}

/** Words are compared as they stand, so they need no tolerance. */
function isInWords(row: PublishedRow): boolean {
  return figuresIn(row.expected).every(Number.isNaN);
}

function inputsOf(row: PublishedRow): RowInputs {
  const parts = new Map(
    row.inputs.split(/[;,]/).map((part): [string, string] => {
      const at = part.indexOf('=');
      return [part.slice(0, at).trim(), part.slice(at + 1).trim()];
    }),
  );
  const text = (name: string): string => {
    const found = parts.get(name);
    if (found === undefined) throw new Error(`${row.id} has no input ${name}: ${row.inputs}`);
    return found;
  };
  return {
    text,
    number: (name) => {
      const number = /^(-?[0-9]+(?:\.[0-9]+)?)(?: *[a-z0-9]+)?$/i.exec(text(name))?.[1];
      if (number === undefined) throw new Error(`${row.id}: ${name} is no number.`);
      return Number(number);
    },
  };
}
