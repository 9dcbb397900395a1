import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type CellValue, isFault } from '../../src/base/value.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { fill } from '../../src/templates/fill.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';
import { placeOfKey } from '../../src/workbook/place-key.ts';

function opened(name: string): Workbook {
  const text = readFileSync(new URL(`../../sheets/${name}.stretchout.json`, import.meta.url), 'utf8');
  const read = readWorkbookFile(text);
  if (!read.ok) throw new Error(`${name} does not open`);
  return read.value.workbook;
}

const offer = opened('price-and-offer.job');
const blank = opened('price-and-offer.template');

async function figured(
  workbook: Workbook,
  givens: WorkedExample['given'] = {},
): Promise<Map<string, CellValue>> {
  const filled = fill(workbook, givens);
  if (!filled.ok) throw new Error(`There is no given at ${filled.fault.place}.`);
  const values = await figureWorkbook(filled.value, createCalculator({ functions: tradeFunctions }));
  return new Map(
    [...values].flatMap(([sheet, cells]) =>
      [...cells].map(([key, value]) => {
        const { row, column } = placeOfKey(key);
        return [`${sheet}!${String.fromCharCode(65 + column)}${row + 1}`, value] as const;
      }),
    ),
  );
}

const faults = (values: Map<string, CellValue>) => [...values].filter(([, value]) => isFault(value));

test('a new offer says where to begin, has no price, and nothing in it is a fault', async () => {
  const values = await figured(blank);
  expect(faults(values)).toEqual([]);
  expect(values.get('Price!B21')).toBe('look: nothing is listed yet; begin on Things and Work');
  expect(values.get('Job!B17')).toBe(values.get('Price!B21'));
  expect(values.get('Price!B20')).toBe('');
});

test('the order holds the things of the choice that is sold', async () => {
  for (const [chosen, wrap, not] of [
    ['first', 'R-8 wrap', 'R-6 wrap'],
    ['second', 'R-6 wrap', 'R-8 wrap'],
  ] as const) {
    const values = await figured(offer, { 'Job!B12': chosen });
    const listed = Array.from({ length: 24 }, (_, index) => values.get(`Order!A${index + 3}`));
    expect(listed).toContain(wrap);
    expect(listed).not.toContain(not);
    expect(values.get('Price!B20')).toBe(values.get(chosen === 'first' ? 'Price!B11' : 'Price!C11'));
  }
});

test('what is dearer, takes longer or carries more overhead never lowers the price', async () => {
  const price = async (givens: WorkedExample['given']) =>
    Number((await figured(offer, givens)).get('Price!B11'));
  const before = await price({});
  for (const more of [
    { 'Things!B2': 7 },
    { 'Things!F2': 39 },
    { 'Work!B6': 17 },
    { 'Price!B16': 1 },
    { 'Allowances!B2': 29 },
    { 'Allowances!B6': 0.21 },
    { 'Allowances!B7': 0.16 },
    { 'Allowances!B9': 0.01 },
  ]) {
    expect(await price(more), JSON.stringify(more)).toBeGreaterThan(before);
  }
});

test('the same number as a markup always asks for less than as a margin', async () => {
  for (const margin of [0.05, 0.2, 0.5]) {
    const values = await figured(offer, { 'Allowances!B7': margin });
    expect(Number(values.get('Price!B13'))).toBeLessThan(Number(values.get('Price!B9')));
  }
});

test.each([
  ['a thing without a price', { 'Things!A18': 'Gold leaf', 'Things!B18': 1 }, 'stop: a thing has no price'],
  ['a thing without a number', { 'Things!A18': 'Mastic' }, 'stop: a thing has no price or no number'],
  ['a work of no known name', { 'Work!A8': 'Paint it', 'Work!B8': 3 }, 'stop: some work has no hours'],
  ['a thin margin', { 'Allowances!B7': 0.05 }, 'look: the margin is under'],
])('%s is told before the offer goes out', async (_, givens, sentence) => {
  const values = await figured(offer, givens);
  expect(faults(values)).toEqual([]);
  expect(values.get('Offer!B28')).toContain(sentence);
  expect(values.get('Order!B2')).toContain(sentence);
});
