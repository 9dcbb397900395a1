import fc from 'fast-check';
import { expect, test } from 'vitest';
import { writeAddress } from '../../src/base/address.ts';
import type { CalculatorBook } from '../../src/engine/calculator.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { trialFunctions } from './trial-functions.ts';

const depth = 8;

/** Formulas that reach up to some rows up or down from their own, with `$` or without, in any of the columns beside them. */
const corner = fc.record({
  letter: fc.constantFrom('A', 'B', '$A', '$B'),
  fixed: fc.boolean(),
  shift: fc.integer({ min: -2, max: 2 }),
});
type Corner = typeof corner extends fc.Arbitrary<infer One> ? One : never;
const cornerAt = ({ letter, fixed, shift }: Corner, row: number) =>
  fixed ? `${letter}$${shift + 4}` : `${letter}${Math.max(1, row + shift)}`;

const shapes: readonly ((one: string, other: string) => string)[] = [
  (one, other) => `${one}*2+${other}`,
  (one, other) => `SUM(${one}:${other})+1`,
  (one, other) => `IF(${one}>3,${other},"A2")`,
  (one, other) => `LOG10(${one})&"A${other}"`,
  (one, other) => `ROWS(${one}:${other})+COLUMNS(${one}:${other})*100`,
  (one, other) => `Other!${one}-'Other'!${other}`,
  (one, other) => `AREA.PANEL(${one},${other})`,
  (one) => `${one}*1000004+lap`,
];

const column = fc.record({
  shape: fc.constantFrom(...shapes),
  one: corner,
  other: corner,
  /** A line in which somebody typed something else. */
  odd: fc.nat(depth),
});

test('a formula that was filled down comes to what it would come to alone', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(column, { minLength: 1, maxLength: 4 }),
      fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 2 * depth + 10, maxLength: 2 * depth + 10 }),
      async (columns, numbers) => {
        const given = (at: number) => [numbers[2 * at] ?? 0, numbers[2 * at + 1] ?? 0];
        const rows = Array.from({ length: depth }, (_, at) => [
          ...given(at),
          ...columns.map(({ shape, one, other, odd }) => ({
            formula: at === odd ? `A${at + 1}` : shape(cornerAt(one, at + 1), cornerAt(other, at + 1)),
          })),
        ]);
        const others = Array.from({ length: depth + 2 }, (_, at) => [...given(depth + 3 - at)]);
        const book: CalculatorBook = {
          sheets: [
            { name: 'Pieces', rows },
            { name: 'Other', rows: others },
          ],
          names: { lap: 'Pieces!$B$3' },
        };
        const calculator = createCalculator({ functions: trialFunctions });
        const values = await calculator.open(book);
        expect(values).toHaveLength(depth * columns.length);
        for (const { sheet, row, column, value } of values) {
          const cell = rows[row]?.[column];
          const text = typeof cell === 'object' ? cell.formula : '';
          const [alone] = await calculator.evaluate(sheet, [text]);
          const where = writeAddress({ row, column });
          expect({ where, text, value }).toEqual({ where, text, value: alone });
        }
        await calculator.close();
      },
    ),
    { seed: 20261125, numRuns: 200 },
  );
});
