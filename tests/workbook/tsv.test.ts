import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readTsv, writeTsv } from '../../src/workbook/tsv.ts';

const texts = fc.oneof(
  fc.string(),
  fc
    .array(fc.constantFrom('"', '\t', '\n', '\r', 'a', ' ', '″', ''), { maxLength: 6 })
    .map((parts) => parts.join('')),
);

test('any block of texts comes back from tab-separated text as it was', () => {
  const blocks = fc
    .integer({ min: 1, max: 5 })
    .chain((width) =>
      fc.array(fc.array(texts, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
    );
  fc.assert(
    fc.property(blocks, (rows) => {
      expect(readTsv(writeTsv(rows))).toEqual(rows);
    }),
    { numRuns: 3000 },
  );
});

test('a line break at the end of what another program gives is no row of its own', () => {
  expect(readTsv('16\t12\r\n18\t14\r\n')).toEqual([
    ['16', '12'],
    ['18', '14'],
  ]);
  expect(readTsv('16\n\n18')).toEqual([['16'], [''], ['18']]);
  expect(readTsv('16\t\n')).toEqual([['16', '']]);
  expect(readTsv('')).toEqual([['']]);
});

test('a quote that does not close its field is a text like any other', () => {
  expect(readTsv('1/2" ply\t"')).toEqual([['1/2" ply', '"']]);
  expect(readTsv('"12" duct\tx')).toEqual([['"12" duct', 'x']]);
  expect(readTsv('"two\nlines"\t"12"" duct"')).toEqual([['two\nlines', '12" duct']]);
});

test('a single text is written bare, so that it can be put into a sentence elsewhere', () => {
  expect(writeTsv([['14′ 6 ½″']])).toBe('14′ 6 ½″');
});
