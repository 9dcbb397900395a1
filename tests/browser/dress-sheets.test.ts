import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { expectAccessible } from './support/axe.ts';

const names = async (page: Page) =>
  page
    .getByRole('navigation', { name: 'Sheets of this workbook' })
    .locator('[data-sheet] > span')
    .allTextContents();
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name }).waitFor();

test('a sheet is put in and named at once, and undo takes it away again', async () => {
  const { page } = await openGrid();
  await page.getByRole('button', { name: 'Add a sheet' }).click();
  const field = page.getByRole('textbox', { name: 'Name of the sheet' });
  expect(await field.inputValue()).toBe('New sheet');
  await field.fill('Pieces');
  await field.press('Enter');
  expect(await page.locator('.in-place-field').getByRole('alert').textContent()).toMatch(
    /^There is a sheet named “Pieces”/,
  );
  await field.fill('Attic');
  await field.press('Enter');
  await heading(page, 'Attic');
  expect(await names(page)).toEqual(['Pieces', 'Wrap', 'Notes', 'Attic', 'Allowances']);
  expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Attic');
  await page.locator('[row-id="11"] [col-id="c5"]').waitFor();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  expect(await names(page)).toEqual(['Pieces', 'Wrap', 'Notes', 'Allowances']);
});

test('keys on the name of a sheet rename it, move it and take it out, and the notice puts it back', async () => {
  const { page, sheet, words } = await openGrid();
  await sheet('Wrap').focus();
  await page.keyboard.press('F2');
  await page.keyboard.type('Round');
  await page.keyboard.press('Enter');
  expect(await names(page)).toEqual(['Pieces', 'Round', 'Notes', 'Allowances']);
  await page.keyboard.press('Alt+ArrowDown');
  expect(await names(page)).toEqual(['Pieces', 'Notes', 'Round', 'Allowances']);
  await page.keyboard.press('Alt+ArrowDown');
  expect(await names(page)).toEqual(['Pieces', 'Notes', 'Round', 'Allowances']);
  await page.keyboard.press('Alt+ArrowUp');
  await page.keyboard.press('Alt+ArrowUp');
  expect(await names(page)).toEqual(['Round', 'Pieces', 'Notes', 'Allowances']);
  await sheet('Pieces').focus();
  await page.keyboard.press('Delete');
  expect(await names(page)).toEqual(['Round', 'Notes', 'Allowances']);
  const notice = page.locator('.notice');
  expect(await notice.textContent()).toMatch(/^The sheet Pieces was taken out/);
  await notice.getByRole('button', { name: 'Put it back' }).click();
  expect(await names(page)).toEqual(['Round', 'Pieces', 'Notes', 'Allowances']);
  await sheet('Round').click();
  await expect.poll(() => words('B1')).toBe('100 9⁄16″');
});

test('the menu of the open sheet makes a copy, closes with Escape, and is read as a menu', async () => {
  const { page, words } = await openGrid();
  const more = page.getByRole('button', { name: 'Change this sheet' });
  await more.click();
  const menu = page.getByRole('menu', { name: 'This sheet' });
  expect(await menu.getByRole('menuitem').count()).toBe(5);
  await expectAccessible(page);
  await page.keyboard.press('Escape');
  expect(await menu.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Pieces');
  await page.keyboard.press('Shift+F10');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await heading(page, 'Pieces copy');
  expect(await names(page)).toEqual(['Pieces', 'Pieces copy', 'Wrap', 'Notes', 'Allowances']);
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('the sentence over a sheet is changed in place and kept', async () => {
  const { page } = await openGrid();
  await page.getByRole('button', { name: /change this sentence/ }).click();
  const field = page.getByRole('textbox', { name: 'What to do on this sheet' });
  await field.fill('Measure twice.');
  await field.press('Enter');
  const sentence = page.getByRole('button', { name: /change this sentence/ });
  expect(await sentence.textContent()).toContain('Measure twice.');
  expect(await sentence.evaluate((button) => button === document.activeElement)).toBe(true);
  await page.getByRole('button', { name: /^Undo.*the sentence of Pieces/ }).click();
  expect(await sentence.textContent()).toContain('Fill the underlined cells.');
});

test('a second window may not change the sheets, and is told why', async () => {
  const { page, context } = await openGrid();
  const second = await context.newPage();
  await second.goto(page.url());
  await second.getByRole('button', { name: 'Add a sheet' }).click();
  expect(await second.locator('.notice').textContent()).toMatch(/^This workbook is open in another window/);
  expect(await second.getByRole('button', { name: /change this sentence/ }).count()).toBe(0);
});
