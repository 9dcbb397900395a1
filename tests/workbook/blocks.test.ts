import { describe, expect, test } from 'vitest';
import { type CellAddress, type CellRange, readAddress } from '../../src/base/address.ts';
import { cellAt, sheetWithId } from '../../src/workbook/cells.ts';
import { type Command, runCommand } from '../../src/workbook/commands.ts';
import { applyDifference } from '../../src/workbook/difference.ts';
import type { Content, Workbook } from '../../src/workbook/document.ts';
import { seriesOf } from '../../src/workbook/series.ts';
import { wordCommandFault } from '../../src/workbook/wording.ts';
import { sampleWorkbook } from './sample.ts';

function at(place: string): CellAddress {
  const address = readAddress(place);
  if (!address) throw new Error(place);
  return address;
}

function range(places: string): CellRange {
  const [from = '', to = from] = places.split(':');
  return { from: at(from), to: at(to) };
}

function having(workbook: Workbook, ...commands: readonly Command[]): Workbook {
  return commands.reduce((sofar, command) => {
    const outcome = runCommand(sofar, command);
    if (!outcome.ok) throw new Error(wordCommandFault(outcome.fault));
    return applyDifference(sofar, outcome.value);
  }, workbook);
}

function content(workbook: Workbook, sheet: string, place: string): Content {
  const found = sheetWithId(workbook, sheet);
  const held = found ? (cellAt(found, at(place))?.content ?? null) : null;
  return typeof held === 'object' && held !== null ? `=${held.formula}` : held;
}

const enter = (place: string, typed: string, sheet = 'pieces'): Command => ({
  type: 'enter',
  sheet,
  address: at(place),
  typed,
});

describe('a block of texts', () => {
  test('is read cell by cell, as if it were typed', () => {
    const workbook = having(sampleWorkbook(), {
      type: 'write',
      sheet: 'pieces',
      at: at('A2'),
      rows: [
        ['S9', `1' 8"`],
        ['S10', '24', 'r-8 wrap'],
      ],
    });
    expect(content(workbook, 'pieces', 'B2')).toBe(20);
    expect(content(workbook, 'pieces', 'A3')).toBe('S10');
    expect(content(workbook, 'pieces', 'B3')).toBe(24);
  });

  test('is refused as a whole, with every fault and its cell', () => {
    const outcome = runCommand(sampleWorkbook(), {
      type: 'write',
      sheet: 'pieces',
      at: at('B2'),
      rows: [['99', 'R-9 wrap'], ['x']],
    });
    const sentence = outcome.ok ? '' : wordCommandFault(outcome.fault);
    expect(sentence).toMatch(/^Nothing was written\.\nB2: 99″.*\nC2: “R-9 wrap”.*\nB3: “x”/);
  });
});

describe('a copy', () => {
  test('takes all that a cell is, and its references shift', () => {
    const workbook = having(sampleWorkbook(), enter('D2', '=B2*2+$B$2'), {
      type: 'copy',
      from: { sheet: 'pieces', range: range('D2') },
      to: { sheet: 'pieces', range: range('D3:E4') },
    });
    expect(content(workbook, 'pieces', 'D3')).toBe('=B3*2+$B$2');
    expect(content(workbook, 'pieces', 'E4')).toBe('=C4*2+$B$2');
  });
});

describe('cells that move', () => {
  test('are followed by formulas and names, on other sheets too', () => {
    const workbook = having(sampleWorkbook(), {
      type: 'move',
      from: { sheet: 'pieces', range: range('B2:B3') },
      to: { sheet: 'wrap', at: at('E5') },
    });
    expect(content(workbook, 'wrap', 'B2')).toBe("=PI()*'Wrap round'!E5");
    expect(content(workbook, 'wrap', 'E6')).toBe(12);
    expect(content(workbook, 'pieces', 'B2')).toBeNull();
    expect(workbook.names.diameters).toEqual({ sheet: 'wrap', range: range('E5:E6') });
  });

  test('may overlap the place that they come from', () => {
    const workbook = having(sampleWorkbook(), {
      type: 'move',
      from: { sheet: 'pieces', range: range('A1:C3') },
      to: { sheet: 'pieces', at: at('A2') },
    });
    expect(content(workbook, 'pieces', 'B3')).toBe(16);
    expect(content(workbook, 'pieces', 'B4')).toBe(12);
    expect(content(workbook, 'pieces', 'B1')).toBeNull();
    expect(content(workbook, 'wrap', 'B2')).toBe('=PI()*Pieces!B3');
  });
});

describe('filling', () => {
  const fill = (from: string, to: string): Command => ({
    type: 'fill',
    sheet: 'pieces',
    from: range(from),
    to: range(to),
  });

  test('goes on with piece marks and numbers, and shifts formulas', () => {
    const workbook = having(
      sampleWorkbook(),
      enter('E1', '10'),
      enter('E2', '12'),
      enter('F1', 'S1'),
      enter('G1', '=E1*2'),
      fill('E1:E2', 'E1:E5'),
      fill('F1', 'F1:F3'),
      fill('G1', 'G1:G3'),
    );
    expect(['E3', 'E4', 'E5'].map((place) => content(workbook, 'pieces', place))).toEqual([14, 16, 18]);
    expect(['F2', 'F3'].map((place) => content(workbook, 'pieces', place))).toEqual(['S2', 'S3']);
    expect(content(workbook, 'pieces', 'G3')).toBe('=E3*2');
  });

  test('goes up and to the left as well', () => {
    const workbook = having(sampleWorkbook(), enter('E9', '6'), enter('E10', '8'), fill('E9:E10', 'E7:E10'));
    expect(content(workbook, 'pieces', 'E7')).toBe(2);
    const across = having(sampleWorkbook(), enter('H5', 'S5'), fill('H5', 'F5:H5'));
    expect(content(across, 'pieces', 'F5')).toBe('S3');
  });
});

describe('a series', () => {
  test.each<[readonly Content[], readonly Content[] | null]>([
    [
      [2, 4],
      [2, 4, 6, 8],
    ],
    [
      [0.1, 0.2],
      [0.1, 0.2, 0.3, 0.4],
    ],
    [[5], null],
    [[1, 2, 4], null],
    [['S1'], ['S1', 'S2', 'S3', 'S4']],
    [
      ['S08', 'S10'],
      ['S08', 'S10', 'S12', 'S14'],
    ],
    [['Floor 2 trunk'], ['Floor 2 trunk', 'Floor 3 trunk', 'Floor 4 trunk', 'Floor 5 trunk']],
    [['trunk'], null],
    [['12'], null],
    [['S1', 'R2'], null],
    [[null], null],
  ])('of %j goes on as %j', (values, wanted) => {
    const series = seriesOf(values);
    expect(series && [0, 1, 2, 3].map(series)).toEqual(wanted);
  });
});

test('a filled cell does not change what it measures, since its number would mean something else', () => {
  const outcome = runCommand(sampleWorkbook(), {
    type: 'dress',
    sheet: 'pieces',
    addresses: [at('B2')],
    dress: { unit: 'ft' },
  });
  expect(outcome.ok ? '' : wordCommandFault(outcome.fault)).toMatch(/^B2 holds a number that measures/);
});

test('cells are dressed without losing what is in them, and undressed to nothing', () => {
  const addresses = [at('B2'), at('F9')];
  const dressed = having(sampleWorkbook(), {
    type: 'dress',
    sheet: 'pieces',
    addresses,
    dress: { style: { bold: true, shade: 'sand' }, note: 'measured twice' },
  });
  const sheet = sheetWithId(dressed, 'pieces');
  expect(sheet && cellAt(sheet, at('B2'))).toMatchObject({ content: 16, note: 'measured twice' });
  const plain = having(dressed, {
    type: 'dress',
    sheet: 'pieces',
    addresses,
    dress: { style: null, note: null },
  });
  const bare = sheetWithId(plain, 'pieces');
  expect(bare && cellAt(bare, at('F9'))).toBeNull();
});
