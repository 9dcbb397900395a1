import { expect, test } from 'vitest';
import {
  addOption,
  addResult,
  makeUsual,
  recordChoice,
  removeChoice,
  setLotName,
  setVaries,
  showSooner,
} from '../../src/lots/house.ts';
import { wordHouseFault } from '../../src/lots/wording.ts';
import { fill } from '../../src/templates/fill.ts';
import type { Workbook } from '../../src/workbook/document.ts';
import { smallHouse } from './small-house.ts';

const { house: _, ...bare } = smallHouse();
const template: Workbook = bare;

test('an option records what stands in its givens, choice by choice; another one can be made usual', () => {
  const first = addOption(template, { option: ' Roof ', choice: 'attic', places: ['House!B5', 'House!B3'] });
  if (!first.ok) throw new Error(wordHouseFault(first.fault));
  const changed = fill({ ...template, house: first.value }, { 'House!B3': 20 });
  if (!changed.ok) throw new Error();
  const second = recordChoice(changed.value, { option: 'Roof', choice: 'crawl space' });
  expect(second).toMatchObject({
    value: {
      options: [
        {
          name: 'Roof',
          usual: 'attic',
          choices: [
            { name: 'attic', sets: { 'House!B5': 'R-6', 'House!B3': 16 } },
            { name: 'crawl space', sets: { 'House!B5': 'R-6', 'House!B3': 20 } },
          ],
        },
      ],
    },
  });
  if (!second.ok) throw new Error();
  expect(makeUsual(second.value, 'Roof', 'crawl space').options[0]?.usual).toBe('crawl space');
  expect(removeChoice(second.value, 'Roof', 'attic')).toMatchObject({
    value: { options: [{ usual: 'crawl space' }] },
  });
});

test('a blank given cannot be recorded, a figured cell cannot vary, and a name stands once', () => {
  const words = (outcome: { ok: boolean; fault?: unknown }) =>
    'fault' in outcome ? wordHouseFault(outcome.fault as Parameters<typeof wordHouseFault>[0]) : '';
  expect(words(addOption(template, { option: 'A', choice: 'B', places: ['House!B4'] }))).toMatch(
    /^House!B4 is blank/,
  );
  expect(words(addOption(template, { option: 'A', choice: 'B', places: [] }))).toMatch(/at least one given/);
  expect(words(setVaries(template, 'House!B9', true))).toMatch(/no given/);
  expect(words(addResult(template, { name: 'X', place: 'Attic!B1' }))).toMatch(/no cell/);
  expect(words(addResult(smallHouse(), { name: 'wrap', place: 'House!B9' }))).toMatch(/already/);
});

test('the name of the lot goes into a given for plain words, and into no figure, number or choice', () => {
  const words = (place: string) => {
    const marked = setLotName(template, place);
    return marked.ok ? marked.value.lotName : wordHouseFault(marked.fault);
  };
  expect(words('House!B2')).toMatch(/^House!B2 takes a number/);
  expect(words('House!B5')).toMatch(/^House!B5 takes a number or one of a few choices/);
  expect(words('House!B9')).toMatch(/no given/);
  const plain = { content: null, role: 'given', question: { asks: 'Which house is it?' } } as const;
  const sheets = template.sheets.map((sheet) => ({ ...sheet, rows: [...sheet.rows, [plain]] }));
  const marked = setLotName({ ...template, sheets }, `House!A${sheets[0]?.rows.length}`);
  if (!marked.ok) throw new Error(wordHouseFault(marked.fault));
  expect(marked.value.lotName).toBe('House!A20');
  expect(setLotName({ ...template, sheets, house: marked.value }, null)).toEqual({
    ok: true,
    value: { options: [], varies: [], results: [] },
  });
});

test('a result is shown a place sooner, the first stays, and none is lost', () => {
  const { house } = smallHouse();
  if (!house) throw new Error();
  const names = (name: string) => showSooner(house, name).results.map((one) => one.name);
  expect(names('Price')).toEqual(['Wrap', 'Rolls', 'Price', 'R left']);
  expect(names('Wrap')).toEqual(['Wrap', 'Rolls', 'R left', 'Price']);
  expect(names('Gone')).toEqual(['Wrap', 'Rolls', 'R left', 'Price']);
});
