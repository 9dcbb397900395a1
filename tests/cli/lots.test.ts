import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../src/workbook/csv.ts';
import { fileWith, stretchout, timeout } from './run.ts';

const demo = 'sheets/larkspur-lane.lots.stretchout.json';

describe('stretchout lots', { timeout }, () => {
  test('prints a line a lot, the totals, and one order list for twelve lots of two types', async () => {
    const out = fileWith('lots.csv', '');
    const run = await stretchout('lots', demo, '--csv', out, '--progress');
    expect(run.exit).toBe(0);
    expect(run.error).toBe('12 of 12 lots\n');
    expect(run.out.match(/^ {2}Lot \d+ /gm)).toHaveLength(12);
    expect(run.out).toMatch(/^ {2}All lots .*\$[\d,]+\.\d\d/m);
    expect(run.out).toContain('To order for 12 lots');
    expect(run.out).toContain('counted lot by lot and added up');
    const rows = readCsv(readFileSync(out, 'utf8'));
    expect(rows).toHaveLength(13);
    const sheets = rows[0]?.indexOf('Sheets') ?? -1;
    const added = rows.slice(1).reduce((sum, row) => sum + Number(row[sheets]), 0);
    expect(run.out).toMatch(new RegExp(`^ +${added} +sheets 48 × 120 in.* Sheet metal, 26 ga$`, 'm'));
  });

  test('fails while a lot cannot be figured, and says why', async () => {
    const data = JSON.parse(readFileSync(demo, 'utf8'));
    data.lots.rows[4].overrides['House!B15'] = 9;
    const run = await stretchout('lots', fileWith('wrong.json', data));
    expect(run.exit).toBe(1);
    expect(run.out).toMatch(/stop +Lot 5: Scale of the plan: /);
    expect(run.out).toContain('This order is without Lot 5 (cannot be figured as it stands).');
  });

  test('a folder is no lot table, and a name that is not there is said to be so', async () => {
    const folder = await stretchout('lots', 'sheets');
    expect(folder.exit).toBe(2);
    expect(folder.error).toContain('sheets is not opened. It is not a file. Name the lot table itself.');
    expect((await stretchout('lots', 'none.json')).error).toContain('There is no such file.');
  });

  test('every other command tells where a lot table belongs', async () => {
    const runs = await Promise.all([
      stretchout('check', demo),
      stretchout('compare', demo, demo),
      stretchout('takeoff', demo),
      stretchout('new', demo, 'answers.csv', '--to', 'never.json'),
      stretchout('figure', '--in', demo, '1+1'),
    ]);
    for (const { exit, error } of runs) {
      expect(exit).toBe(2);
      expect(error.replace(/\s+/g, ' ')).toContain(
        `This is a lot table, not a workbook. Figure its lots with: stretchout lots ${demo}`,
      );
    }
  });

  test('a workbook is no lot table', async () => {
    const run = await stretchout('lots', 'sheets/demo.job.stretchout.json');
    expect(run.exit).toBe(2);
    expect(run.error).toContain('not a lot table');
  });
});
