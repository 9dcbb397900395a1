import fc from 'fast-check';
import type { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { writeAddress } from '../../src/base/address.ts';
import { shiftedForCopy } from '../../src/formula/copy.ts';
import { engineText } from '../../src/formula/engine-text.ts';
import {
  afterInsertColumns,
  afterInsertRows,
  afterRemoveColumns,
  afterRemoveRows,
  type Lines,
} from '../../src/formula/lines.ts';
import { parseFormula } from '../../src/formula/parse.ts';
import { engineWith, patience } from './engine.ts';

const sheets = ['Pieces', 'Main trunk'] as const;
const rows = 12;
const columns = 9;

/** The formula of a cell, written so that ours and the calculator's can be compared. */
function comparable(formula: string): string {
  const outcome = parseFormula(formula.replaceAll(/(?:'[^']*'|\w+)!#REF!/g, '#REF!'));
  if (!outcome.ok) throw new Error(`${formula}: ${outcome.fault.code}`);
  return engineText(outcome.value);
}

const row = fc.nat({ max: rows - 1 });
const column = fc.nat({ max: columns - 1 });
const fixed = fc.constantFrom('', '', '$');
const prefix = fc.constantFrom('', '', 'Pieces!', "'Main trunk'!");

const cell = fc.tuple(prefix, fixed, fixed, row, column).map(([sheet, fixedColumn, fixedRow, r, c]) => {
  const [, letters, digits] = /^([A-Z]+)(\d+)$/.exec(writeAddress({ row: r, column: c })) ?? [];
  return `${sheet}${fixedColumn}${letters}${fixedRow}${digits}`;
});

const block = fc
  .tuple(prefix, fc.tuple(row, row), fc.tuple(column, column), fc.tuple(fixed, fixed, fixed, fixed))
  .map(([sheet, [r1, r2], [c1, c2], [a, b, c, d]]) => {
    const from = writeAddress({ row: Math.min(r1, r2), column: Math.min(c1, c2) });
    const to = writeAddress({ row: Math.max(r1, r2), column: Math.max(c1, c2) });
    const dollars = (text: string, one: string, two: string) => one + text.replace(/(?=\d)/, two);
    return `${sheet}${dollars(from, a, b)}:${dollars(to, c, d)}`;
  });

const formula = fc
  .array(
    fc.oneof(
      cell,
      block.map((range) => `SUM(${range}, 1)`),
    ),
    { minLength: 1, maxLength: 4 },
  )
  .map((parts) => parts.join(' + '));

const home = fc.record({ sheet: fc.constantFrom(0 as const, 1 as const), row, col: column });

/** A book of many formulas, each in a cell of its own; building it costs more than rewriting it. */
const formulas = fc.uniqueArray(fc.record({ text: formula, at: home }), {
  minLength: 1,
  maxLength: 20,
  selector: ({ at }) => `${at.sheet} ${at.row} ${at.col}`,
});

function emptyBook(): HyperFormula {
  const empty = () => Array.from({ length: rows }, () => Array<number>(columns).fill(1));
  return engineWith({ [sheets[0]]: empty(), [sheets[1]]: empty() });
}

const changes = {
  'insert rows': afterInsertRows,
  'insert columns': afterInsertColumns,
  'remove rows': afterRemoveRows,
  'remove columns': afterRemoveColumns,
};

describe('references follow as they do in the calculator', () => {
  const change = fc.record({
    kind: fc.constantFrom(
      'insert rows' as const,
      'insert columns' as const,
      'remove rows' as const,
      'remove columns' as const,
    ),
    sheet: fc.constantFrom(0 as const, 1 as const),
    first: fc.nat({ max: 8 }),
    count: fc.integer({ min: 1, max: 4 }),
  });

  it(
    'when rows or columns are inserted or removed',
    () => {
      fc.assert(
        fc.property(formulas, change, (cells, { kind, sheet, first, count }) => {
          const engine = emptyBook();
          for (const { text, at } of cells) engine.setCellContents(at, [[`=${text}`]]);
          if (kind === 'insert rows') engine.addRows(sheet, [first, count]);
          else if (kind === 'insert columns') engine.addColumns(sheet, [first, count]);
          else if (kind === 'remove rows') engine.removeRows(sheet, [first, count]);
          else engine.removeColumns(sheet, [first, count]);

          const isInsert = kind.startsWith('insert');
          const axis = kind.endsWith('rows') ? 'row' : 'col';
          for (const { text, at } of cells) {
            const isBehind = at.sheet === sheet && at[axis] >= first;
            if (!isInsert && isBehind && at[axis] < first + count) continue;
            const after = isBehind ? { ...at, [axis]: at[axis] + (isInsert ? count : -count) } : at;
            const lines: Lines = { ownSheet: sheets[at.sheet], sheet: sheets[sheet], at: first, count };
            const theirs = engine.getCellFormula(after)?.slice(1) ?? 'no formula';
            expect(comparable(changes[kind](text, lines)), `${text} after ${kind}`).toBe(comparable(theirs));
          }
        }),
        { numRuns: 100 },
      );
    },
    patience,
  );

  it(
    'when a formula is copied',
    () => {
      const engine = emptyBook();
      fc.assert(
        fc.property(formula, home, home, (text, from, to) => {
          engine.setCellContents(from, [[`=${text}`]]);
          engine.copy({ start: from, end: from });
          engine.paste(to);
          const theirs = engine.getCellFormula(to)?.slice(1) ?? 'no formula';
          const ours = shiftedForCopy(text, to.row - from.row, to.col - from.col);
          engine.setCellContents(from, [[1]]);
          engine.setCellContents(to, [[1]]);
          expect(comparable(ours), text).toBe(comparable(theirs));
        }),
        { numRuns: 500 },
      );
    },
    patience,
  );
});

describe('what was typed stays as typed', () => {
  const lines = { ownSheet: 'Pieces', sheet: 'Pieces', at: 3, count: 2 };

  it.each([
    ['a1+ B9 *lap', 'a1+ B11 *lap'],
    ['sum( a1 : b$5 )', 'sum( a1 : b$7 )'],
    ['"B9"&b9', '"B9"&b11'],
    ['pieces!B9+Other!B9', 'pieces!B11+Other!B9'],
    ["'PIECES'!$B$9", "'PIECES'!$B$11"],
    ['B9:A1', 'B11:A1'],
    ['LOG10(B9)', 'LOG10(B11)'],
    ['SUM(B9, ', 'SUM(B11, '],
    ['IF(B2>"', 'IF(B2>"'],
    ['B99998', '#REF!'],
  ])('%s becomes %s when two rows come in at row 4', (text, after) => {
    expect(afterInsertRows(text, lines)).toBe(after);
  });

  it.each([
    ['B4', '#REF!'],
    ['B5+B6', '#REF!+B4'],
    ['SUM(B1:B5)', 'SUM(B1:B3)'],
    ['SUM(B4:B9)', 'SUM(B4:B7)'],
    ['SUM(B9:B4)', 'SUM(B7:B4)'],
    ['SUM(B4:B5)', 'SUM(#REF!)'],
    ["SUM('Pieces'!B4:B5)", 'SUM(#REF!)'],
    ['#REF!+B9', '#REF!+B7'],
  ])('%s becomes %s when rows 4 and 5 go', (text, after) => {
    expect(afterRemoveRows(text, lines)).toBe(after);
  });

  it.each([
    ['a1+$B$2', 1, 2, 'c2+$B$2'],
    ['SUM(A$1:B2)', 3, 0, 'SUM(A$1:B5)'],
    ['B2', -2, 0, '#REF!'],
    ['B2', 0, -2, '#REF!'],
    ['ZZ1', 0, 1, '#REF!'],
    ['lap*B2', 1, 0, 'lap*B3'],
  ])('%s copied %i down and %i right reads %s', (text, down, right, after) => {
    expect(shiftedForCopy(text, down, right)).toBe(after);
  });

  it('inserting and then removing the same lines changes nothing', () => {
    fc.assert(
      fc.property(formula, fc.nat({ max: 10 }), fc.integer({ min: 1, max: 5 }), (text, at, count) => {
        const where = { ownSheet: 'Pieces', sheet: 'Pieces', at, count };
        expect(afterRemoveRows(afterInsertRows(text, where), where)).toBe(text);
        expect(afterRemoveColumns(afterInsertColumns(text, where), where)).toBe(text);
      }),
      { numRuns: 200 },
    );
  });
});
