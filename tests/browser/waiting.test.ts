import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a refused entry lets the person go, waits marked in its cell, and is listed until it is put right', async () => {
  const { page, cell, field, keys, words, here, sheet, complaint, faults } = await openRanges();
  await cell('B2').click();
  await page.keyboard.type('99x');
  await keys('Enter');
  await page.locator('.cell-editor-refusal').getByText('99x').waitFor();
  expect(await here()).toBe('B2');
  await keys('Enter');
  expect(await here()).toBe('B3');
  expect(await field.count()).toBe(0);
  expect(await complaint()).toMatch(/^B2 waits: “99x” was not taken\. .* Press Enter on the cell/);
  expect(await words('B2')).toBe('16″✎ 99x');
  expect(await cell('B2').locator('.sheet-cell-said').textContent()).toMatch(
    /^“99x” was typed here and is not in the workbook\./,
  );
  // The workbook has not changed.
  expect(await words('E2')).toBe('50 5⁄16″');
  await sheet('Pieces').locator('..').getByText('1 not taken').waitFor();
  await expectAccessible(page);

  await page.getByRole('button', { name: 'Needs attention' }).click();
  const attention = page.getByRole('region', { name: 'Needs attention' });
  await attention.getByRole('button', { name: /not taken.*B2.*“99x” was typed here/ }).click();
  expect(await here()).toBe('B2');
  await keys('Enter');
  expect(await field.inputValue()).toBe('99x');
  await keys('Backspace', 'Backspace', 'Backspace');
  await page.keyboard.type('18');
  await keys('Enter');
  expect(await words('B2')).toBe('18″');
  expect(await page.locator('.sheet-cell-waits').count()).toBe(0);
  expect(faults).toEqual([]);
});

test('a press elsewhere leaves a refused entry waiting too; Delete on the cell gives it up', async () => {
  const { page, cell, keys, words, here, complaint } = await openRanges();
  await cell('B2').click();
  await page.keyboard.type('much');
  await cell('C3').click();
  expect(await here()).toBe('C3');
  expect(await complaint()).toContain('B2 waits');
  expect(await words('B2')).toBe('16″✎ much');
  await cell('B2').click();
  await page.locator('.working').getByRole('button', { name: 'Give it up' }).click();
  await expect.poll(() => words('B2')).toBe('16″');
  await cell('B3').click();
  await page.keyboard.type('much');
  await keys('Enter', 'Enter', 'ArrowUp');
  await expect.poll(() => words('B3')).toContain('✎ much');
  await keys('Delete');
  await expect.poll(() => words('B3')).not.toContain('✎');
});

test('an entry that waits goes along with its row, and stays with its workbook', async () => {
  const { page, cell, keys, words, rowNumber } = await openRanges();
  await cell('B2').click();
  await page.keyboard.type('much');
  await keys('Enter', 'Enter');
  await rowNumber(2).click();
  await keys('Control+Shift+Equal');
  await expect.poll(() => words('B3')).toContain('✎ much');
  await keys('Control+z');
  await expect.poll(() => words('B2')).toContain('✎ much');
  await page.locator('.shelf-list button').first().click();
  await expect.poll(() => page.locator('.sheet-cell-waits').count()).toBe(0);
  await page.getByRole('button', { name: /^Foxglove Close, house 3/ }).click();
  await expect.poll(() => words('B2')).toContain('✎ much');
});
