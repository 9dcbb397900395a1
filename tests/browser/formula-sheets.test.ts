import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a formula written in its cell comes along to another sheet, takes cells there, and leads back', async () => {
  const { page, cell, field, keys, sheet, words, here, faults } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=C2+');
  await sheet('Allowances').click();
  await page.getByRole('heading', { level: 1, name: 'Allowances' }).waitFor();
  expect(await field.inputValue()).toBe('=C2+');
  expect(await field.evaluate((input) => input === document.activeElement)).toBe(true);
  await page.locator('.cell-editor').getByText('Pieces, G2').waitFor();
  await expectAccessible(page, '.sheet-grid');
  await cell('B1').click();
  expect(await field.inputValue()).toBe('=C2+Allowances!B1');
  await keys('Enter');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await expect.poll(() => words('G2')).toBe('176.5');
  expect(await here()).toBe('G2');
  expect(faults).toEqual([]);
});

test('with keys alone: Alt+PageDown turns to the next sheet, arrows pick there, Escape gives up and leads back', async () => {
  const { page, cell, field, keys, here, words } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=SUM(');
  await keys('Alt+PageDown');
  await page.getByRole('heading', { level: 1, name: 'Wrap' }).waitFor();
  await keys('ArrowRight');
  const picked = await field.inputValue();
  expect(picked).toMatch(/^=SUM\(Wrap![A-Z]1$/);
  await keys('Shift+ArrowDown');
  expect(await field.inputValue()).toMatch(/^=SUM\(Wrap!([A-Z])1:\1?2?/);
  await keys('Alt+PageUp');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await field.inputValue()).toContain('Wrap!');
  await keys('Alt+PageDown', 'Escape');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await here()).toBe('G2');
  expect(await words('G2')).toBe('');
  await keys('ArrowLeft');
  expect(await here()).toBe('F2');
});

test('a half-written formula that is left for a page waits in its cell', async () => {
  const { page, cell, field, keys, sheet } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=SUM(C2,');
  await page.getByRole('button', { name: 'Trade functions' }).click();
  await page.getByRole('heading', { level: 1, name: 'Trade functions' }).waitFor();
  await sheet('Pieces').click();
  await cell('G2').getByText('✎ =SUM(C2,').waitFor();
  await page.locator('.working').getByText('was typed here and is not in the cell yet').waitFor();
  await cell('G2').click();
  await keys('Enter');
  expect(await field.inputValue()).toBe('=SUM(C2,');
});
