import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a sort says how many rows it sorted and what reads them, and can be taken back where it says so', async () => {
  const { page, cell, keys, words, sheet, faults } = await openRanges();
  const said = page.locator('.sheet-grid-said');
  await sheet('Wrap').click();
  await page.getByRole('heading', { level: 1, name: 'Wrap' }).waitFor();
  for (const [place, typed] of [
    ['B4', '=Pieces!B2'],
    ['B5', '=Pieces!B3'],
  ] as const) {
    await cell(place).click();
    await page.keyboard.type(typed);
    await keys('Enter');
  }
  await sheet('Pieces').click();
  await cell('B3').click();
  await page.keyboard.type('10');
  await keys('Enter');
  await cell('B2').click();
  await keys('Shift+F10');
  await page.getByRole('menuitem', { name: 'Sort rows 2 to 3 by Diameter, rising' }).press('Enter');
  await expect.poll(() => said.textContent()).toContain('2 rows sorted. The same lines of Wrap went along');
  expect(await words('A2')).toBe('S2 trunk');
  await expectAccessible(page, '.sheet-grid');
  await said.getByRole('button', { name: /^Take back sorting Pieces!A2/ }).click();
  await expect.poll(() => words('A2')).toBe('S1 trunk');
  expect(await said.textContent()).toBe('');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('col-id'))).toBe('c1');
  expect(faults).toEqual([]);
});

test('a paste over hidden rows and over a figured cell says what it did, until the next deed', async () => {
  const { page, cell, keys, words, rowNumber, copyElsewhere, complaint } = await openRanges();
  const said = page.locator('.sheet-grid-said');
  await rowNumber(6).click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Hide row 6' }).click();
  await cell('G5').click();
  await copyElsewhere('one\ntwo\nthree');
  await keys('Control+v');
  await expect.poll(() => said.textContent()).toContain('1 of the 3 rows written is hidden.');
  await said.getByRole('button', { name: 'Close' }).click();
  expect(await said.textContent()).toBe('');

  await cell('A2').click();
  await keys('Control+c');
  await cell('E2').click();
  await keys('Control+v');
  await expect.poll(() => said.textContent()).toContain('This replaced the formula in E2.');
  expect(await complaint()).toBe('');
  await cell('G9').click();
  await page.keyboard.type('7');
  await keys('Enter');
  await expect.poll(() => said.textContent()).toBe('');
  await cell('G9').click();
  await keys('Control+z', 'Control+z');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('a fill over hidden rows says so', async () => {
  const { page, cell, keys, rowNumber } = await openRanges();
  await rowNumber(6).click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Hide row 6' }).click();
  await cell('G5').click();
  await page.keyboard.type('4');
  await keys('Enter');
  await cell('G5').click();
  await cell('G8').click({ modifiers: ['Shift'] });
  await keys('Control+d');
  await expect
    .poll(() => page.locator('.sheet-grid-said').textContent())
    .toContain('1 of the 3 rows written is hidden.');
});
