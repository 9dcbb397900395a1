import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isFault } from '../../src/base/value.ts';
import { isBlock } from '../../src/catalogue/argument.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { book, edit, faultIn, openBook, told, type Written } from './sheets.ts';
import { trialFunctions } from './trial-functions.ts';

const long = 'x'.repeat(9000);

/** Formulas that can bring the engine down, hang it, or fill cells that are not theirs. */
const hostile: readonly string[] = [
  '=REPT("x",1000000000)',
  '=REPT("x",A1*1000000000)',
  `=${'('.repeat(300)}1${')'.repeat(300)}`,
  `=${'ABS('.repeat(1000)}1${')'.repeat(1000)}`,
  `=${'1+'.repeat(3000)}1`,
  `=${'-'.repeat(2000)}1`,
  '=SEQUENCE(5000,5000)',
  '=SUM(SEQUENCE(40000,1000))',
  '=SEQUENCE(3)',
  '=TRANSPOSE(A1:A3)',
  '=A1:A3',
  '=A1:A3*2',
  '={1,2;3,4}',
  '=ARRAYFORMULA(A1:A3*2)',
  '=SUM(B1:ZZZ40000)',
  '=COUNTBLANK(B1:ZZ40000)',
  '=SUM(B:ZZ)',
  '=COUNTIF(A1,"*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*a*b")',
  '=COUNTIF(A1,B9&"*a*a*a*a*a*a*a*a*a*a*a*a*b")',
  '=OFFSET(A1,1,1)',
  '=INDIRECT("A1")',
  '=HYPERLINK("javascript:alert(1)")',
  '=RAND()',
  '=VERSION()',
  '=STRETCHOUT.FAULT(0)',
  '=STRETCHOUT.TAKE(A1)',
  '=FACT(1E9)',
  '=POWER(10,1E9)',
  '=__proto__',
  '=constructor',
  '=toString()',
  '=A0+ZZZZ1',
  '==1',
  '=',
  '=#N/A',
  '=1E999',
  '=B1',
  `="${long}`,
  `="${'""'.repeat(4000)}"`,
];

describe('a hostile formula leaves every other cell right', () => {
  const around = (formula: Written) =>
    book({ Wrap: [[7, formula, '=A1*2', '=AREA.PANEL(12,12)'], ['=C1+1', 3], ['=SUM(A1:A2)']] });
  const right = { 'Wrap!C1': 14, 'Wrap!D1': 1.25, 'Wrap!A2': 15, 'Wrap!A3': 22 };

  test.each(hostile.map((formula) => [formula.slice(0, 50), formula] as const))('%s', async (_, formula) => {
    const { calculator, first } = await openBook(around(formula));
    expect(first).toMatchObject(right);
    expect(first).toHaveProperty(['Wrap!B1']);
    const typed = await openBook(around(1));
    expect(Object.keys(told(await typed.calculator.apply([edit('Wrap!B1', formula)])))).toEqual(['Wrap!B1']);
    for (const one of [calculator, typed.calculator]) {
      expect(told(await one.apply([edit('Wrap!A1', 8)]))).toMatchObject({
        'Wrap!C1': 16,
        'Wrap!A2': 17,
        'Wrap!A3': 25,
      });
      const [asked, sum] = await one.evaluate('Wrap', [formula.slice(1), 'SUM(A1:A2)']);
      expect(asked).toBeDefined();
      expect(sum).toBe(25);
      expect(told(await one.apply([edit('Wrap!B1', '=A1')]))['Wrap!B1']).toBe(8);
    }
  });

  test('all of them at once', async () => {
    const rows = hostile.map((formula) => [formula]);
    const { first } = await openBook(book({ Wrap: [[7, '=A1*2']], Hostile: rows }));
    expect(first['Wrap!B1']).toBe(14);
    expect(Object.keys(first)).toHaveLength(hostile.length + 1);
  });
});

test('whatever is typed as a formula, every cell gets a value or a fault with a sentence', async () => {
  const piece = fc.constantFrom(
    ...['A1', '$B$2', 'A1:B9', "'Main trunk'!C3", 'wraps', 'nothing', 'SUM(', 'IF(', 'INDEX(', 'AREA.PANEL('],
    ...[
      'WRAP.ROLL(',
      'CONCATENATE(',
      'SUBSTITUTE(',
      'POWER(',
      'LARGE(',
      'TEXTJOIN(',
      ')',
      ',',
      ',,',
      '(',
      '{',
      '}',
    ],
    ...[
      '+',
      '-',
      '*',
      '/',
      '^',
      '&',
      '=',
      '<>',
      '%',
      ':',
      '!',
      ' ',
      '"',
      '"x"',
      '1',
      '0',
      '1E308',
      '.5',
      '#REF!',
      '\n',
      '\u0001',
    ],
  );
  const typed = fc.oneof(
    { weight: 4, arbitrary: fc.array(piece, { maxLength: 9 }).map((pieces) => pieces.join('')) },
    fc.string({ unit: 'grapheme', maxLength: 30 }),
  );
  const names = { wraps: 'Wrap!$A$1:$B$2' };
  await fc.assert(
    fc.asyncProperty(fc.array(typed, { minLength: 150, maxLength: 150 }), async (texts) => {
      const rows = texts.map((text) => [{ formula: text }]);
      const calculator = createCalculator({ functions: trialFunctions });
      const first = told(
        await calculator.open({
          sheets: [
            { name: 'Wrap', rows: [[7, { formula: 'A1*2' }]] },
            { name: 'Main trunk', rows },
          ],
          names,
        }),
      );
      expect(first['Wrap!B1']).toBe(14);
      expect(Object.keys(first)).toHaveLength(texts.length + 1);
      for (const value of [...Object.values(first), ...(await calculator.evaluate('Main trunk', texts))]) {
        if (!isBlock(value) && isFault(value)) expect(value.sentence).toMatch(/^[A-Z“].*\.$/s);
      }
      await calculator.close();
    }),
    { numRuns: 20 },
  );
}, 30_000);

describe('a formula that brings the engine down in spite of the checks', () => {
  /** Each line doubles a text; past some hundred million letters the engine throws. */
  const doubling = [[long], ...Array.from({ length: 24 }, (_, row) => [`=A${row + 1}&A${row + 1}`])];
  const beside: Written[][] = doubling.map((row, index) => [...row, `=${index}*2`]);

  test('is set aside alone, in a new workbook', async () => {
    const { first } = await openBook(book({ Wrap: beside }));
    const aside = Object.entries(first).filter(
      ([, value]) => isFault(value) && /set aside/.test(value.sentence),
    );
    const [cause] = aside;
    expect(cause?.[1]).not.toHaveProperty('bornAt');
    for (const [, value] of aside.slice(1)) expect(faultIn(value).bornAt).toBe(cause?.[0]);
    for (const row of beside.keys()) expect(first[`Wrap!B${row + 1}`]).toBe(row * 2);
  });

  test('is the one that was just typed, and works once its cause is gone', async () => {
    const { calculator } = await openBook(book({ Wrap: [['x'], ...beside.slice(1)] }));
    await calculator.apply([edit('Wrap!C1', '=LEN(A17)'), edit('Wrap!D1', 5), edit('Wrap!E1', '=D1+1')]);
    const broken = told(await calculator.apply([edit('Wrap!C2', `=A25&A25&${'A25&'.repeat(60)}"x"`)]));
    expect(Object.keys(broken)).toEqual(['Wrap!C2']);
    expect(faultIn(broken['Wrap!C2']).fault).toBe('gave_up');
    expect(told(await calculator.apply([edit('Wrap!D1', 6)]))).toEqual({ 'Wrap!E1': 7 });
    const mended = told(await calculator.apply([edit('Wrap!A25', 'y')]));
    expect(mended['Wrap!C2']).toBe(`${'y'.repeat(62)}x`);
  });

  test('does no harm when it is only asked for', async () => {
    const { calculator } = await openBook(book({ Wrap: [['x'], ...beside.slice(1)] }));
    const asked = await calculator.evaluate('Wrap', [`A25&${'A25&'.repeat(60)}"x"`, 'B3', 'LEN(A5)']);
    expect(asked).toEqual([expect.objectContaining({ fault: 'gave_up' }), 4, 16]);
    expect(told(await calculator.apply([edit('Wrap!B3', '=1+1')]))).toEqual({ 'Wrap!B3': 2 });
  });

  test('costs only its own cell where a built-in function is the one that throws', async () => {
    const { calculator } = await openBook(book({ Wrap: [['x'], ...beside.slice(1)] }));
    const many = `=CONCATENATE(${Array.from({ length: 60 }, () => 'A25')})`;
    const typed = told(
      await calculator.apply([edit('Wrap!C2', many), edit('Wrap!D1', '=IFERROR(C2,"none")')]),
    );
    expect(typed).toEqual({ 'Wrap!C2': expect.objectContaining({ fault: 'gave_up' }), 'Wrap!D1': 'none' });
    expect(told(await calculator.apply([edit('Wrap!A25', 'y')]))).toEqual({
      'Wrap!C2': 'y'.repeat(60),
      'Wrap!D1': 'y'.repeat(60),
    });
  });
});
