import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetFiles } from '../scripts/sheets/files.ts';
import { writeAddress } from '../src/base/address.ts';
import { type CellValue, isFault } from '../src/base/value.ts';
import { tradeFunctions } from '../src/catalogue/list.ts';
import { createCalculator } from '../src/engine/create.ts';
import { figureWorkbook } from '../src/engine/figure-workbook.ts';
import { runExample } from '../src/templates/example.ts';
import { fill } from '../src/templates/fill.ts';
import { instantiate } from '../src/templates/instantiate.ts';
import { cellAt, cellsOf } from '../src/workbook/cells.ts';
import { compareNamed } from '../src/workbook/comparison.ts';
import type { Sheet, Workbook, WorkedExample } from '../src/workbook/document.ts';
import { type KeptWorkbook, readWorkbookFile } from '../src/workbook/file.ts';
import { orderLines } from '../src/workbook/order.ts';
import { placeOfKey } from '../src/workbook/place-key.ts';
import { shownValue, standingOf } from '../src/workbook/standing.ts';
import type { Values } from '../src/workbook/values.ts';

const folder = new URL('../sheets/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.stretchout.json'));
const names = files.filter((name) => !name.includes('.lots.'));

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
  expect([...made.keys()].sort()).toEqual(files.sort());
  for (const [name, text] of made) expect(textOf(name) === text, `${name} is stale`).toBe(true);
}, 30_000);

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
    expect(sources.length).toBeGreaterThan(3);
    for (const source of sources) expect(source).toMatch(/\w{3}/);
  });
});

const templates = names.filter((name) => name.includes('.template.'));

describe.each(templates)('the template %s', (name) => {
  const template = open(name).workbook;

  test('tells in its last revision what is new in it', () => {
    const { revision = 0 } = template.template ?? {};
    expect(revision).toBeGreaterThan(1);
    expect(template.revisions?.at(-1)).toMatchObject({
      revision,
      says: expect.stringMatching(/^[A-Z].{20,}\.$/),
    });
  });

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

  test('locks all but its givens and its allowances; the round trunk, which is there to build on, locks nothing', () => {
    const open = new Set(name.startsWith('practice.') ? [] : ['Allowances']);
    const wrong = template.sheets.flatMap((sheet) =>
      [...cellsOf(sheet)].flatMap(({ address, cell }) => {
        const isFilledIn = cell.role === 'given' && sheet.name !== 'Allowances';
        const isOpen = name.startsWith('round-trunk.') || open.has(sheet.name) || isFilledIn;
        const isAsMeant = (cell.locked ?? false) === !isOpen || cell.content === null;
        return isAsMeant ? [] : [`${sheet.name}!${writeAddress(address)}`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  test('waits for the first piece and stops nothing while it is empty', () => {
    const values = open(name).values;
    const pieces = template.sheets.find((sheet) => sheet.name === 'Pieces');
    if (pieces) expect(standing(pieces, values)).toEqual({ toFill: 4, looks: 0, stops: 0 });
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
      Taps: clear,
      Blanks: clear,
      Wrap: { ...clear, looks: 1 },
      'Seal and fasten': clear,
      Allowances: clear,
    });
  });

  test('costs what its order lines and their prices on Allowances come to', async () => {
    const demo = { workbook, values };
    const allowances = workbook.sheets.find((sheet) => sheet.id === 'allowances') ?? expect.fail();
    const { from, to } = workbook.names.prices?.range ?? expect.fail();
    const priceOf = (item: string) => {
      for (let row = from.row + 1; row <= to.row; row += 1) {
        const address = { row, column: 0 };
        const name = shownValue(allowances, address, cellAt(allowances, address), values);
        const price = cellAt(allowances, { row, column: 1 })?.content;
        if (name === item && typeof price === 'number') return price;
      }
      throw new Error(`${item} has no price.`);
    };
    const lines = orderLines(demo);
    expect(lines.length).toBeGreaterThan(6);
    const sum = lines.reduce((all, { item, quantity }) => all + Number(quantity) * priceOf(item), 0);
    expect(compareNamed(demo, demo, 'material_cost')?.after?.value).toBeCloseTo(sum, 9);
  });

  test('remembers the template it was made from', () => {
    expect(workbook.template).toEqual(open('round-trunk.template.stretchout.json').workbook.template);
  });

  test('stops the order, by the names of the pieces, when a blank no longer fits the sheet', async () => {
    const figured = await figure(answered({ 'Allowances!B20': 36 }));
    // S1 and S3: the others have a side of less than 36 in.
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Blanks: 2 });
    expect(said(figured, 'Job, 26, 2')).toContain('the order is without S1, S3;');
  });

  test('a line that is not finished stops the job at one place, and nothing else loses its figure', async () => {
    for (const half of [{ A8: 'S6' }, { C8: 12 }, { A8: 'S6', B8: 'rectangular', C8: 12, E8: 60 }]) {
      const figured = await figure(answered(on('Pieces', half)));
      expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 1 });
    }
    const figured = await figure(without('Pieces!E2'));
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 1 });
    expect(said(figured, 'Pieces, 2, 8')).toBe('stop: still to fill in: length');
    expect(said(figured, 'Job, 26, 2')).toContain('the order is without S1;');
  });

  test('a piece whose mark is deleted stops its line and the order', async () => {
    const figured = await figure(without('Pieces!A7'));
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 1 });
    expect(said(figured, 'Pieces, 7, 8')).toContain('sizes but no mark');
    expect(said(figured, 'Job, 26, 2')).toContain('the order is without an unmarked line;');
  });

  test('two pieces with one mark stop the job', async () => {
    const figured = await figure(answered({ 'Pieces!A6': 's4', 'Taps!A7': 'S4' }));
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Pieces: 2 });
  });

  test('sheets are ordered for each gauge by itself, the lightest first', async () => {
    const figured = plainly(await figure(answered({ 'Pieces!F4': 22, 'Pieces!F5': 24 })));
    const lines = [27, 28, 29, 30].map((row) => [figured[`Job, ${row}, 1`], figured[`Job, ${row}, 2`]]);
    // On a 48 × 120 in sheet: S1, S2 and S5 take 2, 1 and 1; S4 takes 1 and R1 2; S3 takes 1.
    expect(lines).toEqual([
      ['Sheet metal, 26 ga', 4],
      ['Sheet metal, 24 ga', 3],
      ['Sheet metal, 22 ga', 1],
      ['', ''],
    ]);
    expect(figured['Blanks, 22, 8']).toBe(8);
    expect(figured['Job, 27, 3']).toContain('each piece on its own');
  });

  test.each([
    // Table 603.4 of the dwelling code: 16 in round at 1 in. w.g. asks for 0.019 in, which is 26 ga.
    ['too light a sheet', { F2: 28 }, 'stop: 28 ga is too light; the dwelling code asks for 26 ga at least'],
    ['a size past the table', { C2: 22 }, 'look: the table of least gauges ends before this duct'],
    ['a length under a foot', { E6: 11 }, 'look: very short for its size'],
    ['a length under the diameter', { E6: 7.5 }, 'look: very short for its size'],
  ])('%s is told on the line of the piece', async (_, answers, sentence) => {
    const row = Object.keys(answers)[0]?.slice(1);
    const figured = await figure(answered(on('Pieces', answers)));
    expect(said(figured, `Pieces, ${row}, 8`)).toContain(sentence);
  });

  test('the older code lets the lighter sheet pass, and a job may leave it unchecked', async () => {
    for (const table of ['older code', 'not checked']) {
      const figured = await figure(answered({ 'Pieces!F2': 28, 'Job!B14': table }));
      expect(said(figured, 'Pieces, 2, 8'), table).toBe('holds');
    }
  });

  test('a piece with a wrap of its own is cut, checked and ordered by that wrap', async () => {
    const figured = plainly(await figure(answered({ 'Wrap!I3': 'R-11 wrap' })));
    // The published table has no 4 in wrap, so by geometry: π × (14 + 2 × 3) + 2; two pieces of a roll of 50 ft.
    expect(figured['Wrap, 3, 3']).toBeCloseTo(Math.PI * 20 + 2, 9);
    expect(figured['Wrap, 3, 6']).toMatch(/^look: the way chosen on Job has no figure/);
    expect(figured['Wrap, 28, 2']).toBe(1);
    expect(figured['Wrap, 27, 3']).toBe(14);
    expect(plainly(values)['Wrap, 28, 2']).toBe('');
    expect(plainly(values)['Allowances, 6, 13']).toBe('geometry');
  });

  test('the R that is left is compared as it is, not as it is shown', async () => {
    // The shop's own 15 in for a rectangular duct leaves R 7.86 on R1, which shows as 7.9.
    const needed = { 'Job!B12': 'shop', 'Job!B11': 7.9 };
    const figured = await figure(answered(needed));
    expect(plainly(figured)['Wrap, 7, 7']).toBeCloseTo(7.86, 2);
    expect(said(figured, 'Wrap, 7, 6')).toMatch(/^look: by geometry/);
    const allowed = await figure(answered({ ...needed, 'Allowances!B15': 0.05 }));
    expect(said(allowed, 'Wrap, 7, 6')).toBe('holds');
  });

  test('a wrap whose line is not finished waits, and stops only a piece that gets it', async () => {
    const half = { 'Allowances!A7': 'R-9 wrap', 'Allowances!B7': 3.5, 'Allowances!E7': 2.6 };
    const waiting = await figure(answered(half));
    expect(stopsBySheet(waiting)).toEqual({});
    expect(said(waiting, 'Allowances, 7, 4')).toContain('still to fill in: label R, installed R, roll width');
    const used = await figure(answered({ ...half, 'Wrap!I3': 'R-9 wrap' }));
    expect(stopsBySheet(used)).toEqual({ Job: 2, Wrap: 1 });
  });

  test('both seams, the screws and the ring of facing of each tap are counted, size by size', () => {
    const figured = plainly(values);
    // Two 7 in taps on the 14 in trunk S2: screws 2 × 2 × ⌈7π ÷ 6⌉ = 16; facing 2 × π × (7 + 2 × 2.25) = 72.26.
    expect(figured['Taps, 4, 7']).toBe(16);
    expect(figured['Taps, 4, 8']).toBeCloseTo(2 * Math.PI * 11.5, 9);
    // S1 has a 6 and an 8 in tap: 2 × ⌈6π ÷ 6⌉ + 2 × ⌈8π ÷ 6⌉ = 8 + 10, beside 4 joints of 5 screws.
    expect(figured['Seal and fasten, 2, 8']).toBe(20 + 8 + 10);
    const rings = Math.PI * (6 + 4.5) + Math.PI * (8 + 4.5);
    expect(figured['Seal and fasten, 2, 7']).toBeCloseTo(174.5 + 4 * Math.PI * 20.5 + rings, 9);
  });

  test.each([
    ['wider than a round trunk', { A8: 'S5', B8: 9, C8: 1 }, 'stop: the tap is wider than its trunk'],
    ['wider than both sides', { A8: 'R1', B8: 22, C8: 1 }, 'stop: the tap is wider than the widest side'],
    ['on a piece that is not there', { A8: 'S9', B8: 6, C8: 1 }, 'stop: no piece on Pieces has this mark'],
    ['without a size', { A8: 'R1' }, 'stop: still to fill in: tap size, how many'],
  ])('a tap %s is refused, and the order says what it is without', async (_, answers, sentence) => {
    const figured = await figure(answered(on('Taps', answers)));
    expect(said(figured, 'Taps, 8, 4')).toContain(sentence);
    expect(stopsBySheet(figured)).toEqual({ Job: 1, Taps: 1 });
    expect(said(figured, 'Job, 26, 2')).toContain(`without taps of ${answers.A8};`);
  });

  test('a tap wider than the smaller side is worth a look', async () => {
    const figured = await figure(answered(on('Taps', { A8: 'R1', B8: 10, C8: 1 })));
    expect(said(figured, 'Taps, 8, 4')).toContain('look: only the wider sides');
    expect(stopsBySheet(figured)).toEqual({});
  });

  test('long seams are sealed where their lock or the pressure asks for it', async () => {
    const seams = async (answers: WorkedExample['given']) => {
      const figured = plainly(await figure(answered(answers)));
      return [figured['Seal and fasten, 2, 5'], figured['Seal and fasten, 7, 5']];
    };
    expect(await seams({})).toEqual([0, 0]);
    expect(await seams({ 'Allowances!B23': 'snap or button lock' })).toEqual([174.5, 0]);
    // Two halves have two seams.
    expect(await seams({ 'Job!B13': 2 })).toEqual([174.5, 2 * 110.25]);
  });

  test('mastic takes the place of joint tape', async () => {
    const figured = plainly(await figure(answered({ 'Allowances!B31': 'mastic' })));
    expect([figured['Job, 35, 2'], plainly(values)['Job, 36, 2']]).toEqual([0, 0]);
    const length = ['D', 'E', 'F'].reduce(
      (sum, _, index) => sum + Number(figured[`Seal and fasten, 22, ${index + 4}`]),
      0,
    );
    // A band 2 in wide and 0.032 in thick, a tenth more; 231 cu in make a gallon.
    expect(figured['Seal and fasten, 26, 4']).toBeCloseTo((length * 2 * 0.032 * 1.1) / 231, 3);
    expect(figured['Job, 36, 2']).toBe(1);
  });

  test('wide rectangular duct gets pins, and closed ends get caps with their joint', async () => {
    const figured = plainly(await figure(answered({ 'Pieces!C7': 24, 'Pieces!F7': 22, 'Pieces!G7': 2 })));
    // ⌈24 ÷ 18⌉ × ⌈110.25 ÷ 18⌉ = 2 × 7.
    expect(figured['Seal and fasten, 7, 10']).toBe(14);
    expect(plainly(values)['Seal and fasten, 7, 10']).toBe(0);
    // Three sections: two joints between them, one at the end, two at caps.
    expect(figured['Seal and fasten, 7, 3']).toBe(5);
    expect(figured['Job, 41, 2']).toBe(3);
  });

  test.each([
    ['a lap', 'B12', 0.5],
    ['a seam', 'B21', 0],
    ['a crimp', 'B24', 0],
  ])('%s that is left out is worth a look', async (_, place, value) => {
    const figured = await figure(answered({ [`Allowances!${place}`]: value }));
    expect(said(figured, `Allowances, ${place.slice(1)}, 4`)).toMatch(/^look: /);
    expect(said(values, `Allowances, ${place.slice(1)}, 4`)).toBe('holds');
  });

  function on(sheet: string, answers: Readonly<Record<string, string | number>>): WorkedExample['given'] {
    return Object.fromEntries(Object.entries(answers).map(([place, value]) => [`${sheet}!${place}`, value]));
  }

  function said(figured: Values, place: string): string {
    return String(plainly(figured)[place]);
  }

  /** The demo with a given left blank. */
  function without(place: string): Workbook {
    const marked = answered({ [place]: 'to be blank' });
    const sheets = marked.sheets.map((sheet) => ({
      ...sheet,
      rows: sheet.rows.map((row) =>
        row.map((cell) => (cell?.content === 'to be blank' ? { ...cell, content: null } : cell)),
      ),
    }));
    return { ...marked, sheets };
  }

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
