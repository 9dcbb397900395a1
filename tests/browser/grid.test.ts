import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { expectAccessible } from './support/axe.ts';

test('a length is typed as on a tape, read back while typing, and everything that hangs on it is figured anew', async () => {
  const { page, cell, words, here, keys, field } = await openGrid();
  await page.keyboard.type("1' 8 1/2");
  await expect
    .poll(() => page.locator('.cell-editor').getByRole('status').textContent())
    .toBe('reads as 1′ 8 ½″');
  await keys('Enter');
  expect(await field.count()).toBe(0);
  expect(await here()).toBe('B3');
  expect(await words('B2')).toBe('20 1⁄2″');
  await expect.poll(() => words('E2')).toBe('64 7⁄16″');
  await cell('B2').dblclick();
  expect(await field.inputValue()).toBe("1' 8 1/2");
});

test('a refused entry stays in the field with the reason, and the cell stays as it was', async () => {
  const { page, words, here, keys, field } = await openGrid();
  await page.keyboard.type('61');
  await keys('Enter');
  expect(await page.getByRole('alert').filter({ hasText: '61″ is outside' }).textContent()).toBe(
    '61″ is outside what this cell takes: 2″ to 60″, because the rolls take no more. Check the number and its unit. Put it right, or press Enter once more to go on: it then waits in the cell, marked. Escape gives it up.',
  );
  expect(await field.inputValue()).toBe('61');
  expect(await words('B2')).toBe('16″');
  await keys('Backspace', 'Enter');
  expect(await words('B2')).toBe('6″');
  expect(await here()).toBe('B3');
});

test('a refused entry waits while the person looks at another sheet', async () => {
  const { page, keys, field, sheet, cell } = await openGrid();
  await page.keyboard.type('wide');
  await keys('Enter');
  await sheet('Wrap').click();
  await page
    .getByRole('gridcell', { name: /Twice the first girth/ })
    .first()
    .waitFor();
  expect(await field.count()).toBe(0);
  await sheet('Pieces').click();
  await cell('B2').click();
  await keys('Enter');
  expect(await field.inputValue()).toBe('wide');
});

test('another cell is chosen at once: what was typed is taken, or waits where it was typed', async () => {
  const { page, cell, words, here, field } = await openGrid();
  await page.keyboard.type('18');
  await cell('C3').click();
  expect(await words('B2')).toBe('18″');
  expect(await here()).toBe('C3');
  await page.keyboard.type('long');
  await cell('A1').click();
  expect(await here()).toBe('A1');
  expect(await field.count()).toBe(0);
  expect(await words('C3')).toContain('✎ long');
});

test('keys walk the sheet: arrows, Tab, Home and End, and from its ends Tab walks out', async () => {
  const { page, here, keys } = await openGrid();
  const walk: readonly (readonly [string, string])[] = [
    ['ArrowDown', 'B3'],
    ['ArrowRight', 'C3'],
    ['ArrowUp', 'C2'],
    ['ArrowLeft', 'B2'],
    ['Tab', 'C2'],
    ['Shift+Tab', 'B2'],
    ['End', 'F2'],
    ['Tab', 'A3'],
    ['Shift+Tab', 'F2'],
    ['Home', 'A2'],
    ['ArrowLeft', 'A2'],
    ['Control+End', 'F3'],
    ['ArrowDown', 'F4'],
    ['ArrowRight', 'G4'],
    ['PageUp', 'G1'],
    ['Control+Home', 'A1'],
  ];
  for (const [key, place] of walk) {
    await keys(key);
    expect(`${key} ${await here()}`).toBe(`${key} ${place}`);
  }
  const isInGrid = () => page.evaluate(() => document.activeElement?.closest('[role="grid"]') !== null);
  expect(await isInGrid()).toBe(true);
  await keys('Shift+Tab');
  expect(await isInGrid()).toBe(false);
  await keys('Tab', 'ArrowDown', 'Escape', 'Tab');
  expect(await isInGrid()).toBe(false);
  expect(await here()).toBe('A2');
});

test('a sheet grows as one goes down it', async () => {
  const { page, here, keys, words } = await openGrid();
  await keys(...Array.from({ length: 30 }, () => 'ArrowDown'));
  expect(await here()).toBe('B32');
  await page.keyboard.type('spare');
  await keys('Enter');
  expect(await words('B32')).toBe('spare');
});

test('Escape gives an entry up, Delete empties a cell, and Ctrl+Z and Ctrl+Y take back and do again', async () => {
  const { page, words, here, keys, field, sheet } = await openGrid();
  await page.keyboard.type('40');
  await keys('Escape');
  expect(await field.count()).toBe(0);
  expect(await words('B2')).toBe('16″');
  await keys('Delete');
  expect(await words('B2')).toBe('fill');
  expect(await sheet('Pieces').locator('..').textContent()).toMatch(/2 to fill/);
  await keys('Control+z');
  expect(await words('B2')).toBe('16″');
  await keys('Control+y');
  expect(await words('B2')).toBe('fill');
  await keys('Control+z', 'Control+Shift+z');
  expect(await words('B2')).toBe('fill');
  expect(await here()).toBe('B2');
});

test('Enter and F2 open what stands in the cell, and left as it was it changes nothing', async () => {
  const { page, cell, words, keys, field } = await openGrid();
  await cell('C2').click();
  await keys('F2');
  expect(await field.inputValue()).toBe('14′ 6 1⁄2″'.replace('1⁄2', '½'));
  await keys('Enter');
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
  await cell('E2').click();
  await keys('Enter');
  expect(await field.inputValue()).toBe('=PI()*B2');
  await page.keyboard.type('*2');
  await keys('Tab');
  await expect.poll(() => words('E2')).toBe('100 9⁄16″');
});

test('the choices of a given are offered, walked with the arrows and chosen by key or by hand', async () => {
  const { page, cell, words, here, keys, field } = await openGrid();
  await cell('D2').click();
  await keys('Enter');
  const options = page.getByRole('option');
  expect(await options.allInnerTexts()).toEqual(['R-6 wrap', 'R-8 wrap', 'no wrap']);
  await keys('ArrowDown');
  const active = await field.getAttribute('aria-activedescendant');
  expect(await page.locator(`[id="${active}"]`).textContent()).toBe('R-6 wrap');
  await keys('Enter');
  expect(await words('D2')).toBe('R-6 wrap');
  expect(await here()).toBe('D3');
  await page.keyboard.type('no');
  expect(await options.allInnerTexts()).toEqual(['no wrap']);
  await options.first().click();
  expect(await words('D3')).toBe('no wrap');
  await page.keyboard.type('R-9');
  await keys('Enter');
  expect(await page.locator('.cell-editor').getByRole('alert').textContent()).toContain(
    '“R-9” is not one of the choices here.',
  );
});

test('a link in the working leads to its cell, on this sheet and on another, and the focus goes along', async () => {
  const { page, cell, here } = await openGrid();
  const working = page.getByRole('region', { name: 'Working' });
  const focusedName = () =>
    page.evaluate(() => document.activeElement?.querySelector('.sheet-cell-said')?.textContent);
  await cell('E2').click();
  await expect.poll(() => cell('B2').getAttribute('data-marked')).toBe('');
  await working.getByRole('button', { name: /^Pieces!B2/ }).click();
  expect(await here()).toBe('B2');
  expect(await focusedName()).toBe('16 inches, Diameter of S1 trunk, given, B2');
  await cell('E2').click();
  await working.getByRole('button', { name: /^Wrap!B1/ }).click();
  await expect.poll(focusedName).toBe('100 and 9/16 inches, Twice the first girth, figured, B1');
});

test('a cell tells a screen reader its value in words, what it is called, what it is for and where it stands', async () => {
  const { page, cell } = await openGrid();
  const says = async (place: string, name: string) =>
    expect(
      await cell(place)
        .and(page.getByRole('gridcell', { name, exact: true }))
        .count(),
      name,
    ).toBe(1);
  await says('A1', 'Piece, heading, A1');
  await says('B2', '16 inches, Diameter of S1 trunk, given, B2');
  await says('C2', '14 feet 6 and 1/2 inches, Length of S1 trunk, given, C2');
  await says('B3', 'to fill: How wide across?, Diameter of S2 trunk, given, B3');
  await says('E2', '50 and 5/16 inches, Girth of S1 trunk, figured, E2');
  await says('F2', 'holds, Fits of S1 trunk, check, F2');
  await says('F3', 'look: small, Fits of S2 trunk, check, F3');
  await says('A9', 'empty, A9');
});

test('the grid, an open editor, its choices and a refusal keep the rules of accessibility', async () => {
  const { page, cell, keys, faults } = await openGrid();
  await expectAccessible(page);
  await cell('D2').click();
  await keys('Enter', 'ArrowDown');
  await expectAccessible(page);
  await keys('Escape');
  await page.keyboard.type('x');
  await keys('Enter');
  await expectAccessible(page);
  expect(faults).toEqual([]);
});

test('on a tablet a second touch opens a cell', async () => {
  const { page, cell, field } = await openGrid({
    context: { hasTouch: true },
    size: { width: 1024, height: 768 },
  });
  await cell('D3').tap();
  expect(await field.count()).toBe(0);
  await cell('D3').tap();
  await page.getByRole('option', { name: 'R-6 wrap' }).tap();
  expect(await cell('D3').textContent()).toContain('R-6 wrap');
});
