import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('the other button on a cell offers what can be done to it, each deed with its key', async () => {
  const { page, cell, words, clipboard, faults } = await openRanges();
  await cell('C2').click({ button: 'right' });
  const menu = page.getByRole('menu', { name: 'Cells, rows and columns' });
  const items = await menu.getByRole('menuitem').allTextContents();
  expect(items.slice(0, 9)).toEqual([
    'Copy C2Ctrl+C',
    'Cut C2Ctrl+X',
    'PasteCtrl+V',
    'Paste values onlyCtrl+Shift+V',
    'Fill from the cell aboveCtrl+D',
    'Fill from the cell at the leftCtrl+R',
    'Empty C2Delete',
    'What this cell isF9',
    'NoteShift+F9',
  ]);
  expect(items).toContain('Put in a row above');
  await expectAccessible(page, '.deed-menu');
  await menu.getByRole('menuitem', { name: 'Copy C2' }).click();
  await expect.poll(() => clipboard()).toBe('14′ 6 ½″');
  await cell('G3').click({ button: 'right' });
  await menu.getByRole('menuitem', { name: 'Paste values only' }).click();
  await expect.poll(() => words('G3')).toContain('174');
  await cell('G3').click({ button: 'right' });
  await menu.getByRole('menuitem', { name: 'Empty G3' }).click();
  await expect.poll(() => words('G3')).toBe('');
  expect(faults).toEqual([]);
});

test('by keys: Shift+F10 opens it, arrows walk it, and cells that are cut are put in elsewhere', async () => {
  const { page, cell, words, keys, here } = await openRanges();
  await cell('A2').click();
  await keys('Shift+F10', 'ArrowDown', 'Enter');
  await cell('A6').click();
  await keys('ContextMenu', 'ArrowDown', 'ArrowDown', 'Enter');
  await expect.poll(() => words('A6')).toBe('S1 trunk');
  expect(await words('A2')).toBe('');
  expect(await here()).toBe('A6');
  await keys('Shift+ArrowDown', 'Shift+F10');
  await page.getByRole('menuitem', { name: 'Fill down' }).press('Enter');
  await expect.poll(() => words('A7')).toBe('S2 trunk');
});

test('what a cell is and its note are reached by key and from the menu', async () => {
  const { page, cell, keys } = await openRanges();
  await cell('C2').click();
  await keys('F9');
  const focused = () => page.evaluate(() => document.activeElement?.closest('div, label')?.textContent ?? '');
  await expect.poll(focused).toMatch(/^Role/);
  await cell('C3').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Note' }).click();
  await expect.poll(focused).toMatch(/^Note/);
  await page.keyboard.type('measured twice');
  await cell('C2').click();
  await expect
    .poll(() => cell('C3').locator('.sheet-cell-said').textContent())
    .toContain('note: measured twice');
});
