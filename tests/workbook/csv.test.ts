import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv, separatorOf, writeCsv } from '../../src/workbook/csv.ts';
import { rearmed, unarmed } from '../../src/workbook/unarmed.ts';

const texts = fc.oneof(
  fc.string(),
  fc
    .array(fc.constantFrom('"', ',', ';', '\t', '\n', '\r', 'a', ' ', '″', ''), { maxLength: 6 })
    .map((parts) => parts.join('')),
);
const rows = fc.array(fc.array(texts, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 5 });

describe('comma-separated text', () => {
  test('any rows come back as they were', () => {
    fc.assert(
      fc.property(rows, (written) => {
        expect(readCsv(writeCsv(written), ',')).toEqual(written);
      }),
      { numRuns: 3000 },
    );
  });

  test('the examples of RFC 4180 read as it says', () => {
    // RFC 4180, section 2, rules 2, 5, 6 and 7, in this order.
    expect(readCsv('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(readCsv('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')[0]).toEqual(['aaa', 'bbb', 'ccc']);
    expect(readCsv('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')[0]).toEqual(['aaa', 'b\r\nbb', 'ccc']);
    expect(readCsv('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });

  test('a file with semicolons or tabs, or with a mark at its start, is read as well', () => {
    expect(readCsv('\uFEFFMark;Length\r\nS1;12,5\r\n')).toEqual([
      ['Mark', 'Length'],
      ['S1', '12,5'],
    ]);
    expect(readCsv('Mark\tLength\nS1\t16\n')[1]).toEqual(['S1', '16']);
    expect(separatorOf('"a;b;c",d\n1,2')).toBe(',');
    expect(separatorOf('one')).toBe(',');
  });

  test('inch marks in a field that is not quoted stay where they are', () => {
    expect(readCsv(`S1,12' 4 1/2",16"\n`)).toEqual([['S1', `12' 4 1/2"`, '16"']]);
  });
});

describe('a text that another program would run', () => {
  test.each(['=1+1', '+1-1', '-2+3', '@sum', '=HYPERLINK("x")', '\t=1', '-', '-12 ft', '-$3.00'])(
    'goes out behind an apostrophe: %j',
    (text) => {
      expect(unarmed(text)).toBe(`'${text}`);
    },
  );

  test.each(['', 'S1', '-3', '+2.5', '-.5', '-1e-7', '12′ 4 ½″', "'quoted'"])(
    'is nothing like %j',
    (text) => {
      expect(unarmed(text)).toBe(text);
    },
  );

  test('comes back as it was, but never as a formula', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((one) => `${'+'}${one}`),
        ),
        (text) => {
          const back = rearmed(unarmed(text));
          if (text.startsWith('=')) expect(back).toBe(`'${text}`);
          else if (!text.startsWith("'")) expect(back).toBe(text);
          expect(/^[=+\-@]/.test(unarmed(text)) && Number.isNaN(Number(unarmed(text)))).toBe(false);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
