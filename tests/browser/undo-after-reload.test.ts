import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('what was done before a reload is taken back and done again after it', async () => {
  const { page, cell, keys, words } = await openRanges();
  await cell('B2').click();
  await page.keyboard.type('18');
  await keys('Enter');
  await page.keyboard.type('20');
  await keys('Enter', 'Control+z');
  await page.getByText('kept on this computer').waitFor();
  await page.reload();
  await expect.poll(() => words('B2')).toBe('18″');
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect.poll(() => undo.getAttribute('title')).toContain('B2');
  await cell('A1').click();
  await keys('Control+y');
  await expect.poll(() => words('B3')).toBe('20″');
  await keys('Control+z', 'Control+z');
  await expect.poll(() => words('B2')).toBe('16″');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('it is there after a rest, and after another workbook was open; another workbook has its own', async () => {
  const { page, cell, keys, words } = await openRanges();
  await cell('B2').click();
  await page.keyboard.type('18');
  await keys('Enter');
  await page.waitForTimeout(2500);
  await page.locator('.shelf-list button').first().click();
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
  await page.getByRole('button', { name: /^Foxglove Close, house 3/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await cell('A1').click();
  await keys('Control+z');
  await expect.poll(() => words('B2')).toBe('16″');
});
