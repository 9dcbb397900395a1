import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type CellValue, isFault } from '../../src/base/value.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { bookOf } from '../../src/engine/book.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { instantiate } from '../../src/templates/instantiate.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';

const file = new URL('../../sheets/practice.template.stretchout.json', import.meta.url);
const read = readWorkbookFile(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error('the practice workbook does not open');
const practice = read.value.workbook;
const topics = practice.sheets.filter(({ name }) => name !== 'Start' && name !== 'Allowances');

/** The rows of problems by their sheet, counted from 0. */
const problems = topics.flatMap((sheet) =>
  sheet.rows.flatMap((row, at) => (row[2]?.role === 'given' ? [{ sheet: sheet.name, row: at }] : [])),
);

async function opened() {
  const calculator = createCalculator({ functions: tradeFunctions });
  const values = new Map<string, CellValue>();
  const keep = (changes: Awaited<ReturnType<typeof calculator.open>>) => {
    for (const { sheet, row, column, value } of changes) values.set(`${sheet},${row},${column}`, value);
  };
  keep(await calculator.open(bookOf(practice)));
  return {
    values,
    at: (sheet: string, row: number, column: number) => values.get(`${sheet},${row},${column}`) ?? null,
    set: async (sheet: string, row: number, column: number, content: number | string | null) =>
      keep(await calculator.apply([{ sheet, row, column, content }])),
  };
}

test('there are thirty problems on seven sheets', () => {
  expect(topics.map(({ name }) => name)).toHaveLength(7);
  expect(problems).toHaveLength(30);
});

test('no key and no working shows before there is an answer, whatever the number and even where keys may be seen', async () => {
  const { values, at, set } = await opened();
  await set('Start', 3, 1, 'yes');
  for (let number = 1; number <= 12; number += 1) {
    await set('Start', 2, 1, number);
    expect([...values].filter(([, value]) => isFault(value))).toEqual([]);
    for (const { sheet, row } of problems) {
      expect([at(sheet, row, 3), at(sheet, row, 4), at(sheet, row, 5)]).toEqual(['', '', '']);
    }
  }
});

test('a wrong answer gets a hint and no key; the key of every problem and number holds when it is answered', async () => {
  const { values, at, set } = await opened();
  for (let number = 1; number <= 12; number += 1) {
    await set('Start', 2, 1, number);
    for (const { sheet, row } of problems) {
      const told = `${sheet}, line ${row + 1}, number ${number}`;
      await set('Start', 3, 1, 'no');
      await set(sheet, row, 2, 0.01);
      expect(at(sheet, row, 3), told).toMatch(/^look: .{10}/);
      expect(at(sheet, row, 4), told).toBe('');
      await set('Start', 3, 1, 'yes');
      const key = at(sheet, row, 4);
      expect(key, told).toBeTypeOf('number');
      await set(sheet, row, 2, Number(key));
      expect(at(sheet, row, 3), told).toBe('holds');
      expect(String(at(sheet, row, 5)), told).toMatch(/\d/);
    }
    expect(at('Start', 18, 3)).toBe(30);
    expect(at('Start', 18, 4)).toBe('holds');
    expect([...values].filter(([, value]) => isFault(value))).toEqual([]);
    for (const { sheet, row } of problems) await set(sheet, row, 2, null);
  }
}, 60_000);

test('an answer that is allowed may be written in its given, for every number', async () => {
  const { at, set } = await opened();
  await set('Start', 3, 1, 'yes');
  for (const number of [1, 12]) {
    await set('Start', 2, 1, number);
    for (const { sheet, row } of problems) {
      await set(sheet, row, 2, 0.01);
      const question = topics.find(({ name }) => name === sheet)?.rows[row]?.[2]?.question;
      const key = Number(at(sheet, row, 4));
      expect(key).toBeGreaterThanOrEqual(question?.least ?? Number.NaN);
      expect(key).toBeLessThanOrEqual(question?.most ?? Number.NaN);
      await set(sheet, row, 2, null);
    }
  }
});

test('everything but the answers is locked, in the job as well', () => {
  const job = instantiate(practice, { id: 'wren', title: 'Practice, Wren' });
  for (const sheet of job.sheets) {
    for (const cell of sheet.rows.flat()) {
      if (cell)
        expect(cell.locked ?? false, sheet.name).toBe(cell.role !== 'given' || sheet.name === 'Allowances');
    }
  }
});
