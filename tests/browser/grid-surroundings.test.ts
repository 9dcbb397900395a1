import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { openPage } from './support/page.ts';

test('the list of sheets says how each one stands, and an entry changes it at once', async () => {
  const { page, cell, sheet } = await openGrid();
  expect(await sheet('Pieces').locator('..').textContent()).toContain('1 to fill');
  expect(await sheet('Pieces').getAttribute('aria-current')).toBe('page');
  expect(await sheet('Wrap').locator('..').textContent()).toContain('complete');
  expect(await sheet('Notes').textContent()).toBe('Notes');
  await cell('B3').click();
  await page.keyboard.type('10');
  await page.keyboard.press('Enter');
  await expect.poll(() => sheet('Pieces').locator('..').textContent()).toContain('1 look');
  await page.keyboard.type('10');
  await cell('E2').click();
  await page.keyboard.type('=1/0');
  await page.keyboard.press('Enter');
  await expect.poll(() => sheet('Pieces').locator('..').textContent()).toContain('1 stop');
  // It has no figure only because the other sheet has none.
  expect(await sheet('Wrap').locator('..').textContent()).toContain('waits');
});

test('the shop’s own sheet stands apart, and whoever walks the list keeps the focus there', async () => {
  const { page, sheet, here } = await openGrid();
  const shop = page.locator('section').filter({ has: page.getByRole('heading', { name: 'This shop' }) });
  expect(await shop.getByRole('button').allTextContents()).toEqual(['Allowances']);
  await sheet('Allowances').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Allowances' }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Allowances');
  await sheet('Pieces').click();
  expect(await here()).toBe('B2');
});

test('the title is changed in place, refused when empty, and given up with Escape', async () => {
  const { page } = await openGrid();
  const title = page.getByRole('button', { name: /change the title/ });
  const field = page.getByRole('textbox', { name: 'Title of the workbook' });
  await title.click();
  await field.fill('');
  await field.press('Enter');
  expect(await page.getByRole('banner').getByRole('alert').textContent()).toContain(
    'The workbook needs a title.',
  );
  await field.fill('Foxglove Close, house 4');
  await field.press('Enter');
  expect(await title.textContent()).toContain('Foxglove Close, house 4');
  expect(await title.evaluate((button) => button === document.activeElement)).toBe(true);
  await title.press('Enter');
  await field.fill('Elsewhere');
  await field.press('Escape');
  expect(await title.textContent()).toContain('Foxglove Close, house 4');
});

test('Undo and Redo name the deed that they act on, and the header says when all is kept', async () => {
  const { page, words } = await openGrid();
  const undo = page.getByRole('button', { name: /^Undo/ });
  const redo = page.getByRole('button', { name: /^Redo/ });
  await page.keyboard.type('18');
  await page.keyboard.press('Enter');
  expect(await undo.textContent()).toContain('B2');
  await undo.click();
  expect(await words('B2')).toBe('16″');
  expect(await undo.getAttribute('aria-disabled')).toBe('true');
  await redo.click();
  expect(await words('B2')).toBe('18″');
  await expect
    .poll(() => page.getByRole('banner').getByRole('status').textContent())
    .toBe('from Two pipes, revision 2 · kept on this computer');
});

test('a saved workbook opens again as it was', async () => {
  const { page } = await openGrid();
  await page.keyboard.type('22 1/2');
  await page.keyboard.press('Enter');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file' }).click();
  const saved = await saving;
  expect(saved.suggestedFilename()).toBe('foxglove-close-house-3.stretchout.json');
  const path = await saved.path();
  const other = await openPage();
  await other.page.getByLabel('Workbook file').setInputFiles(path);
  await other.page
    .getByRole('gridcell', { name: '22 and 1/2 inches, Diameter of S1 trunk, given, B2' })
    .waitFor();
});
