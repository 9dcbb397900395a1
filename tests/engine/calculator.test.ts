import { describe, expect, test } from 'vitest';
import { createCalculator } from '../../src/engine/create.ts';
import { book, edit, faultIn, nameOf, openBook, place, told } from './sheets.ts';
import { panel, roll, trialFunctions } from './trial-functions.ts';

test('a block counts its rows and columns, whichever of its corners are fixed', async () => {
  const fixed = ['', '$'];
  const blocks = fixed.flatMap((one) =>
    fixed.flatMap((other) =>
      fixed.flatMap((third) => fixed.map((fourth) => `${one}A${other}2:${third}C${fourth}3`)),
    ),
  );
  const formulas = blocks.map((block) => ({
    formula: `ROWS(${block})*10+COLUMNS(${block})+SUM(${block})/100`,
  }));
  const calculator = createCalculator({ functions: [] });
  // Each stands twice, below and beside what it reads, so that it is read once and taken for both as well.
  const changes = await calculator.open({
    sheets: [
      {
        name: 'Pieces',
        rows: [[], [1, 2, 3, ...formulas], [4, 5, 6, ...formulas], ...formulas.map((one) => [one])],
      },
    ],
    names: {},
  });
  expect(changes).toHaveLength(3 * blocks.length);
  for (const { value } of changes) expect(value).toBeCloseTo(23.21, 10);
});

describe('opening a workbook', () => {
  test('gives every formula cell its value, and no other cell', async () => {
    const { first } = await openBook(
      book({
        Pieces: [
          [16, 10, '=A1*B1', '=SUM(A1:C1)'],
          ['a text', true],
        ],
      }),
    );
    expect(first).toEqual({ 'Pieces!C1': 160, 'Pieces!D1': 186 });
  });

  test('hands out numbers with all their digits, and compares them forgivingly', async () => {
    const { first } = await openBook(
      book({ Pieces: [['=1/3', '=0.1+0.2', '=B1=0.3', '=1/3*1E-300', '=-0', '=50%', '=A1*3=1']] }),
    );
    expect(first).toEqual({
      'Pieces!A1': 1 / 3,
      'Pieces!B1': 0.1 + 0.2,
      'Pieces!C1': true,
      'Pieces!D1': (1 / 3) * 1e-300,
      'Pieces!E1': 0,
      'Pieces!F1': 0.5,
      'Pieces!G1': true,
    });
  });

  test('reads other sheets by name, whatever its case, and quoted where it is more than a word', async () => {
    const { first } = await openBook(
      book({ 'Main trunk': [[7]], '2nd': [[5]], Wrap: [["='main TRUNK'!A1", "='2nd'!A1*2"]] }),
    );
    expect(first).toEqual({ 'Wrap!A1': 7, 'Wrap!B1': 10 });
  });

  test('takes names for a cell and for a block, and leaves out those that cannot be', async () => {
    const { first } = await openBook(
      book(
        { Allowances: [[2, 3, 4]], Wrap: [['=lap*2', '=SUM(Wraps)', '=Allowances!A1+1']] },
        {
          lap: 'Allowances!$A$1',
          wraps: 'Allowances!$A$1:$C$1',
          A1: 'Allowances!$C$1',
          relative: 'Allowances!A1',
          lost: 'Gone!$A$1',
          nonsense: '=1+',
          TRUE: 'Allowances!$A$1',
          LAP: 'Allowances!$C$1',
        },
      ),
    );
    expect(first).toEqual({ 'Wrap!A1': 4, 'Wrap!B1': 9, 'Wrap!C1': 3 });
  });

  test('knows TRUE and FALSE with and without brackets', async () => {
    const { first } = await openBook(
      book({ Wrap: [[true, '=IF(TRUE,1,2)', '=IF(FALSE(),1,2)', '=A1=TRUE', '=NOT(true)', '=A1']] }),
    );
    expect(first).toEqual({
      'Wrap!B1': 1,
      'Wrap!C1': 2,
      'Wrap!D1': true,
      'Wrap!E1': false,
      'Wrap!F1': true,
    });
  });

  test('gives nothing for a formula that points to a blank cell', async () => {
    const { first } = await openBook(book({ Wrap: [['=Z99', '=Z99+1', '=Z99&"x"']] }));
    expect(first).toEqual({ 'Wrap!A1': null, 'Wrap!B1': 1, 'Wrap!C1': 'x' });
  });

  test('forgets the workbook that was open before', async () => {
    const { calculator } = await openBook(book({ Wrap: [[1, '=A1']] }));
    expect(told(await calculator.open(book({ Seal: [['=2*3']] })))).toEqual({ 'Seal!A1': 6 });
    await expect(calculator.apply([edit('Wrap!A1', 2)])).rejects.toThrow('no sheet Wrap');
  });

  test('comes before everything else', async () => {
    const calculator = createCalculator({ functions: [] });
    await expect(calculator.apply([])).rejects.toThrow('open a book first');
  });
});

describe('a text stays a text', () => {
  const texts = [
    '007',
    ' 7 ',
    '1e3',
    '50%',
    '$5',
    '3 1/2',
    '01/02/2026',
    '3:30',
    'TRUE',
    'false',
    '=1+1',
    '+1',
  ];
  texts.push("'quoted", "'", '', '#REF!', '#DIV/0!', '{1,2}', '-', 'A1', '=', '1,5', '\u0001', 'ä\n"b"\\');

  test.each(texts)('%j', async (text) => {
    const { calculator, first } = await openBook({
      sheets: [{ name: 'Wrap', rows: [[text, { formula: 'A1' }, { formula: 'LEN(A1)' }]] }],
      names: {},
    });
    expect(first).toEqual({ 'Wrap!B1': text, 'Wrap!C1': text.length });
    await calculator.apply([edit('Wrap!A1', 12_345_678_901)]);
    expect(told(await calculator.apply([{ ...place('Wrap!A1'), content: text }]))).toEqual({
      'Wrap!B1': text,
      'Wrap!C1': text.length,
    });
  });
});

describe('an edit', () => {
  const sheets = { Wrap: [[16, 10, '=A1+B1', '=C1*2', '=IF(A1>10,1,2)', '=B1']] };

  test('tells only the formula cells whose value is another', async () => {
    const { calculator } = await openBook(book(sheets));
    expect(told(await calculator.apply([edit('Wrap!A1', 17)]))).toEqual({ 'Wrap!C1': 27, 'Wrap!D1': 54 });
  });

  test('of several cells is taken as one, the last word on a cell counting', async () => {
    const { calculator } = await openBook(book(sheets));
    const changes = await calculator.apply([
      edit('Wrap!A1', 99),
      edit('Wrap!A1', 18),
      edit('Wrap!B1', 8),
      edit('Wrap!A2', '=A1'),
    ]);
    expect(told(changes)).toEqual({ 'Wrap!F1': 8, 'Wrap!A2': 18 });
  });

  test('that leaves every value as it was tells nothing', async () => {
    const { calculator } = await openBook(book(sheets));
    expect(await calculator.apply([edit('Wrap!A1', 16), edit('Wrap!C1', '=B1+A1')])).toEqual([]);
  });

  test('turns a formula into a value and back', async () => {
    const { calculator } = await openBook(book(sheets));
    expect(told(await calculator.apply([edit('Wrap!C1', 3)]))).toEqual({ 'Wrap!D1': 6 });
    expect(told(await calculator.apply([edit('Wrap!C1', '=A1+B1')]))).toEqual({
      'Wrap!C1': 26,
      'Wrap!D1': 52,
    });
    expect(told(await calculator.apply([edit('Wrap!C1', null)]))).toEqual({ 'Wrap!D1': 0 });
  });

  test('reaches cells far beyond the sheet', async () => {
    const { calculator } = await openBook(book(sheets));
    expect(told(await calculator.apply([edit('wrap!ZZ5000', '=A1*2')]))).toEqual({ 'Wrap!ZZ5000': 32 });
  });

  test('of a sheet that is not there changes nothing', async () => {
    const { calculator } = await openBook(book(sheets));
    await expect(calculator.apply([edit('Wrap!A1', 1), edit('Gone!A1', 1)])).rejects.toThrow('no sheet Gone');
    expect(await calculator.evaluate('Wrap', ['A1'])).toEqual([16]);
  });
});

describe('a change of shape', () => {
  const sheets = { Allowances: [[2], [3]], Wrap: [['=lap*10', '=Allowances!A2', '=A1+B1', '=Seal!A1']] };

  test('of a name reaches formulas that had no such name', async () => {
    const { calculator, first } = await openBook(book(sheets, {}));
    expect(faultIn(first['Wrap!A1']).sentence).toContain('no name “lap”');
    const named = await calculator.open(book(sheets, { lap: 'Allowances!$A$1' }));
    expect(told(named)).toMatchObject({ 'Wrap!A1': 20, 'Wrap!C1': 23 });
    const moved = await calculator.open(book(sheets, { Lap: 'Allowances!$A$2' }));
    expect(told(moved)).toMatchObject({ 'Wrap!A1': 30, 'Wrap!C1': 33 });
    expect((await calculator.dependents(place('Allowances!A2'))).map(nameOf)).toEqual(['Wrap!A1', 'Wrap!B1']);
  });

  test('of the sheets heals a formula that waited for one', async () => {
    const names = { lap: 'Allowances!$A$1' };
    const { calculator } = await openBook(book(sheets, names));
    const added = await calculator.open(book({ ...sheets, Seal: [[7]] }, names));
    expect(told(added)).toMatchObject({ 'Wrap!D1': 7 });
    const removed = told(await calculator.open(book(sheets, names)));
    expect(faultIn(removed['Wrap!D1']).sentence).toContain('no sheet “Seal”');
  });

  test('of rows tells the values at their new places', async () => {
    const { calculator } = await openBook(
      book({
        Wrap: [
          [1, '=A1'],
          [2, '=A2'],
          [2, '=A3'],
        ],
      }),
    );
    const inserted = await calculator.open(book({ Wrap: [[1, '=A1'], [], [2, '=A3'], [2, '=A4']] }));
    expect(told(inserted)).toEqual({ 'Wrap!B1': 1, 'Wrap!B3': 2, 'Wrap!B4': 2 });
    expect(told(await calculator.apply([edit('Wrap!B2', '=A4')]))).toEqual({ 'Wrap!B2': 2 });
  });
});

describe('evaluating', () => {
  const wraps = {
    Allowances: [
      ['wrap', 'width'],
      ['R-8', 48],
      [null, true],
    ],
    Wrap: [[16, '=A1/0', '=1/3']],
  };
  const names = { wraps: 'Allowances!$A$1:$B$3', width: 'Allowances!$B$2' };

  test('gives values, and blocks row by row, as seen from a sheet', async () => {
    const { calculator } = await openBook(book(wraps, names));
    const asked = ['A1*2', 'C1', 'Z9', '"a""b"', 'width', 'B2=48', '50%', 'TRUE'];
    expect(await calculator.evaluate('wrap', asked)).toEqual([32, 1 / 3, null, 'a"b', 48, false, 0.5, true]);
    const block = [
      ['wrap', 'width'],
      ['R-8', 48],
      [null, true],
    ];
    const blocks = await calculator.evaluate('Allowances', ['A1:B3', 'wraps', '(B3:A1)', 'A2:A3']);
    expect(blocks).toEqual([block, block, block, [['R-8'], [null]]]);
  });

  test('gives faults as values, also inside a block', async () => {
    const { calculator } = await openBook(book(wraps, names));
    const [cell, block, own, unread, lost] = await calculator.evaluate('Wrap', [
      'B1',
      'A1:B1',
      '1/0',
      'SUM(',
      'Gone!A1:A3',
    ]);
    const sentence = expect.stringContaining('divided by zero');
    expect(cell).toEqual({ fault: 'divided_by_zero', sentence, bornAt: 'Wrap!B1' });
    expect(block).toEqual([[16, { fault: 'divided_by_zero', sentence, bornAt: 'Wrap!B1' }]]);
    expect(own).toEqual({ fault: 'divided_by_zero', sentence });
    expect(unread).toEqual({ fault: 'refused', sentence: expect.stringContaining('never closed') });
    expect(lost).toEqual({ fault: 'refused', sentence: expect.stringContaining('Gone') });
  });

  test('changes nothing', async () => {
    const { calculator } = await openBook(book(wraps, names));
    await calculator.evaluate('Wrap', ['A1*2', 'SUM(A1:Z99)', 'A1:C1', 'REPT("x",9)', 'nothing', 'B1']);
    expect(await calculator.apply([])).toEqual([]);
    expect(told(await calculator.apply([edit('Wrap!A1', 5)]))).toEqual({});
    expect(told(await calculator.apply([edit('Wrap!B1', '=A1*2')]))).toEqual({ 'Wrap!B1': 10 });
  });
});

describe('the cells that read a cell', () => {
  test('are found directly, through a block, through a name and from another sheet, but not through a text', async () => {
    const { calculator } = await openBook(
      book(
        {
          Allowances: [[2, 3], ['=A1']],
          Wrap: [['=SUM(Allowances!A1:B9)', '=lap', '=allowances!$A$1', '="Allowances!A1"', '=A1', '=1+']],
        },
        { lap: 'Allowances!$A$1' },
      ),
    );
    const found = await calculator.dependents(place('allowances!A1'));
    expect(found.map(nameOf)).toEqual(['Allowances!A2', 'Wrap!A1', 'Wrap!B1', 'Wrap!C1']);
  });

  test('follow an edit', async () => {
    const { calculator } = await openBook(book({ Wrap: [[1, '=A1']] }));
    await calculator.apply([edit('Wrap!B1', 4), edit('Wrap!C1', '=A1*2')]);
    expect((await calculator.dependents(place('Wrap!A1'))).map(nameOf)).toEqual(['Wrap!C1']);
  });
});

describe('a trade function', () => {
  const table = [
    ['wrap', 'width', 'length'],
    ['R-6', 48, 75],
    ['R-8', 48, 50],
  ] as const;

  test('comes to what its own maths says', async () => {
    const { first } = await openBook(
      book({ Pieces: [[16, 10.3, '=AREA.PANEL(A1,B1)', '=area.panel(A1,B1,7%)']] }),
    );
    const [usual, less] = [panel.call([16, 10.3]), panel.call([16, 10.3, 0.07])];
    expect(first).toEqual({
      'Pieces!C1': usual.ok && usual.value.value,
      'Pieces!D1': less.ok && less.value.value,
    });
  });

  test('takes its usual value where an argument is left out, empty or a blank cell', async () => {
    const { first } = await openBook(
      book({
        Pieces: [
          ['=AREA.PANEL(12,12)', '=AREA.PANEL(12,12,)', '=AREA.PANEL(12,12,Z9)', '=AREA.PANEL(12,12,0)'],
        ],
      }),
    );
    expect(first).toEqual({ 'Pieces!A1': 1.25, 'Pieces!B1': 1.25, 'Pieces!C1': 1.25, 'Pieces!D1': 1 });
  });

  test('gets a table as a block, and follows every cell of it', async () => {
    const { calculator, first } = await openBook(
      book(
        { Allowances: table, Wrap: [['r-8', '=WRAP.ROLL(A1,wraps)', '=WRAP.ROLL("R-6",Allowances!A1:C3)']] },
        { wraps: 'Allowances!$A$1:$C$3' },
      ),
    );
    const bare = roll.call(['r-8', table]);
    expect(first).toEqual({ 'Wrap!B1': bare.ok && bare.value.value, 'Wrap!C1': 300 });
    expect(told(await calculator.apply([edit('Allowances!B3', 60)]))).toEqual({ 'Wrap!B1': 250 });
  });

  test('may differ from one calculator to the next', async () => {
    const given = book({ Pieces: [['=AREA.PANEL(12,12)']] });
    const other = createCalculator({ functions: trialFunctions.filter((one) => one !== panel) });
    expect(told(await other.open(given))).toEqual({
      'Pieces!A1': { fault: 'refused', sentence: expect.stringContaining('AREA.PANEL') },
    });
    expect((await openBook(given)).first).toEqual({ 'Pieces!A1': 1.25 });
  });
});
