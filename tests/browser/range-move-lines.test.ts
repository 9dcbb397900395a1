import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('whole rows move by key; formulas go on reading what they read, the selection goes along, and undo is named', async () => {
  const { page, words, keys, rowNumber, selection, cell } = await openRanges();
  await rowNumber(2).click();
  await keys('Alt+ArrowDown');
  expect(await words('A3')).toBe('S1 trunk');
  expect(await words('A2')).toBe('S2 trunk');
  expect(await selection()).toBe('row 3');
  await expect.poll(() => words('E3')).toBe('50 5⁄16″');
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('title')).toMatch(/moving row 2/);
  await keys('Alt+ArrowUp', 'Alt+ArrowUp');
  expect(await words('A1')).toBe('S1 trunk');
  // Above the first row there is nowhere to go.
  await keys('Alt+ArrowUp');
  expect(await words('A1')).toBe('S1 trunk');
  await keys('Control+z', 'Control+z', 'Control+z');
  expect(await words('A2')).toBe('S1 trunk');
  await cell('E2').click();
  await page.locator('.working').getByText('PI()*B2').waitFor();
});

test('the keys to move lines mean nothing for single cells, and rows do not go sideways', async () => {
  const { page, keys, rowNumber, words, here } = await openRanges();
  await keys('Alt+ArrowDown');
  await rowNumber(2).click();
  await keys('Alt+ArrowRight');
  expect(await words('A2')).toBe('S1 trunk');
  expect(await here()).toBe('A2');
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
});

test('a selected row is pulled by its number to where a line shows, and Escape gives it up', async () => {
  const { page, words, rowNumber, selection } = await openRanges();
  const middle = async (row: number) => {
    const box = await rowNumber(row).boundingBox();
    if (!box) throw new Error('no such row number');
    return [box.x + box.width / 2, box.y + box.height / 2] as const;
  };
  await rowNumber(2).click();
  await page.mouse.move(...(await middle(2)));
  await page.mouse.down();
  await page.mouse.move(...(await middle(3)));
  await page.mouse.move(...(await middle(5)));
  await expect.poll(() => page.locator('.ag-cell[data-drop="bottom"]').count()).toBeGreaterThan(2);
  await expectAccessible(page, '.sheet-grid');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await page.locator('[data-drop]').count()).toBe(0);
  expect(await words('A2')).toBe('S1 trunk');

  await page.mouse.move(...(await middle(2)));
  await page.mouse.down();
  await page.mouse.move(...(await middle(4)));
  await page.mouse.move(...(await middle(5)));
  await page.mouse.up();
  expect(await words('A5')).toBe('S1 trunk');
  expect(await words('A2')).toBe('S2 trunk');
  expect(await selection()).toBe('row 5');
  expect(await page.locator('[data-drop]').count()).toBe(0);
});

test('columns are pulled by their letters and moved from the menu, past hidden ones', async () => {
  const { page, words, columnLetter, drag, selection } = await openRanges();
  await columnLetter('B').click();
  await drag(columnLetter('B'), columnLetter('D'));
  expect(await words('D1')).toBe('Diameter');
  expect(await selection()).toBe('column D');
  await columnLetter('C').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Hide column C' }).click();
  await columnLetter('D').click({ button: 'right' });
  await page.getByRole('menuitem', { name: 'Move column D to the left' }).click();
  expect(await words('B1')).toBe('Diameter');
  await expect.poll(() => words('E2')).toBe('50 5⁄16″');
});

test('a selected line that is only pressed is selected alone, and with Shift the selection reaches to it', async () => {
  const { rowNumber, selection, words } = await openRanges();
  await rowNumber(2).click();
  await rowNumber(4).click({ modifiers: ['Shift'] });
  expect(await selection()).toBe('rows 2 to 4');
  await rowNumber(3).click();
  expect(await selection()).toBe('row 3');
  await rowNumber(3).click({ modifiers: ['Shift'] });
  expect(await words('A2')).toBe('S1 trunk');
});

test('a finger pulls a selected row too', async () => {
  const { page, words, rowNumber } = await openRanges({ context: { hasTouch: true } });
  await rowNumber(2).tap();
  await expect.poll(() => page.locator('[col-id="row"][data-whole-line]').count()).toBe(1);
  const box = await rowNumber(2).boundingBox();
  const target = await rowNumber(4).boundingBox();
  if (!box || !target) throw new Error('no such row number');
  const client = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', y: number) =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: box.x + 10, y }],
    });
  await touch('touchStart', box.y + 10);
  await touch('touchMove', box.y + 40);
  await touch('touchMove', target.y + 12);
  await touch('touchEnd', target.y + 12);
  await expect.poll(() => words('A4')).toBe('S1 trunk');
});
