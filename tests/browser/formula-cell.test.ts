import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a formula in the cell is helped along: words are offered, arguments explained, brackets closed', async () => {
  const { page, cell, field, keys, words, faults } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=TAPE.RO');
  const option = page.getByRole('option', { name: /TAPE\.ROUND/ });
  await option.waitFor();
  await expectAccessible(page, '.sheet-grid');
  await keys('Tab');
  expect(await field.inputValue()).toBe('=TAPE.ROUND()');
  await page
    .locator('.cell-editor')
    .getByText(/length in inches, -12000 to 12000/)
    .waitFor();
  await page.keyboard.type('C2, 4');
  await keys(')', 'Enter');
  await expect.poll(() => words('G2')).toBe('174.5');
  expect(faults).toEqual([]);
});

test('Escape sends the offered words away first, and Enter takes what was typed', async () => {
  const { page, cell, field, keys } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=SU');
  await page.getByRole('option').first().waitFor();
  await keys('Escape');
  expect(await page.getByRole('option').count()).toBe(0);
  expect(await field.inputValue()).toBe('=SU');
  await keys('Control+Space');
  await page.getByRole('option').first().waitFor();
  await keys('ArrowDown', 'Enter');
  expect(await field.inputValue()).toMatch(/^=SUM\(\)$/);
});

test('cells are picked by pressing and pulling, and each reference is tagged in the sheet with its own number and line', async () => {
  const { page, cell, field, keys, drag, words } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=');
  await cell('C2').click();
  expect(await field.inputValue()).toBe('=C2');
  await cell('C3').click();
  expect(await field.inputValue()).toBe('=C3');
  await page.keyboard.type('+SUM(');
  await drag(cell('C2'), cell('C3'));
  expect(await field.inputValue()).toBe('=C3+SUM(C2:C3');
  const tags = (place: string) => cell(place).locator('.cell-tag-number').allTextContents();
  await expect.poll(() => tags('C3')).toEqual(['1']);
  await expect.poll(() => tags('C2')).toEqual(['2']);
  expect(await cell('C3').locator('.cell-tag').count()).toBe(2);
  const lines = await page.locator('.tag-list li').allTextContents();
  expect(lines[0]).toMatch(/^1 C3 Length of S2 trunk: 14′ 6 ½″/);
  expect(lines[1]).toMatch(/^2 C2:C3/);
  await keys(')', 'Enter');
  await expect.poll(() => words('G2')).toBe('523.5');
  await expect.poll(() => page.locator('.cell-tag').count()).toBe(0);
});

test('cells are picked by walking to them, a block with Shift, and F8 holds rows and columns', async () => {
  const { page, cell, field, keys, words, here } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=');
  await keys('ArrowLeft', 'ArrowLeft');
  expect(await field.inputValue()).toBe('=E2');
  await page.keyboard.type('*2+SUM(');
  await keys('ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'Shift+ArrowDown');
  expect(await field.inputValue()).toBe('=E2*2+SUM(C2:C3');
  await keys('F8');
  expect(await field.inputValue()).toBe('=E2*2+SUM($C$2:$C$3');
  await keys('F8');
  expect(await field.inputValue()).toBe('=E2*2+SUM(C$2:C$3');
  await page.keyboard.type(')');
  await keys('Home', 'ArrowRight', 'ArrowRight');
  expect(await field.inputValue()).toBe('=E2*2+SUM(C$2:C$3)');
  await keys('Enter');
  await expect.poll(() => words('G2')).toMatch(/^449\.53/);
  expect(await here()).toBe('G3');
});

test('a cell that is walked to comes into view, and the formula stays where it is written', async () => {
  const { page, cell, field, keys, here } = await openRanges();
  await keys('Control+g');
  await page.keyboard.type('G60');
  await keys('Enter');
  await expect.poll(here).toBe('G60');
  await cell('G60').click();
  await page.keyboard.type('12');
  await keys('Enter', 'Control+Home');
  await cell('G2').click();
  await page.keyboard.type('=');
  for (let row = 2; row < 60; row += 1) await page.keyboard.press('ArrowDown');
  expect(await field.inputValue()).toBe('=G60');
  const isInView = await cell('G60').evaluate((one) => {
    const { top, bottom } = one.getBoundingClientRect();
    return top >= 0 && bottom <= window.innerHeight;
  });
  expect(isInView).toBe(true);
  await keys('Enter');
  await expect.poll(here).toBe('G3');
  await expect.poll(() => cell('G2').locator('.sheet-cell-words').textContent()).toBe('12');
});

test('Working takes cells that are pressed too, also of another sheet', async () => {
  const { page, cell, keys, sheet, words } = await openRanges();
  await cell('G2').click();
  const working = page.locator('.working');
  await working.getByRole('button', { name: 'Write a formula here' }).press('Enter');
  const editor = working.getByRole('textbox', { name: 'Formula' });
  await editor.waitFor();
  await cell('C2').click();
  expect(await editor.textContent()).toBe('C2');
  await expect.poll(() => cell('C2').locator('.cell-tag-number').textContent()).toBe('1');
  await page.keyboard.type('+');
  await keys('ArrowLeft');
  expect(await editor.textContent()).toBe('C2+F2');
  await keys('Backspace', 'Backspace');
  await sheet('Allowances').click();
  await cell('B1').click();
  expect(await editor.textContent()).toBe('C2+Allowances!B1');
  await keys('Enter');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await expect.poll(() => words('G2')).toBe('176.5');
});

test('with a finger the cells are picked as well', async () => {
  const { page, cell, field, words } = await openRanges({ context: { hasTouch: true } });
  await cell('G2').tap();
  await cell('G2').tap();
  await field.waitFor();
  await page.keyboard.type('=');
  await cell('C2').tap();
  expect(await field.inputValue()).toBe('=C2');
  await page.getByRole('button', { name: /Hold with/ }).tap();
  expect(await field.inputValue()).toBe('=$C$2');
  await page.keyboard.press('Enter');
  await expect.poll(() => words('G2')).toBe('174.5');
});
