import { describe, expect, test } from 'vitest';
import { wordFault } from '../../src/catalogue/wording.ts';
import { book, edit, faultIn, openBook, told } from './sheets.ts';
import { panel } from './trial-functions.ts';

describe('every fault says what is wrong and what to do', () => {
  const cases: readonly (readonly [string, string, RegExp])[] = [
    ['=1/0', 'divided_by_zero', /divided by zero/],
    ['=A9/B9', 'divided_by_zero', /still blank/],
    ['="two"*3', 'wrong_kind', /not a number/],
    ['=1E300*1E300', 'not_a_number', /too large/],
    ['=SQRT(-1)', 'not_a_number', /no such root/],
    ['=VLOOKUP("R-9",Z1:Z9,1,FALSE)', 'not_found', /was not found/],
    ['=INDEX(A8:A9,7,1)', 'not_a_number', /past the end/],
    ['=CHOOSE(4,1,2)', 'not_a_number', /past the end/],
    ['=FIND("x","duct")', 'not_found', /does not occur/],
    ['=IFS(FALSE,1)', 'not_found', /None of the cases/],
    ['=SWITCH(3,1,2)', 'not_found', /None of the cases/],
    ['=MATCH(9,Z1:Z9,0)', 'not_found', /was not found/],
    ['=NA()', 'not_found', /was not found/],
    ['=LEFT("duct",-1)', 'wrong_kind', /./],
    ['=VALUE("two")', 'wrong_kind', /not a number/],
    ['=SUM(A1:A1,"two")', 'wrong_kind', /not a number/],
    ['=ASIN(4)', 'not_a_number', /no number/],
    ['=LOG(-1)', 'not_a_number', /./],
    ['=wraps', 'refused', /more than one value/],
    ['=wraps+1', 'wrong_kind', /single cell/],
    ['=#REF!+1', 'no_such_cell', /not there/],
    ['=nothing', 'refused', /no name “nothing”/],
    ['=NOTHING(1)', 'refused', /NOTHING/],
    ['=Gone!A1', 'refused', /no sheet “Gone”/],
    ['=A1:A3', 'refused', /block of cells/],
    ['=SUM(', 'refused', /never closed/],
    ['=AREA.PANEL(12)', 'trade', /The height is missing/],
    ['=AREA.PANEL(12,500)', 'trade', /must be 1″ to 120″/],
    ['=AREA.PANEL(1,2,3,4)', 'trade', /takes at most 3/],
    ['=AREA.PANEL(A1:A2,5)', 'trade', /one value is wanted/],
    ['=TAPE.BROKEN("nan")', 'trade', /too large or no number/],
    ['=TAPE.BROKEN("endless")', 'trade', /too large or no number/],
    ['=TAPE.BROKEN("fault")', 'trade', /must be a text/],
    ['=TAPE.BROKEN("throw")', 'gave_up', /set aside/],
  ];

  test.each(cases)('%s is %s', async (formula, code, sentence) => {
    const { first } = await openBook(book({ Wrap: [[null, formula]] }, { wraps: 'Wrap!$C$1:$D$9' }));
    const fault = faultIn(first['Wrap!B1']);
    expect(fault.fault).toBe(code);
    expect(fault.sentence).toMatch(sentence);
    expect(fault.sentence).toMatch(/^[A-Z“].*\.$/s);
    expect(fault).not.toHaveProperty('bornAt');
    expect(JSON.stringify(fault)).not.toMatch(/\\u0001|STRETCHOUT|#[A-Z/0]+[!?]/);
  });

  test.each([
    'IF(TRUE,wraps,1)',
    'IFS(TRUE,wraps)',
    'IFERROR(wraps,1)',
    'IFNA(wraps,1)',
    'SWITCH(1,1,wraps)',
    'CHOOSE(1,wraps)',
    'INDEX(wraps,0,1)',
    'INDEX(wraps,0,0)',
    '(wraps)',
  ])('%s does not leave a block in its cell', async (formula) => {
    const { first } = await openBook(
      book({ Wrap: [[`=${formula}`, '=SUM(A1)', 5, 6]] }, { wraps: 'Wrap!$C$1:$D$9' }),
    );
    expect(faultIn(first['Wrap!B1'])).toEqual({ ...faultIn(first['Wrap!A1']), bornAt: 'Wrap!A1' });
  });

  test('a text longer than a cell holds is not shown, and breaks nothing', async () => {
    const rows = [['x'.repeat(9000)], ['=A1&A1'], ['=A2&A2'], ['=LEN(A3)']];
    const { first } = await openBook(book({ Wrap: rows }));
    expect(first['Wrap!A2']).toHaveLength(18_000);
    expect(faultIn(first['Wrap!A3'])).toMatchObject({
      fault: 'gave_up',
      sentence: expect.stringContaining('longer than 32767'),
    });
    expect(first['Wrap!A4']).toBe(36_000);
  });
});

describe('a fault leads to the cell where it began', () => {
  test('through other cells and sheets', async () => {
    const { first } = await openBook(
      book({
        'Main trunk': [['=1/0', '=A1+1']],
        Wrap: [["='Main trunk'!B1*2", '=SUM(A1:A1)', '=AREA.PANEL(B1,12)']],
      }),
    );
    const { sentence } = faultIn(first['Main trunk!A1']);
    const led = { fault: 'divided_by_zero', sentence, bornAt: "'Main trunk'!A1" };
    expect(first).toEqual({
      'Main trunk!A1': { fault: 'divided_by_zero', sentence },
      'Main trunk!B1': led,
      'Wrap!A1': led,
      'Wrap!B1': led,
      'Wrap!C1': led,
    });
  });

  test('with the sentence of the trade function', async () => {
    const { first } = await openBook(book({ Wrap: [[500, '=AREA.PANEL(A1,12)', '=B1*2']] }));
    const outcome = panel.call([500, 12]);
    const sentence = outcome.ok ? '' : wordFault(outcome.fault);
    expect(first).toEqual({
      'Wrap!B1': { fault: 'trade', sentence },
      'Wrap!C1': { fault: 'trade', sentence, bornAt: 'Wrap!B1' },
    });
  });

  test('also from a formula that was refused', async () => {
    const { first } = await openBook(book({ Wrap: [['=SUM(', '=A1+1']] }));
    const { sentence } = faultIn(first['Wrap!A1']);
    expect(first['Wrap!B1']).toEqual({ fault: 'refused', sentence, bornAt: 'Wrap!A1' });
  });

  test('and not to a name', async () => {
    const { first } = await openBook(book({ Wrap: [['=1/0', '=cause']] }, { cause: 'Wrap!$A$1' }));
    expect(faultIn(first['Wrap!B1']).bornAt).toBe('Wrap!A1');
  });
});

describe('a fault can be caught', () => {
  test.each([
    ['=IFERROR(AREA.PANEL(500,1),7)', 7],
    ['=IFERROR(A1,8)', 8],
    ['=ISERROR(A1)', true],
    ['=IF(ISERROR(A2),"none",1)', 'none'],
    ['=IFERROR(1/0,9)', 9],
  ])('%s', async (formula, value) => {
    const { first } = await openBook(book({ Wrap: [['=AREA.PANEL(0,1)', formula], ['=SUM(']] }));
    expect(first['Wrap!B1']).toBe(value);
  });
});

describe('cells that go round in a ring', () => {
  test('are told with the whole ring, in the order of reading', async () => {
    const { first } = await openBook(
      book({
        Wrap: [
          ['=B1+1', "='Main trunk'!A1", '=A1', '=IFERROR(A1,3)'],
          [5, '=A2'],
        ],
        'Main trunk': [['=SUM(Wrap!A1:A2)']],
      }),
    );
    expect(faultIn(first['Wrap!A1']).sentence).toContain("Wrap!A1 → Wrap!B1 → 'Main trunk'!A1 → Wrap!A1");
    expect(faultIn(first['Wrap!A1']).ring).toEqual(['Wrap!A1', 'Wrap!B1', "'Main trunk'!A1"]);
    expect(faultIn(first['Wrap!B1']).sentence).toContain("Wrap!B1 → 'Main trunk'!A1 → Wrap!A1 → Wrap!B1");
    expect(faultIn(first['Wrap!C1'])).toEqual({ ...faultIn(first['Wrap!A1']), bornAt: 'Wrap!A1' });
    expect(first).toMatchObject({ 'Wrap!D1': 3, 'Wrap!B2': 5, 'Wrap!A1': { fault: 'circular' } });
  });

  test('of one cell, of a name and of a block that holds the cell itself', async () => {
    const { first } = await openBook(
      book({ Wrap: [['=A1'], ['=me'], ['=SUM(A3:A4)'], [1]] }, { me: 'Wrap!$A$2' }),
    );
    for (const name of ['Wrap!A1', 'Wrap!A2', 'Wrap!A3']) {
      expect(first[name]).toEqual({
        fault: 'circular',
        sentence: expect.stringMatching(`^The formula in ${name} points to itself`),
        ring: [name],
      });
    }
  });

  test('recover when the ring is opened, all of them', async () => {
    const { calculator } = await openBook(book({ Wrap: [['=B1', '=C1', '=A1+1', '=A1*2']] }));
    expect(told(await calculator.apply([edit('Wrap!C1', 4)]))).toEqual({
      'Wrap!A1': 4,
      'Wrap!B1': 4,
      'Wrap!D1': 8,
    });
    const closed = told(await calculator.apply([edit('Wrap!C1', '=B1')]));
    expect(Object.keys(closed).sort()).toEqual(['Wrap!A1', 'Wrap!B1', 'Wrap!C1', 'Wrap!D1']);
    expect(faultIn(closed['Wrap!B1']).sentence).toContain('Wrap!B1 → Wrap!C1 → Wrap!B1');
    expect(faultIn(closed['Wrap!A1']).bornAt).toBe('Wrap!B1');
  });

  test('of very many cells are told without naming them all', async () => {
    const rows = Array.from({ length: 3000 }, (_, row) => [row === 0 ? '=A3000' : `=A${row}`]);
    const { first } = await openBook(book({ Wrap: [...rows, ['=1+1'], ['=B3002', '=A3002']] }));
    const { fault, sentence } = faultIn(first['Wrap!A1']);
    expect(fault).toBe('circular');
    expect(sentence.length).toBeLessThan(400);
    expect(first['Wrap!A3001']).toBe(2);
    expect(faultIn(first['Wrap!A3002']).sentence).toContain('Wrap!A3002 → Wrap!B3002 → Wrap!A3002');
  });
});
