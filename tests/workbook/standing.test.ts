import { describe, expect, test } from 'vitest';
import type { CellValue } from '../../src/base/value.ts';
import { readCheck } from '../../src/workbook/check.ts';
import { labelOf } from '../../src/workbook/label.ts';
import { standingOf } from '../../src/workbook/standing.ts';
import { noValues, withValues } from '../../src/workbook/values.ts';
import { diameter, sampleWorkbook, sheetOf } from './sample.ts';

describe('a check speaks', () => {
  test.each<[CellValue, string, string]>([
    [true, 'holds', ''],
    ['holds', 'holds', ''],
    ['Holds: R 8.3 is enough', 'holds', 'R 8.3 is enough'],
    ['look: only just', 'look', 'only just'],
    ['STOP do not cut', 'stop', 'do not cut'],
    [{ fault: 'trade', sentence: 'No depth.' }, 'stop', 'No depth.'],
  ])('%o', (value, verdict, sentence) => {
    expect(readCheck(value)).toEqual({ verdict, sentence });
  });

  test('what it does not say clearly is a stop', () => {
    for (const value of [false, 'perhaps', 7, 'stopped']) expect(readCheck(value)?.verdict).toBe('stop');
  });

  test('it says nothing while it is blank', () => {
    expect(readCheck(null)).toBeNull();
    expect(readCheck('')).toBeNull();
  });
});

describe('a sheet stands by its givens, checks and faults', () => {
  const [pieces, wrap] = sampleWorkbook().sheets;
  if (!pieces || !wrap) throw new Error('The sample has two sheets.');

  test('a given without a value is to be filled, and says what it asks', () => {
    expect(standingOf(pieces, noValues)).toMatchObject({
      toFill: 1,
      stops: 0,
      concerns: [{ kind: 'fill', address: { row: 1, column: 2 }, sentence: 'Which wrap?' }],
    });
  });

  test('a check that stops and a figure in fault both stop the sheet', () => {
    const values = withValues(noValues, [
      { sheet: 'Wrap round', row: 1, column: 1, value: { fault: 'divided_by_zero', sentence: 'By zero.' } },
      { sheet: 'Wrap round', row: 1, column: 2, value: 'stop: too small' },
    ]);
    expect(standingOf(wrap, values)).toMatchObject({ toFill: 0, looks: 0, stops: 2 });
  });
});

test('a cell that has no figure only because of another one waits for it, and is no stop of its own', () => {
  const [, wrap] = sampleWorkbook().sheets;
  if (!wrap) throw new Error('The sample has two sheets.');
  const fault = { fault: 'trade', sentence: 'No depth.' } as const;
  const values = withValues(noValues, [
    { sheet: 'Wrap round', row: 1, column: 1, value: fault },
    { sheet: 'Wrap round', row: 1, column: 2, value: { ...fault, bornAt: "'Wrap round'!B2" } },
  ]);
  expect(standingOf(wrap, values)).toMatchObject({ stops: 1, waits: 1 });
});

test('a given that holds what could not be typed there stops its sheet and says why', () => {
  const spoiled = (content: string | number) =>
    standingOf(sheetOf('pieces', 'Pieces', [[{ ...diameter, content }]]), noValues).concerns;
  expect(spoiled(99)).toMatchObject([{ kind: 'stop', sentence: expect.stringMatching(/^99″ is outside/) }]);
  expect(spoiled('banana')).toMatchObject([{ kind: 'stop', sentence: expect.stringMatching(/banana/) }]);
  expect(spoiled(16)).toEqual([]);
});

test('a cell is called by its heading and the name of its row', () => {
  const [pieces] = sampleWorkbook().sheets;
  if (!pieces) throw new Error('The sample has sheets.');
  expect(labelOf(pieces, { row: 2, column: 1 })).toBe('Diameter of S2 trunk');
  expect(labelOf(pieces, { row: 5, column: 1 })).toBe('');
});

test('an answer picked from a few names no row', () => {
  const [sheet] = sampleWorkbook().sheets;
  if (!sheet) throw new Error('The sample has sheets.');
  const shape = { asks: 'Which shape?', choices: ['round', 'rectangular'] };
  const rows = [
    [null, null, { content: 'Width', role: 'heading' }],
    [
      { content: null, role: 'given', question: { asks: 'Which mark?', mayBeBlank: true } },
      { content: 'round', role: 'given', question: shape },
      { content: 16, role: 'given' },
    ],
  ] as const;
  expect(labelOf({ ...sheet, rows }, { row: 1, column: 2 })).toBe('Width');
});
