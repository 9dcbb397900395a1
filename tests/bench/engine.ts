import { findFunction, tradeFunctions } from '../../src/catalogue/list.ts';
import type { Calculator, CalculatorBook } from '../../src/engine/calculator.ts';
import { createCalculator } from '../../src/engine/create.ts';
import type { Content } from '../../src/workbook/document.ts';
import type { Figure } from './figure.ts';

/** What a shop feels: how long a workbook takes to open, and how long an edit takes until its values are there. */
export async function benchEngine(): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const rows of [1000, 10_000]) figures.push(...(await benchRows(rows)));
  return figures;
}

/** Rows of givens, each with one call of a trade function, which all share one allowance, and a sum below them. */
function pieces(rows: number): CalculatorBook {
  const cells = Array.from({ length: rows }, (_, row): readonly Content[] => [
    12 + (row % 60),
    8 + (row % 40),
    { formula: `WEIGHT.BLANK(A${row + 1},B${row + 1},$F$1)` },
  ]);
  const [first = [], ...others] = cells;
  return {
    sheets: [{ name: 'Pieces', rows: [[...first, null, { formula: `SUM(C1:C${rows})` }, 26], ...others] }],
    names: {},
  };
}

async function benchRows(rows: number): Promise<readonly Figure[]> {
  const book = pieces(rows);
  const calculator = createCalculator({ functions: tradeFunctions });
  const about = `${rows.toLocaleString('en-US')} rows`;
  const open = await median(5, () => calculator.open(book));
  let gauge = 26;
  const all = await median(9, () => {
    gauge = gauge === 26 ? 24 : 26;
    return edit(calculator, 5, gauge);
  });
  let width = 12;
  const one = await median(25, () => {
    width = width === 12 ? 13 : 12;
    return edit(calculator, 0, width);
  });
  const bare = await median(9, async () => callDirectly(rows));
  await calculator.close();
  return [
    { name: `open, ${about}`, value: open, unit: 'ms' },
    { name: `edit that touches every row, ${about}`, value: all, unit: 'ms' },
    { name: `edit of one row and the sum, ${about}`, value: one, unit: 'ms' },
    { name: `the same calls without the engine, ${about}`, value: bare, unit: 'ms' },
    { name: `engine over bare calls, ${about}`, value: all / bare, unit: 'times' },
  ];
}

async function edit(calculator: Calculator, column: number, content: number): Promise<void> {
  const changes = await calculator.apply([{ sheet: 'Pieces', row: 0, column, content }]);
  if (changes.length === 0) throw new Error('The edit changed nothing, so nothing was measured.');
}

/** The results are added up, so that no call can be left out. */
function callDirectly(rows: number): number {
  const spec = findFunction('WEIGHT.BLANK');
  if (!spec) throw new Error('The catalogue has no WEIGHT.BLANK.');
  let sum = 0;
  for (let row = 0; row < rows; row += 1) {
    const outcome = spec.call([12 + (row % 60), 8 + (row % 40), 26]);
    if (outcome.ok) sum += Number(outcome.value.value);
  }
  if (!(sum > 0)) throw new Error('The calls gave nothing, so nothing was measured.');
  return sum;
}

/** The middle one of so many runs after one to warm up, in milliseconds. */
async function median(runs: number, work: () => Promise<unknown>): Promise<number> {
  await work();
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  times.sort((one, other) => one - other);
  return times[Math.floor(runs / 2)] ?? 0;
}
