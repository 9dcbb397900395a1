import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { choose, openWorkbook } from './working-workbook.ts';

test('a formula is changed with help: words are completed, arguments explained, the new value read out', async () => {
  const { page, working, faults } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByRole('button', { name: /PI\(\)/ }).press('Enter');
  const editor = working.getByRole('textbox', { name: 'Formula' });
  await editor.waitFor();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('TAPE.RO');
  await working.getByRole('option', { name: /TAPE\.ROUND/ }).waitFor();
  // The list takes no key in its first 75 milliseconds, so that nobody chooses from it unseen.
  await page.waitForTimeout(150);
  await page.keyboard.press('Tab');
  await expect.poll(() => editor.textContent()).toMatch(/^TAPE\.ROUND\(/);
  await working.getByText(/length in inches, -12000 to 12000/).waitFor();
  await page.keyboard.type('Pieces!B2, 16, ');
  await expect.poll(() => working.locator('.signature-note strong').first().textContent()).toBe('round');
  await page.keyboard.type('"nearest"');
  await page.keyboard.press('Enter');
  await expect
    .poll(() => working.locator('.working-figure .visually-hidden').textContent())
    .toBe('16 inches');
  await expect
    .poll(() => working.getByRole('status').first().textContent())
    .toBe('Girth of S1 trunk: 16 inches');
  await working.getByRole('button', { name: /TAPE\.ROUND/ }).waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toContain('formula-open');
  expect(faults).toEqual([]);
});

test('a refused formula says why and keeps what was written, also while one looks at another cell', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByRole('button', { name: /PI\(\)/ }).click();
  const editor = working.getByRole('textbox', { name: 'Formula' });
  await editor.waitFor();
  await page.keyboard.type('*2 + GIRTH(3)');
  await page.keyboard.press('Enter');
  await working.getByRole('alert').getByText('GIRTH').waitFor();
  expect(await editor.textContent()).toBe('PI()*Pieces!B2*2 + GIRTH(3)');
  await expectAccessible(page, '.working');
  await page.locator('.app-sheet [row-id="1"] [col-id="c3"]').click();
  await working.getByRole('heading', { name: /Working · D2/ }).waitFor();
  await page.locator('.app-sheet [row-id="1"] [col-id="c1"]').click();
  await working.getByText('is not in the cell yet').waitFor();
  await expectAccessible(page, '.working');
  await working.getByRole('button', { name: 'Write on' }).click();
  await expect.poll(() => editor.textContent()).toBe('PI()*Pieces!B2*2 + GIRTH(3)');
  await editor.press('Escape');
  await working.getByRole('button', { name: /PI\(\)/ }).waitFor();
});

test('the panel keeps its place when the figure of the same cell changes, and begins anew at another', async () => {
  const { page, working } = await openWorkbook({ width: 1280, height: 500 });
  await choose(page, 'Round', 1, 2);
  await working.getByRole('button', { name: /TAPE\.ROUND/ }).press('Enter');
  await working.getByRole('textbox', { name: 'Formula' }).waitFor();
  await page.keyboard.type('+1');
  await page.keyboard.press('Enter');
  const figure = working.locator('.working-figure .visually-hidden');
  await expect.poll(() => figure.textContent()).toBe('51 and 5/16 inches');
  await working.evaluate((panel) => {
    panel.scrollTop = 150;
  });
  await page.keyboard.press('Control+z');
  await expect.poll(() => figure.textContent()).toBe('50 and 5/16 inches');
  expect(await working.evaluate((panel) => panel.scrollTop)).toBe(150);
  await page.locator('.app-sheet [row-id="1"] [col-id="c1"]').click();
  await working.getByRole('heading', { name: /Working · B2/ }).waitFor();
  expect(await working.evaluate((panel) => panel.scrollTop)).toBe(0);
});

test('a cell without a formula takes one', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 4, 1);
  await working.getByRole('button', { name: 'Write a formula here' }).press('Enter');
  await working.getByRole('textbox', { name: 'Formula' }).waitFor();
  await page.keyboard.type('=2+3');
  await page.keyboard.press('Enter');
  await expect.poll(() => working.locator('.working-figure').textContent()).toBe('5');
});
