import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('the rows of a table are sorted by a column from the menu; references follow, and undo brings them back', async () => {
  const { page, cell, keys, words, rowNumber, columnLetter, sheet, faults } = await openRanges();
  await cell('B3').click();
  await page.keyboard.type('10');
  await keys('Enter');
  await cell('G2').click();
  await page.keyboard.type('=E2+1');
  await keys('Enter');
  await cell('B2').click();
  await keys('Shift+F10');
  const menu = page.getByRole('menu', { name: 'Rows and columns' });
  await expectAccessible(page, '.sheet-grid');
  await menu.getByRole('menuitem', { name: 'Sort rows 2 to 3 by Diameter, rising' }).press('Enter');
  await expect.poll(() => words('A2')).toBe('S2 trunk');
  expect(await words('A3')).toBe('S1 trunk');
  await expect.poll(() => words('E3')).toBe('50 5⁄16″');
  await cell('G3').click();
  await page.locator('.working').getByText('E3+1').waitFor();
  await sheet('Wrap').click();
  await expect.poll(() => words('B1')).toBe('100 9⁄16″');
  await sheet('Pieces').click();
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('title')).toMatch(
    /sorting Pieces!A2:G3/,
  );
  await cell('B2').click();
  await keys('Control+z');
  await expect.poll(() => words('A2')).toBe('S1 trunk');

  await columnLetter('A').click({ button: 'right' });
  await menu.getByRole('menuitem', { name: /by Piece, falling/ }).click();
  await expect.poll(() => words('A2')).toBe('S2 trunk');
  await rowNumber(2).click({ button: 'right' });
  expect(await menu.getByRole('menuitem', { name: /Sort/ }).count()).toBe(0);
  expect(faults).toEqual([]);
});

test('rows stay as they are where something takes in only some of them, with a sentence that says what', async () => {
  const { page, cell, keys, words, complaint, sheet } = await openRanges();
  await cell('A4').click();
  await page.keyboard.type('S1 wye');
  await keys('Enter');
  await sheet('Wrap').click();
  await page.getByRole('heading', { level: 1, name: 'Wrap' }).waitFor();
  await cell('B4').click();
  await page.keyboard.type('=SUM(Pieces!C2:C3)');
  await keys('Enter');
  await sheet('Pieces').click();
  await cell('A2').click();
  await keys('Shift+F10');
  await page.getByRole('menuitem', { name: /^Sort rows 2 to 4 .*rising/ }).click();
  await expect.poll(complaint).toMatch(/Wrap!B4 takes in Pieces!C2:C3, only some of these rows/);
  expect(await words('A3')).toBe('S2 trunk');
});

test('the sections of a trunk stay in their order, since each takes in the air of those below it, and the page says so', async () => {
  const { page, goTo, cell, shows, faults } = await openDemo();
  await page
    .getByLabel('Workbook file', { exact: true })
    .setInputFiles(
      fileURLToPath(new URL('../../sheets/town-house.template.stretchout.json', import.meta.url)),
    );
  await page.getByRole('heading', { level: 1, name: 'House', exact: true }).waitFor();
  await goTo('Trunk');
  const marks = () => Promise.all(['A2', 'A3', 'A4'].map(shows));
  const before = await marks();
  await cell('A2').click();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menuitem', { name: 'Sort rows 2 to 9 by Section, falling' }).press('Enter');
  const complaint = page.locator('.sheet-grid-complaint');
  await expect
    .poll(() => complaint.textContent())
    .toMatch(/their order counts here: Trunk!D2 takes in B3:B10, the rows below its own/);
  await expectAccessible(page, '.sheet-grid-complaint');
  expect(await marks()).toEqual(before);
  expect(faults).toEqual([]);
});
