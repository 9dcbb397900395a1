import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAddress } from '../src/base/address.ts';
import { type CellValue, isFault } from '../src/base/value.ts';
import { tradeFunctions } from '../src/catalogue/list.ts';
import { bookOf } from '../src/engine/book.ts';
import type { CellEdit } from '../src/engine/calculator.ts';
import { createCalculator } from '../src/engine/create.ts';
import { takesAnyWords } from '../src/lots/house.ts';
import { placeIn } from '../src/templates/place.ts';
import { cellAt } from '../src/workbook/cells.ts';
import type { Workbook } from '../src/workbook/document.ts';
import { readWorkbookFile } from '../src/workbook/file.ts';

const folder = new URL('../sheets/', import.meta.url);

type Givens = Readonly<Record<string, number | string | boolean | null>>;

function houseTypes(): readonly (readonly [string, Workbook])[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.template.stretchout.json'))
    .flatMap((name) => {
      const opened = readWorkbookFile(readFileSync(new URL(name, folder), 'utf8'));
      if (!opened.ok) throw new Error(`${name} does not open`);
      return opened.value.workbook.house
        ? [[opened.value.workbook.title, opened.value.workbook] as const]
        : [];
    });
}

/** A house type under a calculator: its givens are changed, its figures asked for by place. */
async function house(workbook: Workbook) {
  const calculator = createCalculator({ functions: tradeFunctions });
  const values = new Map<string, CellValue>();
  const key = (one: { sheet: string; row: number; column: number }) =>
    `${one.sheet}!${one.row},${one.column}`;
  const place = (written: string) => {
    const [sheet = '', address = ''] = written.split('!');
    const found = readAddress(address);
    if (!found) throw new Error(`${written} is no place`);
    return { sheet, ...found };
  };
  for (const change of await calculator.open(bookOf(workbook))) values.set(key(change), change.value);
  return {
    values,
    at: (written: string): CellValue => values.get(key(place(written))) ?? null,
    set: async (givens: Givens) => {
      const edits = Object.entries(givens).map(
        ([written, content]): CellEdit => ({ ...place(written), content }),
      );
      for (const change of await calculator.apply(edits)) values.set(key(change), change.value);
    },
    faults: () => [...values].filter(([, value]) => isFault(value)),
  };
}

const usual = (workbook: Workbook): Givens =>
  Object.assign(
    {},
    ...(workbook.house?.options ?? []).map(
      (option) => option.choices.find((one) => one.name === option.usual)?.sets ?? {},
    ),
  );

const results = (workbook: Workbook, at: (place: string) => CellValue) =>
  (workbook.house?.results ?? []).map(({ place }) => at(place));

/** The places of the givens of these sheets, all of them emptied. */
function emptied(workbook: Workbook, sheets: readonly string[]): Givens {
  const givens = workbook.sheets
    .filter((sheet) => sheets.includes(sheet.name))
    .flatMap((sheet) =>
      sheet.rows.flatMap((row, at) =>
        row.flatMap((cell, column) =>
          cell?.role === 'given'
            ? [[`${sheet.name}!${String.fromCharCode(65 + column)}${at + 1}`, null] as const]
            : [],
        ),
      ),
    );
  return Object.fromEntries(givens);
}

/** The order by what is bought, and how much of it. */
function order(workbook: Workbook, at: (place: string) => CellValue): ReadonlyMap<string, number> {
  const block = workbook.names.order;
  const lines = new Map<string, number>();
  for (let row = 3; row <= (block?.range.to.row ?? 0) + 1; row += 1) {
    const [item, quantity] = [at(`Order!A${row}`), at(`Order!B${row}`)];
    if (typeof item === 'string' && typeof quantity === 'number') lines.set(item, quantity);
  }
  return lines;
}

describe.each(houseTypes())('the house type %s', (_, workbook) => {
  test('every choice of an option fills the same givens, and the usual one is among them', () => {
    for (const { choices, usual } of workbook.house?.options ?? []) {
      expect(choices.map((one) => one.name)).toContain(usual);
      const places = choices.map((one) => Object.keys(one.sets).sort());
      for (const one of places) expect(one).toEqual(places[0]);
    }
  });

  test('every choice but the usual one changes a result, and none gives a fault', async () => {
    const { at, set, faults } = await house(workbook);
    await set(usual(workbook));
    const before = results(workbook, at);
    for (const { name, choices, usual: usualName } of workbook.house?.options ?? []) {
      for (const choice of choices) {
        await set(choice.sets);
        expect(faults(), `${name}: ${choice.name}`).toEqual([]);
        if (choice.name !== usualName) expect(results(workbook, at), choice.name).not.toEqual(before);
      }
      await set(usual(workbook));
      expect(results(workbook, at)).toEqual(before);
    }
  });

  test('no way of putting the options together gives a fault, and none stops but a wrap or flex under the code', async () => {
    const { at, set, faults, values } = await house(workbook);
    const options = workbook.house?.options ?? [];
    const ways = options.reduce<readonly Givens[]>(
      (before, { choices }) => before.flatMap((one) => choices.map((choice) => ({ ...one, ...choice.sets }))),
      [{}],
    );
    for (const sets of ways) {
      await set(sets);
      const told = JSON.stringify(sets);
      expect(faults(), told).toEqual([]);
      const stops = [...values].filter(([, value]) => typeof value === 'string' && value.startsWith('stop'));
      const others = stops.filter(([, value]) => !/wrap (has|is rated)|flex (has|is)/.test(String(value)));
      expect(others, told).toEqual([]);
      expect(at('Order!B2'), told).toMatch(
        stops.length === 0 ? /^holds$/ : /^stop: (the flex|a wrap) has less R than the code asks for/,
      );
    }
  });

  test('every given that a lot may change is a given, and each changes a result', async () => {
    const { at, set, faults } = await house(workbook);
    const before = results(workbook, at);
    const varies = workbook.house?.varies ?? [];
    expect(varies.length).toBeGreaterThanOrEqual(5);
    for (const place of varies) {
      const [sheet, address = ''] = place.split('!');
      const found = readAddress(address);
      const cell = workbook.sheets.find((one) => one.name === sheet)?.rows[found?.row ?? -1]?.[
        found?.column ?? -1
      ];
      expect(cell?.role, place).toBe('given');
      const content = typeof cell?.content === 'number' ? cell.content : 0;
      const more = Number.isInteger(content) && content < 9 && content > 1 ? content + 1 : content * 1.4;
      await set({ [place]: more });
      expect(faults(), place).toEqual([]);
      expect(results(workbook, at), place).not.toEqual(before);
      await set({ [place]: content });
    }
  });

  test('with its rooms and trunk emptied, it has no fault, and says where to begin', async () => {
    const { at, set, faults, values } = await house(workbook);
    await set(emptied(workbook, ['Rooms', 'Trunk']));
    expect(faults()).toEqual([]);
    expect([...values].filter(([, value]) => typeof value === 'string' && value.startsWith('stop'))).toEqual(
      [],
    );
    expect(at('Order!B2')).toBe('look: no room gets its air yet; begin on Rooms and Trunk');
    expect(at('Price!B24')).toBe('');
  });

  test('a line that is half filled in stops itself and the order, and gives no fault', async () => {
    for (const half of ['Rooms!D2', 'Rooms!A3', 'Rooms!E4', 'Trunk!C2', 'Trunk!A3']) {
      const { at, set, faults } = await house(workbook);
      await set({ [half]: null });
      expect(faults(), half).toEqual([]);
      expect(at('Order!B2'), half).toMatch(/^stop: the order is without/);
    }
  });

  test('a flat trunk in thin wrap by the published table is stopped at its wrap, with what to do', async () => {
    const { at, set, faults } = await house(workbook);
    const sets = { 'House!B11': 'R-6 wrap', 'House!B13': 'rectangular', 'House!B23': 'published' };
    await set({ ...sets, 'Air!B2': 'basement' });
    expect(faults()).toEqual([]);
    expect(at('Wrap!F2')).toBe(
      'stop: by geometry this cut squeezes the wrap to less than half; choose geometry on House',
    );
    await set({ 'House!B23': 'geometry' });
    expect(at('Wrap!F2')).toBe('holds');
  });

  test('flex with less R than its system needs stops its rooms, the house and the order, and no other room', async () => {
    const { at, set, faults } = await house(workbook);
    const inAttic = workbook.sheets.some(
      (sheet) => sheet.name === 'Air' && sheet.rows[0]?.[2]?.content === 'upstairs',
    )
      ? 'upstairs'
      : null;
    const roomLines = Array.from({ length: 16 }, (_, index) => index + 2);
    const isThere = (row: number) => /^by/.test(String(at(`Rooms!M${row}`)));
    const stops = () =>
      roomLines.filter((row) => String(at(`Rooms!H${row}`)).startsWith('stop: the flex is R'));
    await set({ 'House!B22': 'IECC 2015 homes', 'House!B12': 8 });
    expect(stops()).toEqual([]);
    expect(at('Order!B2')).toBe('holds');
    await set({ 'House!B12': 6 });
    expect(faults()).toEqual([]);
    expect(stops()).toEqual(
      roomLines.filter((row) => isThere(row) && (inAttic === null || at(`Rooms!N${row}`) === inAttic)),
    );
    expect(stops().length).toBeGreaterThan(5);
    expect(at(`Rooms!H${stops()[0]}`)).toBe(
      'stop: the flex is R 6, and the code asks for R 8 where it hangs; choose another on House',
    );
    expect(at('Order!B2')).toBe('stop: the flex has less R than the code asks for; see Rooms');
    const verdicts = [...Array(50).keys()].map((row) => at(`House!B${row + 1}`));
    expect(verdicts).toContain('stop: the flex has less R than the code asks for; see Rooms');
    // No code, no stop.
    await set({ 'House!B22': 'not checked' });
    expect(stops()).toEqual([]);
    expect(at('Order!B2')).toBe('holds');
  });

  test('R-6 flex may hang in a crawl space, and not by a hair under what is needed', async () => {
    const { at, set } = await house(workbook);
    const places = {
      'Air!B2': 'crawl space',
      ...(workbook.names.up_needed_r ? { 'Air!C2': 'crawl space' } : {}),
    };
    await set({ ...places, 'House!B11': 'R-6 wrap', 'House!B12': 6 });
    expect(at('Order!B2')).toBe('holds');
    await set({ 'House!B12': 5.99 });
    expect(at('Order!B2')).toBe('stop: the flex has less R than the code asks for; see Rooms');
  });

  test('one more room never lowers what is ordered', async () => {
    const { at, set, faults } = await house(workbook);
    const last = {
      row: 17,
      section: workbook.sheets.find((one) => one.name === 'Trunk')?.rows[1]?.[0]?.content,
    };
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 15, max: 200 }),
        fc.integer({ min: 24, max: 300 }),
        fc.integer({ min: 1, max: 3 }),
        async (own, length, branches) => {
          // The blower gives the room its air on top, so that no other room loses any.
          const before = order(workbook, at);
          const place = 'Air!B4';
          const blower = Number(workbook.sheets.find((one) => one.name === 'Air')?.rows[3]?.[1]?.content);
          await set({
            [`Rooms!A${last.row}`]: 'One more',
            [`Rooms!K${last.row}`]: own,
            [`Rooms!C${last.row}`]: branches,
            [`Rooms!D${last.row}`]: length,
            [`Rooms!E${last.row}`]: String(last.section),
            [place]: blower + own,
          });
          const after = order(workbook, at);
          expect(faults()).toEqual([]);
          for (const [item, quantity] of before) {
            expect(after.get(item) ?? 0, item).toBeGreaterThanOrEqual(quantity);
          }
          await set({
            ...Object.fromEntries(['A', 'K', 'C', 'D', 'E'].map((one) => [`Rooms!${one}${last.row}`, null])),
            [place]: blower,
          });
          expect(order(workbook, at)).toEqual(before);
        },
      ),
      { numRuns: 15 },
    );
  });

  test('the name of a lot stands where the job is named', () => {
    const place = placeIn(workbook, workbook.house?.lotName ?? '');
    const cell = place && cellAt(place.sheet, place.address);
    expect(cell?.question?.asks).toMatch(/^What is this job called/);
    expect(cell && takesAnyWords(cell)).toBe(true);
  });

  test('a lot figured after many others comes to what it comes to afresh', async () => {
    const worked = await house(workbook);
    const options = workbook.house?.options ?? [];
    for (const lot of [1, 2, 3, 5, 7, 11, 13]) {
      const sets: Givens = Object.assign(
        {},
        ...options.map(({ choices }, at) => choices[(lot >> at) % choices.length]?.sets ?? {}),
      );
      await worked.set(sets);
      const afresh = await house(workbook);
      await afresh.set(sets);
      expect(new Map(worked.values)).toEqual(new Map(afresh.values));
    }
  }, 30_000);
});
