import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

/** Room for every row and column of a sheet that a test reads. */
const tall = { size: { width: 2400, height: 2400 } };

async function openAllowances(page: Page) {
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const list = page.getByRole('region', { name: 'All allowances' });
  await list.waitFor();
  return {
    list,
    row: (name: string) => list.getByRole('group', { name, exact: true }),
    /** To Keep it, from whichever field the keyboard is in. */
    keep: async () => {
      await page.keyboard.press('Control+Enter');
      await page.keyboard.press('Enter');
      await page.getByText('Kept in this workbook. Undo takes it back.').waitFor();
      expect(await page.locator('.allowances-bar').evaluate((bar) => bar === document.activeElement)).toBe(
        true,
      );
    },
  };
}

test('a price is copied, named, changed and kept by keyboard alone, as one deed with its name', async () => {
  const { page, goTo, shows, faults } = await openDemo(tall);
  const { list, row, keep } = await openAllowances(page);
  await list.getByText(/^prices/).press('Enter');
  const tape = row('Joint tape');
  await tape.getByText('this shop', { exact: true }).waitFor();
  await tape.getByRole('button', { name: 'Copy Joint tape' }).press('Enter');
  const copy = tape.getByRole('group', { name: 'Tried as a copy of Joint tape' });
  const name = copy.getByRole('textbox', { name: 'Name of the copy' });
  // The name that is proposed is selected, to be typed over.
  expect(await name.inputValue()).toBe('Copy of Joint tape');
  expect(await name.evaluate((field) => field === document.activeElement)).toBe(true);
  await page.keyboard.type('Foil tape');
  await page.keyboard.press('Tab');
  await page.keyboard.type('31.50');
  await page.keyboard.press('Tab');
  expect(await copy.getByRole('textbox', { name: 'Where its figures come from' }).inputValue()).toBe(
    'this shop, from Joint tape',
  );
  await page.keyboard.type('price list of the supply house');
  await page.getByRole('region', { name: 'What it does to this job' }).waitFor();
  await expectAccessible(page);
  await keep();
  await goTo('Allowances');
  await expect.poll(() => shows('A60')).toBe('Foil tape');
  expect([await shows('B60'), await shows('C60')]).toEqual(['$31.50', 'price list of the supply house']);
  expect([await shows('A59'), await shows('B59'), await shows('A61')]).toEqual([
    'Joint tape',
    '$28.40',
    'Mastic',
  ]);
  await page.getByRole('button', { name: /^Undo.*the copy Foil tape/ }).click();
  await expect.poll(() => shows('A60')).toBe('Mastic');
  expect(faults).toEqual([]);
}, 120_000);

test('a copy is left out again, and one without a name or with a taken one says what to do', async () => {
  const { page, faults } = await openDemo();
  const { list, row } = await openAllowances(page);
  await list.getByText(/^prices/).click();
  const tape = row('Joint tape');
  const copyButton = tape.getByRole('button', { name: 'Copy Joint tape' });
  await copyButton.click();
  const name = tape.getByRole('textbox', { name: 'Name of the copy' });
  await name.fill('mastic');
  await page.getByText('Another row is called mastic already').waitFor();
  expect(await page.getByRole('button', { name: 'Keep it' }).getAttribute('aria-disabled')).toBe('true');
  await name.fill('');
  await page.getByText('The copy of Joint tape has no name').waitFor();
  await tape.getByRole('button', { name: 'Leave the copy out' }).press('Enter');
  expect(await name.count()).toBe(0);
  expect(await copyButton.evaluate((button) => button === document.activeElement)).toBe(true);
  expect(await page.getByRole('button', { name: 'Keep it' }).count()).toBe(0);
  expect(faults).toEqual([]);
}, 120_000);

test('an allowance that stands alone is copied under a name of its own; taken out, nothing breaks, unlike the first one', async () => {
  const { page, goTo, shows, faults } = await openDemo();
  const { row, keep } = await openAllowances(page);
  await row('Lap of the wrap').getByRole('button', { name: 'Copy Lap of the wrap' }).click();
  await page.keyboard.type('Lap in the attic');
  await keep();
  const own = row('Lap in the attic');
  await own.getByText('this shop, from Lap of the wrap · in formulas lap_2').waitFor();
  const effect = page.getByRole('region', { name: 'What it does to this job' });
  await own.getByRole('button', { name: 'Take out Lap in the attic' }).click();
  await effect.waitFor();
  expect(await effect.getByText(/would have no figure/).count()).toBe(0);

  await row('Lap of the wrap').getByRole('button', { name: 'Take out Lap of the wrap' }).click();
  await effect.getByText(/^✕ Without it \d+ cells would have no figure:$/).waitFor();
  await effect.getByRole('button', { name: 'Wrap!C2' }).first().waitFor();
  await expectAccessible(page);
  await row('Lap of the wrap').getByRole('button', { name: 'Would go; leave it in' }).click();
  await effect.getByText(/would have no figure/).waitFor({ state: 'detached' });

  await own.getByRole('button', { name: 'Would go; leave it in' }).focus();
  await keep();
  await page.getByRole('button', { name: /^Undo.*taking out Lap in the attic/ }).waitFor();
  await goTo('Allowances');
  await expect.poll(() => shows('A13')).toBe('Wrap at the corners');
  expect(faults).toEqual([]);
}, 120_000);

test('work of another workbook is copied with what it is paid by', async () => {
  const { page, goTo, shows, faults } = await openDemo(tall);
  await page.getByLabel('Workbook file', { exact: true }).setInputFiles({
    name: 'price-and-offer.job.stretchout.json',
    mimeType: 'application/json',
    buffer: readFileSync(new URL('../../sheets/price-and-offer.job.stretchout.json', import.meta.url)),
  });
  await page.getByText(/from Price and offer/).waitFor();
  const { list, row, keep } = await openAllowances(page);
  await list.getByText(/^labor \d+ rows/).click();
  await row('Hang trunk').getByRole('button', { name: 'Copy Hang trunk' }).click();
  await page.keyboard.type('Hang trunk, crawl space');
  await keep();
  await goTo('Allowances');
  await expect.poll(() => shows('A17')).toBe('Hang trunk, crawl space');
  expect([await shows('B17'), await shows('E17')]).toEqual([await shows('B16'), await shows('E16')]);
  expect(faults).toEqual([]);
}, 120_000);
