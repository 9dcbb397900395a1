import { describe, expect, test } from 'vitest';
import type { Calculator, CellEdit } from '../../src/engine/calculator.ts';
import { createFiguring } from '../../src/session/figuring.ts';
import { applyDifference, type Difference } from '../../src/workbook/difference.ts';
import { formula, sampleWorkbook } from '../workbook/sample.ts';

/** A calculator that does as it is told, and a list of what it was asked and what came of it. */
function staged(apply: (edits: readonly CellEdit[]) => Promise<readonly []>) {
  const told: string[] = [];
  const calculator: Calculator = {
    open: async (book) => {
      told.push(`open ${JSON.stringify(book.sheets[0]?.rows[4]?.[0] ?? null)}`);
      return [];
    },
    apply: async (edits) => {
      told.push(`apply ${edits.length}`);
      return apply(edits);
    },
    evaluate: async () => [],
    dependents: async () => [],
    close: async () => {},
  };
  return { calculator, told };
}

const news = (told: string[]) => ({
  began: () => told.push('began'),
  all: (changes: readonly { value: unknown }[]) => told.push(`all ${JSON.stringify(changes)}`),
  some: () => told.push('some'),
  finished: () => told.push('finished'),
  stopped: (sentence: string) => told.push(sentence),
});

const runaway: Difference = [
  {
    type: 'cell',
    sheet: 'pieces',
    address: { row: 4, column: 0 },
    before: null,
    after: formula('SUM(B1:B9)'),
  },
];

describe('figuring keeps the calculator in step', () => {
  test('edits made while it is busy go to it together', async () => {
    const { calculator, told } = staged(async () => []);
    const workbook = sampleWorkbook();
    const figuring = createFiguring(workbook, Promise.resolve(calculator), news(told));
    await figuring.settled();
    for (let turn = 0; turn < 3; turn += 1) figuring.after(runaway, applyDifference(workbook, runaway));
    await figuring.settled();
    expect(told.filter((one) => one.startsWith('apply'))).toEqual(['apply 3']);
  });

  test('a formula that it does not come back from is set aside, and the rest is figured again', async () => {
    const { calculator, told } = staged(() => Promise.reject(new Error('too long')));
    const workbook = sampleWorkbook();
    const figuring = createFiguring(workbook, Promise.resolve(calculator), news(told));
    figuring.after(runaway, applyDifference(workbook, runaway));
    await figuring.settled();
    figuring.after(runaway, applyDifference(workbook, runaway));
    await figuring.settled();
    const last = told.filter((one) => one.startsWith('all')).at(-1) ?? '';
    expect(told).toContain('open null');
    expect(last).toContain('"fault":"gave_up"');
    expect(last).toContain('"sheet":"Pieces","row":4,"column":0');
    expect(told.at(-1)).toBe('finished');
  });

  test('without an engine it says so, once, and what is typed later is not lost', async () => {
    const told: string[] = [];
    const workbook = sampleWorkbook();
    const figuring = createFiguring(workbook, Promise.reject(new Error('no worker')), news(told));
    figuring.after(runaway, applyDifference(workbook, runaway));
    expect(await figuring.settled()).toBeNull();
    expect(told.filter((one) => one.includes('cannot be figured'))).toHaveLength(1);
  });

  test('once closed it asks nothing more', async () => {
    const { calculator, told } = staged(async () => []);
    const workbook = sampleWorkbook();
    const figuring = createFiguring(workbook, Promise.resolve(calculator), news(told));
    await figuring.settled();
    figuring.close();
    figuring.after(runaway, applyDifference(workbook, runaway));
    await figuring.settled();
    expect(told.filter((one) => one.startsWith('apply'))).toEqual([]);
  });
});
