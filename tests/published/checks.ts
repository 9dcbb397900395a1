import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCsv } from './csv.ts';

/** One figure that somebody outside this project gave, or that was worked out apart from it. */
export interface PublishedRow {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: string;
  readonly expected: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly source: string;
  readonly status: string;
}

/** What a row starts from, when its inputs are written `D_in=12; L_ft=20`. */
export interface RowInputs {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}

/** The product's own figure for a row. */
export type Proof = (inputs: RowInputs, row: PublishedRow) => number;

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
    expected: Number(row.expected),
    unit: row.unit ?? '',
    tolerance: Number(row.tolerance),
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
        const figure = proof(inputsOf(row), row);
        expect(Math.abs(figure - row.expected), `got ${figure}`).toBeLessThanOrEqual(row.tolerance + 1e-12);
      });
    }

    it('each has a proof, or a reason why not yet', () => {
      const listed = notYet.flatMap((group) => group.ids);
      expect([...Object.keys(proofs), ...listed].sort()).toEqual(rows.map((row) => row.id).sort());
      expect(notYet.filter((group) => group.why.trim() === '' || group.ids.length === 0)).toEqual([]);
      expect(rows.filter((row) => !Number.isFinite(row.expected) || !(row.tolerance >= 0))).toEqual([]);
    });
  });
}

function inputsOf(row: PublishedRow): RowInputs {
  const parts = new Map(
    row.inputs.split(';').map((part): [string, string] => {
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
      const number = Number(text(name));
      if (!Number.isFinite(number)) throw new Error(`${row.id}: ${name} is no number.`);
      return number;
    },
  };
}
