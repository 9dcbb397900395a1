import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { readLotTableFile } from '../../src/lots/file.ts';
import { readCsv } from '../../src/workbook/csv.ts';
import { type DemoPage, openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';
import type { WindowOptions } from './support/window.ts';

interface LotsPage extends Omit<DemoPage, 'shows'> {
  readonly press: (name: string | RegExp) => Promise<void>;
  /** A cell of the lots by lot and heading. */
  readonly shows: (lot: string, heading: string) => Promise<string>;
  readonly figured: (count: number) => Promise<void>;
}

const slow = { timeout: 60_000 };

async function openLots(options: WindowOptions = {}): Promise<LotsPage> {
  const demo = await openDemo(options);
  const { page } = demo;
  await page.getByRole('button', { name: 'House types and lots' }).click();
  await page.getByRole('heading', { level: 1, name: 'House types and lots' }).waitFor();
  return {
    ...demo,
    press: (name) => page.getByRole('button', { name, exact: typeof name === 'string' }).click(),
    shows: async (lot, heading) => {
      const row = page.getByRole('grid').getByRole('row', { name: new RegExp(`^${lot}\\b`) });
      return (
        (await row.locator(`[aria-colindex="${await columnOf(page, heading)}"]`).textContent()) ?? ''
      ).trim();
    },
    figured: (count) => page.getByText(`All ${count} lots figured.`).waitFor(slow),
  };
}

async function columnOf(page: Page, heading: string): Promise<string> {
  const head = page.getByRole('columnheader', { name: heading, exact: true });
  return (await head.getAttribute('aria-colindex')) ?? '';
}

async function openExample(options: WindowOptions = {}): Promise<LotsPage> {
  const lots = await openLots(options);
  await lots.press(/^Open the example/);
  await lots.figured(12);
  return lots;
}

describe('twelve lots of two house types', slow, () => {
  test('only house types are offered to be added: those with the program, the open one, and of the shelf what is one', async () => {
    const { page, faults } = await openExample();
    const open = async (file: string, title: string) => {
      await page.getByLabel('Workbook file', { exact: true }).setInputFiles(sheetFile(file));
      await page.locator('header').getByText(title).first().waitFor();
      await page.getByRole('button', { name: 'House types and lots' }).click();
    };
    const offered = async () =>
      (
        await page
          .getByLabel('Add a house type, or take a newer revision')
          .getByRole('option')
          .allTextContents()
      ).slice(1);
    const shipped = ['Single-storey house', 'Two-storey town house'];
    expect(await offered()).toEqual(shipped);
    await open('town-house.template', 'Two-storey town house');
    expect(await offered()).toEqual(['Two-storey town house, as it stands open here', ...shipped]);
    await open('round-trunk.template', 'Round trunk');
    expect(await offered()).toEqual([...shipped, 'Two-storey town house']);
    expect(faults).toEqual([]);
  });

  test.each([
    [
      1440,
      900,
      ['Price', 'Hours', 'Sheets', 'Rolls of wrap', 'Sheet metal, lb', 'Flex, ft', 'Branches', 'Air, cfm'],
    ],
    [1024, 768, ['Price', 'Hours', 'Sheets', 'Rolls of wrap']],
  ])(
    'at %i by %i the price and the main results stand in sight, with their totals',
    async (width, height, results) => {
      const { page } = await openExample({ size: { width, height } });
      const table = await page.locator('.lots-scroller').boundingBox();
      expect((table?.y ?? 0) + (table?.height ?? 0)).toBeLessThanOrEqual(height);
      for (const result of results) {
        const head = await page.getByRole('columnheader', { name: result, exact: true }).boundingBox();
        expect(head?.x, result).toBeGreaterThan(table?.x ?? 0);
        expect((head?.x ?? 0) + (head?.width ?? 0), result).toBeLessThanOrEqual(
          (table?.x ?? 0) + (table?.width ?? 0),
        );
      }
    },
  );

  test('stand with their figures, their totals and one order; the page is accessible', async () => {
    const { page, shows, faults } = await openExample();
    expect(await page.getByRole('grid').getAttribute('aria-rowcount')).toBe('14');
    expect(await shows('Lot 4', 'Insulation')).toBe('R-6');
    expect(await shows('Lot 8', 'Bonus room')).toBe('not of this type');
    expect(await shows('Lot 6', 'Stands')).toMatch(/^(✓ holds|! \d+ look)$/);
    expect(await shows('Lot 6', 'Trunk')).toBe('rectangular');
    const prices = await Promise.all(
      Array.from({ length: 12 }, async (_, at) => money(await shows(`Lot ${at + 1}`, 'Price'))),
    );
    const total = money(await shows('All lots', 'Price'));
    expect(Math.abs(total - prices.reduce((sum, one) => sum + one, 0))).toBeLessThan(0.06);
    const order = page.getByRole('table', { name: 'To order for 12 lots' });
    const sheets = order.getByRole('row', { name: /^Sheet metal, 26 ga/ });
    expect(await sheets.getByRole('cell').first().textContent()).toBe(await shows('All lots', 'Sheets'));
    await page.getByText('counted lot by lot and added up').waitFor();
    await expectAccessible(page);
    expect(faults).toEqual([]);
  });

  test('by key alone: walk to a cell, choose, refuse what the given refuses, take back; only that lot is figured anew', async () => {
    const { page, shows, figured, faults } = await openExample();
    const before = await shows('Lot 1', 'Price');
    await page.locator('[data-cell="0 0"]').click();
    const steps = Number(await columnOf(page, 'Insulation')) - 1;
    for (let step = 0; step < steps; step += 1) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.getByRole('combobox', { name: 'Insulation of Lot 1' }).selectOption('R-6');
    await page.keyboard.press('Enter');
    await expect.poll(() => shows('Lot 1', 'Insulation')).toBe('R-6');
    await figured(12);
    await expect.poll(() => shows('Lot 1', 'Price')).not.toBe(before);

    const scale = Number(await columnOf(page, 'Scale of the plan')) - 1;
    await page.locator(`[data-cell="1 ${scale}"]`).click();
    await page.keyboard.type('9');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').filter({ hasText: '0.50 to 2.00' }).waitFor();
    await page.keyboard.press('Escape');
    expect(await shows('Lot 2', 'Scale of the plan')).toBe('1.00, as usual');

    await page.locator('[data-cell="2 1"]').click();
    await page.keyboard.press('Enter');
    await page.getByRole('combobox', { name: 'House type of Lot 3' }).selectOption('Two-storey town house');
    await page.keyboard.press('Enter');
    await page.getByText('Lot 3 no longer says: Bonus room.').waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => shows('Lot 3', 'Bonus room')).toBe('yes');

    await page.keyboard.press('Control+z');
    await expect.poll(() => shows('Lot 1', 'Insulation')).toBe('R-8, as usual');
    await expect.poll(() => shows('Lot 1', 'Price')).toBe(before);
    expect(faults).toEqual([]);
  });

  test('two choices of one lot beside each other: results as bars, the order, the cells', async () => {
    const { page, faults } = await openExample();
    await page.getByText('Compare two lots, or two choices').click();
    await page.getByLabel(/^Lot 1 beside/).selectOption({ label: 'Insulation: R-6' });
    const order = page.getByRole('table', { name: 'To order', exact: true });
    await order.waitFor(slow);
    expect(
      await order
        .getByRole('row', { name: /^R-6 wrap/ })
        .getByRole('cell')
        .allTextContents(),
    ).toEqual(expect.arrayContaining(['0']));
    await page.getByRole('img', { name: /^Price: Lot 1 \$[\d,.]+, Lot 1 with Insulation R-6 \$/ }).waitFor();
    await page.getByRole('table', { name: 'What was given' }).getByText('R-6 wrap').waitFor();
    expect(faults).toEqual([]);
  });

  test('a lot opens as a job of its own, filled in, at the revision of its type', async () => {
    const { page, shows, press, faults } = await openExample();
    const price = await shows('Lot 4', 'Price');
    await page.locator('[data-cell="3 0"]').click();
    await press('Open Lot 4 as a job');
    await page.getByRole('heading', { level: 1, name: 'House', exact: true }).waitFor(slow);
    await page.getByText('Lot 4, Larkspur Lane, lots 1 to 12').first().waitFor();
    await page.getByText('from Single-storey house, revision').first().waitFor();
    const named = page.locator('[row-id="1"] [col-id="c1"] .sheet-cell-words');
    await expect.poll(() => named.textContent()).toBe('Lot 4');
    await page.getByRole('button', { name: /^Price/ }).click();
    // The price stands below what is in sight.
    await page.locator('.sheet-grid').hover();
    await page.mouse.wheel(0, 600);
    await page.locator('.sheet-cell-words', { hasText: price }).first().waitFor();
    expect(faults).toEqual([]);
  });
});

describe('lots from and to files', slow, () => {
  test('CSV: all that is wrong is told, nothing is written; put right, they come in; out again they are the same', async () => {
    const { page, press, figured, faults } = await openExample();
    const bring = async (text: string) => {
      await page.getByLabel('CSV file of lots', { exact: true }).setInputFiles({
        name: 'more.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from(text),
      });
    };
    await page.getByText('Lots from a CSV file').click();
    await bring(
      'Lot,Type,Insulation,Scale of the plan\nLot 12,Barn,R-6,1\nLot 14,Single-storey house,R-9,wide\n',
    );
    const alarm = page.getByRole('alert').filter({ hasText: 'Line 2' });
    await alarm.waitFor();
    expect(await alarm.getByRole('listitem').count()).toBe(4);
    expect(await page.getByRole('button', { name: 'Not all is right yet' }).isDisabled()).toBe(true);
    await bring(
      'Lot,Type,Insulation,Scale of the plan\nLot 13,two-storey town house,R-8,1.02\nLot 14,Single-storey house,R-6,1\n',
    );
    await press('Bring in 2 lots');
    await figured(14);
    const coming = page.waitForEvent('download');
    await press('Lots as CSV');
    const rows = readCsv(readFileSync(await (await coming).path(), 'utf8'));
    expect(rows).toHaveLength(15);
    expect(rows[13]?.slice(0, 2)).toEqual(['Lot 13', 'Two-storey town house']);
    await page.keyboard.press('Control+z');
    await figured(12);
    expect(faults).toEqual([]);
  });

  test('the table is kept in this browser, saved to a file, and opened from it', async () => {
    const { page, press, figured, shows, faults } = await openExample();
    await page.locator('[data-cell="2 0"]').click();
    await press('Copy Lot 3');
    await figured(13);
    await page.getByText('Kept in this browser.').waitFor();
    await page.reload();
    await press('House types and lots');
    await figured(13);
    const coming = page.waitForEvent('download');
    await press('Save the lot table');
    const file = await coming;
    expect(file.suggestedFilename()).toBe('larkspur-lane-lots-1-to-12.lots.stretchout.json');
    const text = readFileSync(await file.path(), 'utf8');
    const read = readLotTableFile(text);
    expect(read.ok && read.value.rows.map(({ name }) => name).slice(2, 5)).toEqual([
      'Lot 3',
      'Lot 13',
      'Lot 4',
    ]);
    await page.getByLabel('Lot table file', { exact: true }).setInputFiles({
      name: 'bad.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text.slice(0, 900)),
    });
    await page.getByText('bad.json is not opened. The file is damaged or cut off').waitFor();
    expect(await shows('Lot 13', 'House type')).toBe('Single-storey house');
    expect(faults).toEqual([]);
  });

  test('a second window can look and change nothing', async () => {
    const { page, context } = await openExample();
    const other = await context.newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'House types and lots' }).click();
    await other.getByText('Open in another window; here it can only be read.').waitFor(slow);
    expect(await other.getByRole('button', { name: 'Add a lot' }).count()).toBe(0);
    await other.locator('[data-cell="0 0"]').click();
    await other.keyboard.press('Enter');
    expect(await other.locator('.lot-field').count()).toBe(0);
  });

  test('from nothing: begin, add a house type, add a lot; an empty table says what to do', async () => {
    const { page, press, figured, shows, faults } = await openLots();
    await press('Begin a lot table');
    await page.getByText('No lots yet. Add a house type first.').waitFor();
    const add = page.getByLabel('Add a house type, or take a newer revision');
    await page
      .getByLabel('House type file', { exact: true })
      .setInputFiles(sheetFile('round-trunk.template'));
    await page.getByText('“Round trunk” is no house type').waitFor();
    await add.selectOption('Single-storey house');
    await page.getByText(/^Single-storey house, revision \d+ is a house type of this table now/).waitFor();
    await press('Add a lot');
    await press('Add a lot');
    await figured(2);
    expect(await shows('Lot 2', 'Stands')).toBe('✓ holds');
    await expectAccessible(page);
    expect(faults).toEqual([]);
  });
});

function sheetFile(name: string): string {
  return fileURLToPath(new URL(`../../sheets/${name}.stretchout.json`, import.meta.url));
}

function money(text: string): number {
  return Number(text.replace(/[$,]/g, ''));
}
