import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('copied cells bring their formulas along, which then point to their new neighbours', async () => {
  const { page, cell, words, keys, selection, drag } = await openRanges();
  await drag(cell('A2'), cell('F2'));
  await keys('Control+c');
  expect(await selection()).toBe('copied');
  await cell('A5').click();
  await keys('Control+v');
  expect(await selection()).toBe('A5 to F5, 6 cells');
  expect(await words('A5')).toBe('S1 trunk');
  await expect.poll(() => words('E5')).toBe('50 5⁄16″');
  await cell('B5').click();
  await page.keyboard.type('8');
  await keys('Enter');
  await expect.poll(() => words('E5')).toBe('25 3⁄16″');
  expect(await words('E2')).toBe('50 5⁄16″');
});

test('a copied cell fills whatever is selected when it is pasted, over and over', async () => {
  const { cell, words, keys, drag } = await openRanges();
  await cell('C2').click();
  await keys('Control+c');
  await drag(cell('A5'), cell('C6'));
  await keys('Control+v');
  for (const place of ['A5', 'C5', 'B6', 'C6']) expect(await words(place)).toBe('14′ 6 1⁄2″');
});

test('cut cells are outlined until they are put in elsewhere, and whatever points to them follows', async () => {
  const { cell, words, keys, sheet, page } = await openRanges();
  const outlined = page.locator('[data-outline]');
  await cell('E2').click();
  await keys('Control+x');
  expect(await outlined.count()).toBe(1);
  expect(await words('E2')).toBe('50 5⁄16″');
  await keys('Escape');
  expect(await outlined.count()).toBe(0);
  await keys('Control+x');
  await cell('E7').click();
  await keys('Control+v');
  expect(await outlined.count()).toBe(0);
  expect(await words('E2')).toBe('');
  await expect.poll(() => words('E7')).toBe('50 5⁄16″');
  await sheet('Wrap').click();
  await page.getByRole('gridcell', { name: 'Twice the first girth, A1' }).waitFor();
  expect(await words('B1')).toBe('100 9⁄16″');
  await cell('B1').click();
  await page.getByRole('button', { name: /^Pieces!E7/ }).waitFor();
});

test('cells are copied from one sheet to another', async () => {
  const { cell, words, keys, sheet, page, drag } = await openRanges();
  await drag(cell('A2'), cell('B2'));
  await keys('Control+c');
  await sheet('Notes').click();
  await page.getByRole('gridcell', { name: /ladder/ }).waitFor();
  await cell('A4').click();
  await keys('Control+v');
  expect(await words('A4')).toBe('S1 trunk');
  expect(await words('B4')).toBe('16″');
});

test('other programs get what the cells show, tab by tab', async () => {
  const { cell, keys, drag, clipboard } = await openRanges();
  await drag(cell('A2'), cell('C3'));
  await keys('Control+c');
  expect(await clipboard()).toBe('S1 trunk\t16″\t14′ 6 ½″\nS2 trunk\t\t14′ 6 ½″');
});

test('text from another program is read cell by cell as if it were typed, and a later copy outside wins', async () => {
  const { cell, words, keys, copyElsewhere, selection } = await openRanges();
  await cell('C2').click();
  await keys('Control+c');
  await copyElsewhere('18\t10\' 4"\r\n20\t"11\' 2"""\r\n');
  await cell('B2').click();
  await keys('Control+v');
  expect(await selection()).toBe('B2 to C3, 4 cells');
  expect(await words('B2')).toBe('18″');
  expect(await words('C2')).toBe('10′ 4″');
  expect(await words('B3')).toBe('20″');
  expect(await words('C3')).toBe('11′ 2″');
});

test('a paste that givens refuse changes nothing and tells every refusal at once', async () => {
  const { cell, words, keys, copyElsewhere, complaint } = await openRanges();
  await copyElsewhere('61\tlong\n18\t12');
  await cell('B2').click();
  await keys('Control+v');
  expect(await complaint()).toMatch(
    /^Nothing was written\.\nB2: 61″ is outside .*\nC2: “long” cannot be read/,
  );
  expect(await words('B2')).toBe('16″');
  expect(await words('B3')).toBe('fill');
});

test('a copied cell that asks nothing answers the question of a given and does not take its place', async () => {
  const { page, cell, words, keys, complaint } = await openRanges();
  await cell('B6').click();
  await page.keyboard.type('70');
  await keys('Enter');
  await cell('B6').click();
  await keys('Control+c');
  await cell('B3').click();
  await keys('Control+v');
  expect(await complaint()).toContain('B3: 70″ is outside what this cell takes');
  expect(await words('B3')).toBe('fill');
});

test('Ctrl+Shift+V puts values in without their formulas, exact to the last digit', async () => {
  const { cell, words, keys, field } = await openRanges();
  await cell('E2').click();
  await keys('Control+c');
  await cell('E6').click();
  await keys('Control+Shift+V');
  expect(await words('E6')).toMatch(/^50\.2655/);
  await keys('Enter');
  expect(await field.inputValue()).toBe('50.26548245743664″');
});

test('after rows have moved, copied cells are not pasted from where others stand now', async () => {
  const { cell, words, keys, rowNumber, complaint } = await openRanges();
  await cell('A2').click();
  await keys('Control+c');
  await rowNumber(1).click();
  await keys('Control+Shift+Equal');
  await cell('A6').click();
  await keys('Control+v');
  expect(await complaint()).toMatch(/^Rows, columns or sheets have changed/);
  expect(await words('A6')).toBe('');
});

test('in an open field the clipboard is the field’s own', async () => {
  const { page, words, keys, copyElsewhere, field } = await openRanges();
  await copyElsewhere('2');
  await page.keyboard.type('1');
  await keys('Control+v');
  expect(await field.inputValue()).toBe('12');
  await keys('Enter');
  expect(await words('B2')).toBe('12″');
});
