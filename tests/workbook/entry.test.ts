import { describe, expect, test } from 'vitest';
import type { Cell } from '../../src/workbook/document.ts';
import { readEntry } from '../../src/workbook/entry.ts';
import { choiceCell, diameter, formula } from './sample.ts';

const given = (more: Partial<Cell>): Cell => ({ content: null, role: 'given', ...more });
const contentOf = (typed: string, cell: Cell | null) => {
  const entry = readEntry(typed, cell);
  return entry.ok ? entry.value.content : entry.fault.code;
};

describe('an entry is read by the unit of its cell', () => {
  test.each([
    [`12' 4 1/2"`, 148.5],
    ['41 3/8', 41.375],
    ['1372mm', 1372 / 25.4],
    ['16', 16],
  ])('a length cell reads %s', (typed, length) => {
    expect(contentOf(typed, given({ unit: 'in' }))).toBeCloseTo(length, 12);
  });

  test('a cell in feet takes feet for a bare number and stores feet', () => {
    expect(contentOf('14', given({ unit: 'ft' }))).toBe(14);
    expect(contentOf(`14' 6`, given({ unit: 'ft' }))).toBe(14.5);
  });

  test('a cell shown in millimetres takes a bare number as millimetres', () => {
    expect(contentOf('254', given({ unit: 'in', format: { type: 'millimetres', places: 0 } }))).toBe(10);
  });

  test('a share is typed in per cent and stored as a fraction', () => {
    expect(contentOf('10 %', given({ unit: 'percent' }))).toBe(0.1);
    expect(contentOf('10', given({ unit: 'percent' }))).toBe(0.1);
  });

  test.each([
    ['$1,234.50', 'money', 1234.5],
    ['-$3.00', 'money', -3],
    ['26 ga', 'gauge', 26],
    ['12,345 cfm', 'cfm', 12345],
    ['1,234,567', 'count', 1234567],
    ['1,372 mm', 'in', 1372 / 25.4],
  ] as const)(
    '%s is read as the page shows it, with its mark and a comma between thousands',
    (typed, unit, number) => {
      expect(contentOf(typed, given({ unit }))).toBeCloseTo(number, 12);
    },
  );

  test.each(['1,23', '1,2345', '12 ga ga', 'ga', `${'0'.repeat(600)}1`])(
    '%s is no number for all that',
    (typed) => {
      expect(contentOf(typed, given({ unit: 'gauge' }))).toBe('not_a_number');
    },
  );

  test('a count takes whole numbers only', () => {
    expect(contentOf('3', given({ unit: 'count' }))).toBe(3);
    expect(contentOf('3.5', given({ unit: 'count' }))).toBe('not_whole');
  });

  test('what was typed is kept where the stored number would not give it back', () => {
    expect(readEntry('1372mm', diameter)).toMatchObject({ ok: true, value: { typed: '1372mm' } });
    expect(readEntry('16', diameter)).toEqual({ ok: true, value: { content: 16 } });
  });
});

describe('an entry is refused with what came and what is allowed', () => {
  test.each([
    ['a length that cannot be read', '12 foo', diameter, 'not_a_length'],
    ['a size past the limit', '61', diameter, 'out_of_range'],
    ['a size under the limit', '2 15/16', diameter, 'out_of_range'],
    ['a choice that is not offered', 'R-9 wrap', choiceCell, 'not_a_choice'],
    ['a plain value over a formula', '12', formula('1+1'), 'figured_cell'],
    ['words where a number belongs', 'twelve', given({ unit: 'cfm' }), 'not_a_number'],
  ])('%s', (_, typed, cell, code) => {
    expect(contentOf(typed, cell)).toBe(code);
  });

  test('both limits themselves are taken', () => {
    expect(contentOf('3', diameter)).toBe(3);
    expect(contentOf('60', diameter)).toBe(60);
  });
});

describe('a cell that nobody has set up', () => {
  test.each([
    ['=2+3', { formula: '2+3' }],
    ['12', 12],
    ['$12.50', 12.5],
    ['1,200', 1200],
    ['50%', 0.5],
    ['1,20', '1,20'],
    ['0012', 12],
    ['1/2', '1/2'],
    ['3:30', '3:30'],
    [`12' 4"`, 148],
    ['true', true],
    ['S1 trunk', 'S1 trunk'],
    ['', null],
  ])('takes %j for what it looks like', (typed, content) => {
    expect(contentOf(typed, null)).toEqual(content);
  });

  test('a figured cell that was emptied takes a plain value again', () => {
    expect(contentOf('12', { content: null, role: 'figured' })).toBe(12);
  });
});

test('a plain answer takes the place of a formula in a given', () => {
  expect(contentOf('12', { ...diameter, content: { formula: '2*6' } })).toBe(12);
});

test('the beginning of a choice is enough where only one begins so', () => {
  const shape: Cell = { ...choiceCell, question: { asks: 'Shape?', choices: ['round', 'rectangular'] } };
  expect(contentOf('rect', shape)).toBe('rectangular');
  expect(contentOf('r', shape)).toBe('not_a_choice');
});

test('choices match whatever their case, and come out as they are offered', () => {
  expect(contentOf('r-8 WRAP', choiceCell)).toBe('R-8 wrap');
});
