import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('rows are put in and taken out by key, and formulas follow', async () => {
  const { cell, words, keys, rowNumber, page } = await openRanges();
  await rowNumber(2).click();
  await rowNumber(3).click({ modifiers: ['Shift'] });
  await keys('Control+Shift+Equal');
  expect(await words('A4')).toBe('S1 trunk');
  await cell('E4').click();
  await page.locator('.working').getByText('PI()*B4').waitFor();
  await rowNumber(2).click();
  await keys('Control+Minus');
  expect(await words('A3')).toBe('S1 trunk');
  await keys('Control+z', 'Control+z');
  expect(await words('A2')).toBe('S1 trunk');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('the keys for rows and columns mean nothing while single cells are selected', async () => {
  const { page, keys } = await openRanges();
  await keys('Control+Shift+Equal', 'Control+Minus');
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
});

test('a row number and a column letter have a menu of what can be done to them', async () => {
  const { page, words, rowNumber, columnLetter, selection } = await openRanges();
  await rowNumber(2).click({ button: 'right' });
  const menu = page.getByRole('menu', { name: 'Rows and columns' });
  expect(await menu.getByRole('menuitem').allTextContents()).toEqual([
    'Put in a row above',
    'Put in a row below',
    'Take out row 2',
    'Move row 2 upAlt+↑',
    'Move row 2 downAlt+↓',
    'Put in a line like row 2Alt+Shift+↓',
    'Hide row 2',
    'Keep rows 1 to 2 in sight',
  ]);
  await menu.getByRole('menuitem', { name: 'Put in a row below' }).click();
  expect(await menu.count()).toBe(0);
  expect(await words('A4')).toBe('S2 trunk');
  await columnLetter('B').click();
  await columnLetter('C').click({ modifiers: ['Shift'] });
  await columnLetter('C').click({ button: 'right' });
  expect(await selection()).toBe('columns B to C');
  expect(await menu.getByRole('menuitem').allTextContents()).toEqual([
    'Fit columns B to C to the words',
    'Hide columns B to C',
    'Keep columns A to C in sight',
    'Let all columns scroll',
    'Move columns B to C to the leftAlt+←',
    'Move columns B to C to the rightAlt+→',
    'Put in 2 columns to the left',
    'Put in 2 columns to the right',
    'Take out columns B to C',
  ]);
  await menu.getByRole('menuitem', { name: 'Put in 2 columns to the left' }).click();
  expect(await words('D1')).toBe('Diameter');
});

test('Shift+F10 opens the menu at the cell, the arrows walk it, and Escape gives the focus back', async () => {
  const { page, here, keys, words } = await openRanges();
  const item = () => page.evaluate(() => document.activeElement?.textContent);
  await keys('Shift+F10');
  expect(await item()).toBe('Copy B2Ctrl+C');
  await keys('ArrowUp');
  expect(await item()).toBe('Take out column B');
  await keys('Home', 'ArrowDown', 'ArrowDown');
  expect(await item()).toBe('PasteCtrl+V');
  await keys('Escape');
  expect(await page.getByRole('menu').count()).toBe(0);
  await keys('ArrowRight');
  expect(await here()).toBe('C2');
  await keys('ContextMenu', 'End', 'Enter');
  expect(await words('C1')).toBe('Wrap');
  await keys('ArrowDown');
  expect(await here()).toBe('C3');
});

test('a column that is taken away leaves its formulas with a word where the cell was, and comes back whole', async () => {
  const { words, keys, columnLetter } = await openRanges();
  await columnLetter('B').click();
  await keys('Control+Minus');
  await expect.poll(() => words('D2')).toMatch(/^✕/);
  await keys('Control+z');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('a second window may look and copy, and is told politely why it may not change anything', async () => {
  const { page, context, clipboard } = await openRanges();
  const second = await context.newPage();
  await second.goto(page.url());
  const cell = second.locator('[row-id="1"] [col-id="c1"]');
  const complaint = second.locator('.sheet-grid-complaint');
  const stood = await cell.textContent();
  await cell.click();
  await second.keyboard.press('Control+c');
  expect(stood).toContain(await clipboard());
  for (const key of ['Delete', 'Control+x', 'Control+v', 'Control+Shift+V', 'Control+d', 'Control+r']) {
    await second.keyboard.press('Control+c');
    await expect.poll(() => complaint.textContent()).toBe('');
    await second.keyboard.press(key);
    await expect
      .poll(async () => `${key}: ${await complaint.textContent()}`)
      .toContain(': This workbook is open in another');
  }
  await second.keyboard.press('Shift+F10');
  await second.getByRole('menuitem', { name: 'Put in a row above' }).click();
  await expect.poll(() => complaint.textContent()).toMatch(/^This workbook is open in another window/);
  expect(await cell.textContent()).toBe(stood);
});
