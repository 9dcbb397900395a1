import { readFile } from 'node:fs/promises';
import { readOds } from 'hucre/ods';
import { readXlsx } from 'hucre/xlsx';
import { expect, test } from 'vitest';
import { readCsv } from '../../src/workbook/csv.ts';
import { openFiles } from './files-page.ts';

test('the open sheet is handed out as CSV, as shown or with every digit, and no text in it is a formula elsewhere', async () => {
  const demo = await openFiles();
  await demo.goTo('Pieces');
  await demo.type('A2', '@home');
  await demo.files();
  const shown = await demo.handedOut('Hand out Pieces as CSV');
  expect(shown.name).toBe('larkspur-lane-lot-7-pieces.csv');
  const text = await readFile(shown.path, 'utf8');
  expect(text.startsWith('\uFEFFPiece,Shape,Width')).toBe(true);
  const rows = readCsv(text);
  expect(rows[1]?.slice(0, 5)).toEqual(["'@home", 'round', '16″', '', '14′ 6 ½″']);
  await demo.page.getByLabel(/with every digit/).check();
  const exact = readCsv(await readFile((await demo.handedOut('Hand out Pieces as CSV')).path, 'utf8'));
  expect(exact[1]?.slice(0, 5)).toEqual(["'@home", 'round', '16', '', '174.5']);
  await demo.goTo('Blanks');
  await demo.files();
  await demo.page.getByLabel(/with every digit/).check();
  const blanks = readCsv(await readFile((await demo.handedOut('Hand out Blanks as CSV')).path, 'utf8'));
  // Girth of 16 in inside in 26 ga, π × (16 + 0.0217), and 1 in of seam.
  expect(Number(blanks[1]?.[1])).toBeCloseTo(Math.PI * 16.0217 + 1, 3);
  expect(demo.faults).toEqual([]);
});

test.each([
  ['ods', readOds],
  ['xlsx', readXlsx],
] as const)(
  'the whole workbook is handed out as .%s, with the figures of the engine',
  async (ending, read) => {
    const demo = await openFiles();
    await demo.goTo('Pieces');
    await demo.type('C2', '18');
    await demo.files();
    const { name, path } = await demo.handedOut(`Hand out as .${ending}`);
    expect(name).toBe(`larkspur-lane-lot-7.${ending}`);
    const { sheets } = await read(new Uint8Array(await readFile(path)));
    expect(sheets.map((sheet) => sheet.name)).toEqual([
      'Job',
      'Pieces',
      'Taps',
      'Blanks',
      'Wrap',
      'Seal and fasten',
      'Allowances',
      'Formulas',
    ]);
    // π × 18 + 17 of the published table.
    expect(sheets[4]?.rows[1]?.[2]).toBeCloseTo(Math.PI * 18 + 17, 9);
    expect(demo.faults).toEqual([]);
  },
);
