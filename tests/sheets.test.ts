import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetFiles } from '../scripts/sheets/files.ts';
import { type CellValue, isFault } from '../src/base/value.ts';
import { tradeFunctions } from '../src/catalogue/list.ts';
import { createCalculator } from '../src/engine/create.ts';
import { figureWorkbook } from '../src/engine/figure-workbook.ts';
import { runExample } from '../src/templates/example.ts';
import { fill } from '../src/templates/fill.ts';
import { instantiate } from '../src/templates/instantiate.ts';
import type { Sheet, Workbook, WorkedExample } from '../src/workbook/document.ts';
import { type KeptWorkbook, readWorkbookFile } from '../src/workbook/file.ts';
import { standingOf } from '../src/workbook/standing.ts';
import { placeOfKey, type Values } from '../src/workbook/values.ts';

const folder = new URL('../sheets/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.stretchout.json'));

function textOf(name: string): string {
  return readFileSync(new URL(name, folder), 'utf8');
}

function open(name: string): KeptWorkbook {
  const opened = readWorkbookFile(textOf(name));
  if (!opened.ok) throw new Error(`${name}: ${JSON.stringify(opened.fault)}`);
  return opened.value;
}

function figure(workbook: Workbook): Promise<Values> {
  return figureWorkbook(workbook, createCalculator({ functions: tradeFunctions }));
}

/** Every value by `Sheet, row, column`, so that a difference names its place. */
function plainly(values: Values): Record<string, CellValue> {
  return Object.fromEntries(
    [...values].flatMap(([sheet, cells]) =>
      [...cells].map(([key, value]) => {
        const { row, column } = placeOfKey(key);
        return [`${sheet}, ${row + 1}, ${column + 1}`, value];
      }),
    ),
  );
}

function standing(sheet: Sheet, values: Values) {
  const { toFill, looks, stops } = standingOf(sheet, values);
  return { toFill, looks, stops };
}

test('the files in sheets/ are those that their descriptions make; if not, run npx tsx scripts/sheets.ts', async () => {
  const made = await sheetFiles();
  expect([...made.keys()].sort()).toEqual(names.sort());
  for (const [name, text] of made) expect(textOf(name) === text, `${name} is stale`).toBe(true);
});

describe.each(names)('%s', (name) => {
  const { workbook, values } = open(name);

  test('opens, and its stored figures are those that the calculator comes to', async () => {
    expect(plainly(await figure(workbook))).toEqual(plainly(values));
  });

  test('has no fault in any figured cell', () => {
    const faults = Object.entries(plainly(values)).filter(([, value]) => isFault(value));
    expect(faults).toEqual([]);
  });

  test('says on each sheet what to do, and asks a question in each given', () => {
    for (const sheet of workbook.sheets) {
      expect(sheet.says).toMatch(/^[A-Z].{20,}\.$/);
      const givens = sheet.rows.flat().filter((cell) => cell?.role === 'given');
      for (const cell of givens) expect(cell?.question?.asks, sheet.name).toMatch(/[?.]$/);
    }
  });

  test('tells of each allowance where it comes from', () => {
    const sheet = workbook.sheets.find((one) => one.name === 'Allowances');
    const sources = sheet?.rows.filter((row) => row[1]?.content != null).map((row) => row[2]?.content) ?? [];
    expect(sources.length).toBeGreaterThan(20);
    for (const source of sources) expect(source).toMatch(/\w{3}/);
  });
});

const templates = names.filter((name) => name.includes('.template.'));

describe.each(templates)('the template %s', (name) => {
  const template = open(name).workbook;

  test('makes a job that comes to the same figures', async () => {
    const job = instantiate(template, { id: 'lot-8', title: 'Larkspur Lane, lot 8' });
    expect(plainly(await figure(job))).toEqual(plainly(await figure(template)));
    expect(job.template).toEqual(template.template);
  });

  test('has at least two worked examples, each telling how it was worked', () => {
    expect(template.examples.length).toBeGreaterThanOrEqual(2);
    for (const { source } of template.examples) expect(source).toMatch(/by hand from/);
  });

  test.each(template.examples)('holds its worked example: $name', async (example) => {
    expect(await runExample(template, example, figure)).toEqual({ type: 'holds' });
  });

  test('waits for the first piece and stops nothing while it is empty', () => {
    const values = open(name).values;
    const pieces = template.sheets.find((sheet) => sheet.name === 'Pieces');
    expect(pieces && standing(pieces, values)).toEqual({ toFill: 4, looks: 0, stops: 0 });
    for (const sheet of template.sheets) expect(standing(sheet, values).stops, sheet.name).toBe(0);
  });
});

describe('the demo job', () => {
  const { workbook, values } = open('demo.job.stretchout.json');

  test('stops nothing, leaves nothing to fill, and has one wrap that is worth a look', () => {
    const states = workbook.sheets.map((sheet) => [sheet.name, standing(sheet, values)]);
    const clear = { toFill: 0, looks: 0, stops: 0 };
    expect(Object.fromEntries(states)).toEqual({
      Job: clear,
      Pieces: clear,
      Wrap: { ...clear, looks: 1 },
      'Seal and fasten': clear,
      Allowances: clear,
    });
  });

  test('remembers the template it was made from', () => {
    expect(workbook.template).toEqual(open('round-trunk.template.stretchout.json').workbook.template);
  });

  test('stops the job when a blank no longer fits the sheet', async () => {
    const figured = await figure(answered({ 'Allowances!B18': 36 }));
    // S1 and S3: the others have a side of less than 36 in.
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 2 });
  });

  test('a line that is not finished stops the job at one place, and nothing else loses its figure', async () => {
    for (const half of [{ A8: 'S6' }, { C8: 12 }, { A8: 'S6', B8: 'rectangular', C8: 12, E8: 60 }]) {
      const entries = Object.entries(half).map(([place, value]) => [`Pieces!${place}`, value]);
      const figured = await figure(answered(Object.fromEntries(entries)));
      expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 1 });
    }
  });

  test('a piece with a wrap of its own is cut, checked and ordered by that wrap', async () => {
    const figured = await figure(answered({ 'Wrap!I3': 'R-11 wrap', 'Job!B12': 'geometry' }));
    const { values: before } = open('demo.job.stretchout.json');
    // π × (14 + 2 × 3) + 2 by geometry at 3 in; two pieces of a roll of 50 ft.
    expect(plainly(figured)['Wrap, 3, 3']).toBeCloseTo(Math.PI * 20 + 2, 9);
    expect(plainly(figured)['Wrap, 16, 2']).toBe(1);
    expect(plainly(figured)['Wrap, 15, 3']).toBe(14);
    expect(plainly(before)['Wrap, 16, 2']).toBe('');
  });

  function answered(answers: WorkedExample['given']): Workbook {
    const filled = fill(workbook, answers);
    if (!filled.ok) throw new Error(`There is no given at ${filled.fault.place}.`);
    return filled.value;
  }

  function stopsBySheet(figured: Values): Record<string, number> {
    const stops = workbook.sheets.map((sheet) => [sheet.name, standing(sheet, figured).stops] as const);
    return Object.fromEntries(stops.filter(([, count]) => count > 0));
  }
});
