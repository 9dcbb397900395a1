import { describe, expect, test } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { createSession } from '../../src/session/session.ts';
import type { Difference } from '../../src/workbook/difference.ts';
import { noValues, valueAt } from '../../src/workbook/values.ts';
import { sampleWorkbook } from '../workbook/sample.ts';

const diameterOfS1 = { row: 1, column: 1 };

async function openSample(isReadOnly = false) {
  const written: Difference[] = [];
  const session = createSession({
    kept: { workbook: sampleWorkbook(), values: noValues },
    calculator: Promise.resolve(createCalculator({ functions: tradeFunctions })),
    journal: {
      append: async (difference) => {
        written.push(difference);
      },
    },
    isReadOnly,
  });
  await session.settled();
  const girth = () => valueAt(session.getState().values, 'Wrap round', diameterOfS1);
  return { session, written, girth };
}

describe('a session carries a change through', () => {
  test('typing a diameter figures what depends on it, on another sheet too', async () => {
    const { session, girth } = await openSample();
    expect(girth()).toBeCloseTo(Math.PI * 16, 12);
    expect(session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed: '20' }).ok).toBe(true);
    await session.settled();
    expect(girth()).toBeCloseTo(Math.PI * 20, 12);
    expect(session.getState().figures).toEqual({ type: 'current' });
  });

  test('undo takes it back and redo does it again, each with its name, and all of it is written down', async () => {
    const { session, girth, written } = await openSample();
    session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed: '20' });
    expect(session.undo()).toBe('20 in Pieces!B2');
    await session.settled();
    expect(girth()).toBeCloseTo(Math.PI * 16, 12);
    expect(session.undo()).toBeNull();
    expect(session.redo()).toBe('20 in Pieces!B2');
    await session.settled();
    expect(girth()).toBeCloseTo(Math.PI * 20, 12);
    expect(written).toHaveLength(3);
  });

  test('a check turns to stop when what it guards is broken', async () => {
    const { session } = await openSample();
    expect(session.getState().standings.get('wrap')?.stops).toBe(0);
    session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed: '4' });
    await session.settled();
    expect(session.getState().standings.get('wrap')).toMatchObject({
      stops: 1,
      concerns: [{ kind: 'stop', sentence: 'too small' }],
    });
  });
});

test('what an undone formula came to does not go into the file', async () => {
  const { session } = await openSample();
  session.run({ type: 'enter', sheet: 'pieces', address: { row: 5, column: 5 }, typed: '=B2*2' });
  await session.settled();
  session.undo();
  await session.settled();
  expect(session.kept().values.get('Pieces')?.size ?? 0).toBe(0);
});

describe('a session refuses with a sentence and changes nothing', () => {
  test.each([
    ['a size past the limit', '99', /99″ is outside what this cell takes: 3″ to 60″, because the rolls/],
    ['a broken formula', '=2*', /\./],
    ['a function that does not exist', '=WRAP.STRECHOUT(1)', /WRAP\.STRECHOUT/],
    ['a name that does not exist', '=lapp*2', /lapp/],
    ['a sheet that does not exist', '=Peices!B2', /Peices/],
  ])('%s', async (_, typed, sentence) => {
    const { session, written } = await openSample();
    const before = session.getState().workbook;
    const outcome = session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed });
    expect(outcome.ok ? '' : outcome.fault).toMatch(sentence);
    expect(session.getState().workbook).toBe(before);
    expect(written).toEqual([]);
  });

  test('anything at all, while another window has the workbook', async () => {
    const { session } = await openSample(true);
    const outcome = session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed: '20' });
    expect(outcome.ok ? '' : outcome.fault).toContain('open in another window');
  });

  test('what could not be stored is said, and stays in the workbook', async () => {
    const session = createSession({
      kept: { workbook: sampleWorkbook(), values: noValues },
      calculator: Promise.resolve(createCalculator({ functions: tradeFunctions })),
      journal: { append: () => Promise.reject(new Error('disk full')) },
    });
    session.run({ type: 'enter', sheet: 'pieces', address: diameterOfS1, typed: '20' });
    await session.settled();
    expect(session.getState().keeping).toMatchObject({ type: 'not_kept' });
    expect(session.glance('pieces', diameterOfS1).value).toBe(20);
  });
});

describe('a working says where a figure comes from', () => {
  test('the sum with its numbers, what it comes from and what uses it', async () => {
    const { session } = await openSample();
    const working = await session.explain('wrap', diameterOfS1);
    expect(working).toMatchObject({
      place: 'Wrap round!B2',
      label: 'Girth of S1 trunk',
      formula: 'PI()*Pieces!B2',
      sum: 'PI()*16',
      comesFrom: [{ place: 'Pieces!B2', label: 'Diameter of S1 trunk', shows: '16″' }],
      usedBy: [{ place: 'Wrap round!C2', shows: 'holds' }],
    });
  });

  test('which way an IF went', async () => {
    const { session } = await openSample();
    const working = await session.explain('wrap', { row: 1, column: 2 });
    expect(working.decisions).toEqual([{ condition: 'B2>40', holds: true }]);
    expect(working.verdict).toEqual({ verdict: 'holds', sentence: '' });
  });

  test('a given shows what it asks and what uses it', async () => {
    const { session } = await openSample();
    const working = await session.explain('pieces', diameterOfS1);
    expect(working).toMatchObject({
      role: 'given',
      question: { asks: 'Diameter of the pipe' },
      usedBy: [{ place: 'Wrap round!B2' }],
    });
  });
});

test('an entry says how it reads while it is typed', async () => {
  const { session } = await openSample();
  expect(session.preview('pieces', diameterOfS1, `1' 4 1/2"`)).toEqual({ ok: true, value: '1′ 4 ½″' });
  expect(session.preview('pieces', diameterOfS1, '16 foo')).toMatchObject({ ok: false });
  expect(session.preview('pieces', { row: 1, column: 0 }, 'S1')).toBeNull();
});

describe('formulas that only go along with something else', () => {
  test('follow a new name and a new sheet name, and come to the same', async () => {
    const { session, girth } = await openSample();
    const enter = (typed: string) =>
      session.run({ type: 'enter', sheet: 'wrap', address: { row: 1, column: 3 }, typed });
    expect(enter('=SUM(diameters)+Pieces!B2').ok).toBe(true);
    expect(session.run({ type: 'rename_name', name: 'diameters', to: 'across' })).toEqual({
      ok: true,
      value: null,
    });
    expect(session.run({ type: 'rename_sheet', sheet: 'pieces', name: 'Bits' })).toEqual({
      ok: true,
      value: null,
    });
    await session.settled();
    expect(valueAt(session.getState().values, 'Wrap round', { row: 1, column: 3 })).toBe(44);
    expect(girth()).toBeCloseTo(Math.PI * 16, 12);
  });

  test('do not stand in the way of new rows when something is missing in them already', async () => {
    const { session } = await openSample();
    session.run({
      type: 'enter',
      sheet: 'wrap',
      address: { row: 1, column: 3 },
      typed: '=SUM(diameters)+B2',
    });
    session.run({ type: 'remove_name', name: 'diameters' });
    expect(session.run({ type: 'insert_lines', sheet: 'wrap', axis: 'row', at: 0, count: 1 }).ok).toBe(true);
    const again = session.run({
      type: 'enter',
      sheet: 'wrap',
      address: { row: 2, column: 3 },
      typed: '=SUM(diameters)+B3+1',
    });
    expect(again.ok).toBe(false);
  });
});
