import fc from 'fast-check';
import { expect, test } from 'vitest';
import { usableNames } from '../../src/engine/names.ts';
import { formulaReader, type ReadFormula } from '../../src/engine/read-formula.ts';

const names = usableNames({ lap: 'Pieces!$B$2', lap2: 'Pieces!$B$2:$B$9' }, new Set(['pieces', 'sheet 2']));
const reader = () =>
  formulaReader({ functions: ['SUM', 'IF', 'LOG10', 'VLOOKUP'], names, sheets: ['Pieces', 'Sheet 2'] });

const row = fc.oneof(
  fc.integer({ min: 1, max: 99_999 }),
  fc.constantFrom(0, 1, 9, 10, 99_999, 100_000, 1_048_576),
);
const shapes: readonly ((rows: readonly (number | undefined)[]) => string)[] = [
  ([a, b]) => `A${a}*2+$B$${b}`,
  ([a, b, c]) => `SUM(A${a}:B${b}) + C${c}/12`,
  ([a, b]) => `IF('Sheet 2'!A${a}="A12","A${a}",LOG10(B${b}))`,
  ([a, b]) => `VLOOKUP(A${a},Pieces!$A$2:$F$${b},3)`,
  ([a, b]) => `SUM( A${a} : A${b} )`,
  ([a, b]) => `lap*A${a}+SUM(lap2)+B${b}`,
  ([a, b]) => `A${a}:B${b}`,
  ([a, b]) => `2.5E1*ABC${a}-${b}`,
  ([a]) => `A0${a}+1`,
  ([a]) => `1000004*A${a}`,
  ([a]) => `A${a}*1E6`,
  ([a, b]) => `A${a}+10001E2*B${b}+1000`,
  ([a, b]) => `Sheet2!A${a}+A${b}`,
];

test('a formula filled down is read as it would be alone', () => {
  const filled = fc.array(
    fc.record({ shape: fc.constantFrom(...shapes), rows: fc.array(row, { minLength: 3, maxLength: 3 }) }),
    {
      minLength: 2,
      maxLength: 30,
    },
  );
  fc.assert(
    fc.property(filled, (formulas) => {
      const warm = reader();
      let above: ReadFormula | undefined;
      for (const { shape, rows } of formulas) {
        const text = shape(rows);
        for (const sheet of ['pieces', 'sheet 2']) {
          const read = warm.read(text, sheet, above);
          expect(told(read)).toEqual(told(reader().read(text, sheet)));
          for (const { sheet: other, range } of told(read).reaches ?? []) {
            expect(warm.columns.has(other, range.from.column)).toBe(true);
            expect(warm.columns.has(other, range.to.column)).toBe(true);
          }
          above = read;
        }
      }
    }),
    { seed: 20261125, numRuns: 300 },
  );
});

/** All that a reading says, be it worked out only now. */
function told(read: ReadFormula) {
  const { text, type } = read;
  return type === 'sound'
    ? { text, type, written: read.written, reaches: read.reaches }
    : { text, type, fault: read.fault };
}
