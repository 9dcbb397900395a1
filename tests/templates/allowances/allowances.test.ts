import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { allowancesOf } from '../../../src/templates/allowances/apart.ts';
import { carryDifference, hasPlace } from '../../../src/templates/allowances/carry.ts';
import { compareAllowances } from '../../../src/templates/allowances/compare.ts';
import { allowanceRows } from '../../../src/templates/allowances/rows.ts';
import { wordCarryFault } from '../../../src/templates/allowances/wording.ts';
import { sheetNamed } from '../../../src/workbook/cells.ts';
import { runCommand } from '../../../src/workbook/commands.ts';
import { applyDifference, invertDifference } from '../../../src/workbook/difference.ts';
import type { Workbook } from '../../../src/workbook/document.ts';
import { type KeptWorkbook, readWorkbookFile, writeWorkbookFile } from '../../../src/workbook/file.ts';
import { valuesAfter } from '../../../src/workbook/values.ts';

const folder = new URL('../../../sheets/', import.meta.url);
const shipped = readdirSync(folder).filter((name) => /\.(job|template)\.stretchout\.json$/.test(name));

function keptIn(name: string): KeptWorkbook {
  const read = readWorkbookFile(readFileSync(new URL(name, folder), 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}

function typed(kept: KeptWorkbook, entries: { readonly [address: string]: string }): KeptWorkbook {
  const workbook = Object.entries(entries).reduce((sofar: Workbook, [place, text]) => {
    const [, letter = 'A', row = '1'] = /^([A-Z])(\d+)$/.exec(place) ?? [];
    const address = { row: Number(row) - 1, column: letter.charCodeAt(0) - 65 };
    const sheet = sheetNamed(sofar, 'Allowances')?.id ?? '';
    const entered = runCommand(sofar, { type: 'enter', sheet, address, typed: text });
    if (!entered.ok) throw new Error(JSON.stringify(entered.fault));
    return applyDifference(sofar, entered.value);
  }, kept.workbook);
  return { workbook, values: kept.values };
}

const rowsOf = ({ workbook, values }: KeptWorkbook) => allowanceRows(workbook, values);
const compared = (mine: KeptWorkbook, theirs: KeptWorkbook) =>
  compareAllowances(rowsOf(mine), rowsOf(theirs)).filter((one) => one.is !== 'same');

function carried(into: KeptWorkbook, from: KeptWorkbook, ids: readonly string[]): KeptWorkbook {
  const made = carryDifference(into, from, new Set(ids));
  if (!made.ok) throw new Error(made.fault.map(wordCarryFault).join('\n'));
  const workbook = applyDifference(into.workbook, made.value);
  expect(applyDifference(workbook, invertDifference(made.value))).toEqual(into.workbook);
  return { workbook, values: valuesAfter(into.values, made.value, into.workbook) };
}

describe.each(shipped)('the allowances of %s', (name) => {
  const kept = keptIn(name);
  const alone = allowancesOf(kept);

  test('stand on their own in a file, say the same, and lead nowhere else', () => {
    if (!alone) return expect(sheetNamed(kept.workbook, 'Allowances')).toBeUndefined();
    expect(compared(kept, alone)).toEqual([]);
    const read = readWorkbookFile(writeWorkbookFile(alone));
    expect(read.ok && read.value.workbook).toEqual(alone.workbook);
    expect([alone.workbook.kind, alone.workbook.sheets.length]).toEqual(['allowances', 1]);
  });
});

test('every figure of another shop, brought in, makes both say the same; undo puts all back', () => {
  const all = shipped.map(keptIn);
  for (const into of all.slice(0, 5)) {
    for (const from of all) {
      const here = new Set(rowsOf(into).map(({ id }) => id));
      const ids = compared(into, from).flatMap(({ id }) => (here.has(id) ? [id] : []));
      const wanted = ids.filter((id) => rowsOf(from).some((row) => row.id === id));
      const after = carried(into, from, wanted);
      expect(compared(after, from).filter(({ is }) => is === 'differs')).toEqual([]);
    }
  }
}, 60_000);

const job = keptIn('rect-trunk.job.stretchout.json');

test('a single allowance and one price differ, told with both sides', () => {
  const other = typed(job, { B12: '3', B53: '70' });
  const told = compared(job, other).map(({ is, table, key, columns }) => [
    is,
    table,
    key,
    ...columns.map(({ heading, mine, theirs }) => [heading, mine?.shows, theirs?.shows]),
  ]);
  expect(told).toEqual([
    ['differs', 'prices', 'Sheet metal, 26 ga', ['Price', '$61.50', '$70.00']],
    ['differs', 'single', 'lap', ['Value', '2″', '3″']],
  ]);
});

const wrap = (row: number, name: string) => ({
  [`A${row}`]: name,
  [`B${row}`]: '2.5',
  [`E${row}`]: '2',
  [`F${row}`]: '9',
  [`G${row}`]: '7',
  [`K${row}`]: '48',
  [`L${row}`]: '60',
});

test('a new wrap goes into the first free line, and its price into the line that repeats its name', () => {
  const other = typed(job, { ...wrap(9, 'R-7 wrap'), B73: '110' });
  const ids = compared(job, other)
    .filter(({ is }) => is === 'only_there')
    .map(({ id }) => id);
  expect(ids).toEqual(['wraps: r-7 wrap', 'prices: r-7 wrap']);
  const after = carried(job, other, ids);
  const sheet = sheetNamed(after.workbook, 'Allowances');
  expect([sheet?.rows[6]?.[0]?.content, sheet?.rows[70]?.[1]?.content]).toEqual(['R-7 wrap', 110]);
  expect(compared(after, other)).toEqual([]);
});

test('where no line is free one is put in at the end, and every name of the table grows', () => {
  const full = typed(job, { ...wrap(7, 'R-1 wrap'), ...wrap(8, 'R-2 wrap'), ...wrap(9, 'R-3 wrap') });
  const other = typed(job, wrap(7, 'R-7 wrap'));
  const after = carried(full, other, ['wraps: r-7 wrap']);
  const { wraps, wrap_names, lap } = after.workbook.names;
  expect([wraps?.range.to.row, wrap_names?.range.to.row, lap?.range.from.row]).toEqual([9, 9, 12]);
  expect(sheetNamed(after.workbook, 'Allowances')?.rows[9]?.[0]?.content).toBe('R-7 wrap');
  expect(compared(after, other).filter(({ id }) => id === 'wraps: r-7 wrap')).toEqual([]);
});

test('locked cells, limits and lines without a place are refused all at once, in sentences', () => {
  const sheet = sheetNamed(job.workbook, 'Allowances');
  if (!sheet) throw new Error('no allowances');
  const change = (row: number, content: number | null, locked?: true) =>
    sheet.rows.map((cells, at) =>
      at === row
        ? cells.map((cell, column) =>
            cell && column === 1
              ? { ...cell, ...(content === null ? {} : { content }), ...(locked ? { locked } : {}) }
              : cell,
          )
        : cells,
    );
  const withRows = (rows: typeof sheet.rows): KeptWorkbook => ({
    ...job,
    workbook: {
      ...job.workbook,
      sheets: job.workbook.sheets.map((one) => (one.id === sheet.id ? { ...sheet, rows } : one)),
    },
  });
  const mine = withRows(change(11, null, true));
  const { lap, ...others } = job.workbook.names;
  const theirs = typed(withRows(change(18, 9000)), { B12: '3' });
  const named = { ...others, ...(lap ? { lap, lap_two: lap } : {}) };
  const made = carryDifference(
    mine,
    { ...theirs, workbook: { ...theirs.workbook, names: named } },
    new Set(['single: lap', 'single: lap_two', 'single: sheet_width']),
  );
  const said = made.ok ? [] : made.fault.map(wordCarryFault);
  expect(made.ok ? [] : made.fault.map(({ code }) => code)).toEqual(['locked', 'no_such_single', 'refused']);
  expect(hasPlace(mine.workbook, { table: 'single' })).toBe(false);
  expect(['wraps', 'labor'].map((table) => hasPlace(mine.workbook, { table }))).toEqual([true, false]);
  expect(said[0]).toContain('Allowances!B12 is locked');
});

test('prices whose headings stand above the block that is named are a table like any other', () => {
  const rows = rowsOf(keptIn('insulation.job.stretchout.json')).filter(
    ({ table }) => table === 'roll_prices',
  );
  expect(rows.map(({ label }) => label)).toContain('R-8 wrap');
  const price = rows.find(({ label }) => label === 'R-8 wrap')?.cells.get('Price');
  expect(price?.shows).toMatch(/^\$/);
});
