import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('words are found across sheets, stepped through, and the focus stays in the search until it is closed', async () => {
  const { page, cell, keys, here, faults } = await openRanges();
  await cell('B2').click();
  await keys('Control+f');
  const search = page.getByRole('search', { name: 'Find and replace' });
  const field = search.getByRole('searchbox');
  await page.keyboard.type('girth');
  await expect
    .poll(() => search.getByRole('listitem').allTextContents())
    .toEqual(['Pieces!E1  Girth', 'Wrap!A1  Twice the first girth']);
  await expectAccessible(page);
  await keys('Enter');
  await expect.poll(here).toBe('E1');
  await keys('Enter');
  await page.getByRole('heading', { level: 1, name: 'Wrap' }).waitFor();
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  await keys('Shift+Enter');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await search.getByText('1 of 2 cells').waitFor();
  await keys('Escape');
  expect(await search.count()).toBe(0);
  expect(await here()).toBe('E1');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('gridcell');
  expect(faults).toEqual([]);
});

test('one cell or all are typed anew as one deed, in formulas too, and all refusals are told at once', async () => {
  const { page, cell, keys, words } = await openRanges();
  await keys('Control+h');
  const search = page.getByRole('search', { name: 'Find and replace' });
  await page.keyboard.type('trunk');
  await search.getByLabel('Put in its place').fill('branch');
  await search.getByRole('button', { name: 'On', exact: true }).click();
  await search.getByRole('button', { name: 'In this cell' }).click();
  await expect.poll(() => words('A2')).toBe('S1 branch');
  expect(await words('A3')).toBe('S2 trunk');
  await search.getByRole('button', { name: 'In all 1' }).click();
  await expect.poll(() => words('A3')).toBe('S2 branch');

  await search.getByRole('searchbox').fill('PI()');
  await search.getByRole('combobox').selectOption('formulas');
  await search.getByLabel('Put in its place').fill('PIE()');
  await search.getByRole('button', { name: 'In all 2' }).click();
  await expect
    .poll(() => search.getByRole('alert').textContent())
    .toMatch(/Pieces!E2: .*PIE.*\nPieces!E3: .*PIE/);
  await search.getByLabel('Put in its place').fill('2*PI()');
  await search.getByRole('button', { name: 'In all 2' }).click();
  await search.getByText('2 cells were typed anew.').waitFor();
  await expect.poll(() => words('E2')).toBe('100 9⁄16″');
  await cell('B2').click();
  await keys('Control+z');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');

  await search.getByRole('combobox').selectOption('values');
  await search.getByRole('searchbox').fill('R-8 wrap');
  await search.getByLabel('Put in its place').fill('felt');
  await search.getByRole('button', { name: 'In all 2' }).click();
  await expect
    .poll(() => search.getByRole('alert').textContent())
    .toMatch(/^Nothing was written\.\nPieces!D2: .*\nPieces!D3: /);
});

test('an address or a name is gone to from the same field', async () => {
  const { page, keys, here } = await openRanges();
  await keys('Control+g');
  await page.keyboard.type('Wrap!B1');
  await keys('Enter');
  await page.getByRole('heading', { level: 1, name: 'Wrap' }).waitFor();
  await expect.poll(here).toBe('B1');
  // What is typed next goes into the cell.
  expect(await page.getByRole('search').count()).toBe(0);
  const focused = () =>
    page.evaluate(() => document.activeElement?.querySelector('.sheet-cell-said')?.textContent ?? '');
  await expect.poll(focused).toMatch(/B1$/);
  await keys('Control+g');
  const count = page.locator('.find-count');
  await page.getByRole('searchbox').fill('Attic!B1');
  await expect.poll(() => count.textContent()).toMatch(/no name or place in this workbook/);
  await page.getByRole('searchbox').fill('Pieces!C2:D3');
  await expect.poll(() => count.textContent()).toBe('');
  await page.getByRole('button', { name: 'Go to Pieces!C2:D3' }).click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await expect.poll(() => page.locator('.sheet-grid > p[role="status"]').textContent()).toMatch(/^C2 to D3/);
  await expect.poll(focused).toMatch(/C2$/);
  await keys('Control+g');
  await page.getByRole('searchbox').fill('B3');
  await keys('Enter');
  await expect.poll(focused).toMatch(/B3$/);
});
