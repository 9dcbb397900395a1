import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CellAddress, writeAddress } from '../../src/base/address.ts';
import type { CellBlock, CellValue, Plain } from '../../src/base/value.ts';
import { isFault } from '../../src/base/value.ts';
import { type Argument, isBlock, type RawArgument } from '../../src/catalogue/argument.ts';
import type { AnyTradeFunction } from '../../src/catalogue/define.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { createCalculator } from '../../src/engine/create.ts';

const calculator = createCalculator({ functions: tradeFunctions });
await calculator.open({ sheets: [{ name: 'Trial', rows: [] }], names: {} });

/** What the spec itself says, as a cell would show it. */
function bySpec(spec: AnyTradeFunction, raw: readonly RawArgument[]): CellValue {
  const outcome = spec.call(raw);
  if (outcome.ok) return outcome.value.value;
  return { fault: 'trade', sentence: wordFault(outcome.fault) };
}

/** The call in A1, its arguments in the cells below, as many columns for each as a table may need. */
async function throughEngine(spec: AnyTradeFunction, raw: readonly RawArgument[]): Promise<CellValue> {
  const cells: (CellAddress & { readonly content: Plain })[] = [];
  const written = raw.map((one, at) => {
    const from = { row: 1, column: at * 20 };
    const block = isBlock(one) ? one : [[one]];
    for (const [down, row] of block.entries()) {
      for (const [across, value] of row.entries()) {
        cells.push({ row: from.row + down, column: from.column + across, content: plain(value) });
      }
    }
    const width = Math.max(...block.map((row) => row.length));
    const to = { row: from.row + block.length - 1, column: from.column + width - 1 };
    return isBlock(one) ? `${writeAddress(from)}:${writeAddress(to)}` : writeAddress(from);
  });
  const call = `${spec.name}(${written})`;
  const edits = cells.map((one) => ({ sheet: 'Trial', ...one }));
  await calculator.apply([...edits, { sheet: 'Trial', row: 0, column: 0, content: { formula: call } }]);
  const [inCell = null, asked = null] = await calculator.evaluate('Trial', ['A1', call]);
  await calculator.apply(edits.map((one) => ({ ...one, content: null })));
  if (isBlock(inCell) || isBlock(asked)) throw new Error(`${call} gave a block`);
  expect(plainly(inCell)).toEqual(plainly(asked));
  return asked;
}

function plain(value: CellValue): Plain {
  if (isFault(value)) throw new Error('No cell can be given a fault.');
  return value;
}

/** A fault without the way to it. */
function plainly(value: CellValue): CellValue {
  return isFault(value) ? { fault: value.fault, sentence: value.sentence } : value;
}

function argumentsOf(spec: AnyTradeFunction, example = spec.examples[0]): readonly RawArgument[] {
  return Object.keys(spec.arguments).map((name) => example?.given[name] ?? null);
}

/** Mostly what fits; now and then something that does not. */
function valuesFor({ range, choices }: Argument<unknown>, usual: RawArgument): fc.Arbitrary<RawArgument> {
  const fitting = range
    ? fc
        .double({ min: range.least, max: range.most, noNaN: true })
        .map((number) => (range.whole ? Math.round(number) : number))
    : fc.constantFrom<RawArgument>(...(choices ?? [usual]));
  return fc.oneof(
    { weight: 6, arbitrary: fc.constant<RawArgument>(usual) },
    { weight: 8, arbitrary: fitting },
    { weight: 1, arbitrary: fc.constantFrom<RawArgument>(null, '', 'duct', '12', true, -1, 0, 1e9) },
    { weight: 1, arbitrary: fc.constant<CellBlock>([[1, 2]]) },
  );
}

describe.each(tradeFunctions.map((spec) => [spec.name, spec] as const))(
  '%s comes to the same through the engine as by itself',
  (_, spec) => {
    test('in its examples', async () => {
      expect(spec.examples).not.toEqual([]);
      for (const example of spec.examples) {
        const raw = argumentsOf(spec, example);
        expect(await throughEngine(spec, raw)).toEqual(bySpec(spec, raw));
      }
    });

    test('with other values, sound or not', async () => {
      const usual = argumentsOf(spec);
      const values = Object.values(spec.arguments).map((one, at) => valuesFor(one, usual[at] ?? null));
      await fc.assert(
        fc.asyncProperty(fc.tuple(...values), async (raw) => {
          expect(await throughEngine(spec, raw)).toEqual(bySpec(spec, raw));
        }),
        { numRuns: 60 },
      );
    }, 30_000);
  },
);
