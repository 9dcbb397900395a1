import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

const boxOf = async (place: Locator) => {
  const box = await place.boundingBox();
  if (!box) throw new Error('It is not on the page.');
  return box;
};

test('a column is pulled wider by the edge of its letter, Escape gives the pull up, and undo takes it back', async () => {
  const { page, columnLetter } = await openRanges();
  const before = await boxOf(columnLetter('B'));
  const y = before.y + before.height / 2;
  const pull = async () => {
    await page.mouse.move(before.x + before.width - 2, y);
    await page.mouse.down();
    await page.mouse.move(before.x + before.width + 30, y);
    await page.mouse.move(before.x + before.width + 58, y);
  };
  await pull();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect((await boxOf(columnLetter('B'))).width).toBe(before.width);
  await pull();
  expect(Math.abs((await boxOf(columnLetter('B'))).width - before.width - 60)).toBeLessThan(3);
  await page.mouse.up();
  await expect
    .poll(async () => Math.abs((await boxOf(columnLetter('B'))).width - before.width - 60))
    .toBeLessThan(3);
  expect(await page.getByRole('button', { name: /^Undo/ }).textContent()).toContain('the width of column B');
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await boxOf(columnLetter('B'))).width).toBe(before.width);
});

test('keys make the selected columns wider and narrower, and the menu fits them to their words', async () => {
  const { page, cell, keys, columnLetter } = await openRanges();
  const before = (await boxOf(columnLetter('A'))).width;
  await cell('A2').click();
  await page.keyboard.type('S1 trunk, under the stair and along the hall');
  await keys('Enter');
  await cell('A2').click();
  await keys('Alt+Shift+ArrowRight', 'Alt+Shift+ArrowRight');
  await expect.poll(async () => (await boxOf(columnLetter('A'))).width).toBeGreaterThan(before + 12);
  await keys('Alt+Shift+ArrowLeft');
  await columnLetter('A').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Fit column A to the words' }).click();
  await expect.poll(async () => (await boxOf(columnLetter('A'))).width).toBeGreaterThan(250);
  const words = cell('A2').locator('.sheet-cell');
  expect(await words.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
});

test('hidden rows and columns are stepped over, marked, and shown again from the menu', async () => {
  const { page, cell, here, keys, rowNumber, columnLetter } = await openRanges();
  await rowNumber(3).click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Hide row 3' }).click();
  await expect.poll(() => rowNumber(3).count()).toBe(0);
  await expect.poll(() => page.locator('[data-after-hidden]').textContent()).toBe('4');
  await columnLetter('C').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Hide column C' }).click();
  await expect.poll(() => columnLetter('C').count()).toBe(0);
  await cell('B2').click();
  await keys('ArrowDown');
  expect(await here()).toBe('B4');
  await keys('ArrowUp', 'ArrowRight');
  expect(await here()).toBe('D2');
  await expectAccessible(page, '.sheet-grid');
  await keys('Shift+F10');
  await page.getByRole('menuitem', { name: 'Show column C' }).click();
  await expect.poll(() => columnLetter('C').count()).toBe(1);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('[row-id="2"] [col-id="c0"]').textContent()).toContain('S2 trunk');
});

test('the person is led on when the row of the cell is hidden', async () => {
  const { page, here, cell, keys } = await openRanges();
  await cell('B2').click();
  await keys('Shift+F10');
  await page.getByRole('menuitem', { name: 'Hide row 2' }).click();
  await expect.poll(() => here()).toBe('B3');
});

test('rows and columns stay in sight as far as wished', async () => {
  const { page, keys, rowNumber, columnLetter } = await openRanges();
  await page.setViewportSize({ width: 900, height: 700 });
  await rowNumber(1).click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Keep row 1 in sight' }).click();
  await columnLetter('B').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Keep columns A to B in sight' }).click();
  const head = page.locator('[row-id="0"] [col-id="c1"]');
  const before = await boxOf(head);
  await page.locator('[row-id="1"] [col-id="c2"]').click();
  for (let step = 0; step < 40; step += 1) await keys('ArrowDown');
  for (let step = 0; step < 8; step += 1) await keys('ArrowRight');
  const after = await boxOf(head);
  expect([after.x, after.y]).toEqual([before.x, before.y]);
  expect(await head.locator('.sheet-cell-words').textContent()).toBe('Diameter');
  await head.click();
  await page.keyboard.type('Across');
  await keys('Enter');
  await expect.poll(() => head.locator('.sheet-cell-words').textContent()).toBe('Across');
  await columnLetter('A').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Let all columns scroll' }).click();
  await expectAccessible(page, '.sheet-grid');
});

test('a second window may not change widths, and is told why', async () => {
  const { page, context } = await openRanges();
  const second = await context.newPage();
  await second.goto(page.url());
  await second.locator('[row-id="1"] [col-id="c1"]').click();
  await second.keyboard.press('Alt+Shift+ArrowRight');
  await expect
    .poll(() => second.locator('.sheet-grid-complaint').textContent())
    .toMatch(/^This workbook is open in another/);
});
