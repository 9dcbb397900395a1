import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('cells are selected by drag, by Shift and a press, and by Shift and the arrows; the person stays where they began', async () => {
  const { cell, here, keys, selection, selectedCount, drag } = await openRanges();
  await drag(cell('B2'), cell('D3'));
  expect(await selection()).toBe('B2 to D3, 6 cells');
  expect(await selectedCount()).toBe(6);
  expect(await here()).toBe('B2');
  await cell('C4').click({ modifiers: ['Shift'] });
  expect(await selection()).toBe('B2 to C4, 6 cells');
  await keys('Shift+ArrowLeft', 'Shift+ArrowLeft', 'Shift+ArrowUp', 'Shift+ArrowUp', 'Shift+ArrowUp');
  expect(await selection()).toBe('A1 to B2, 4 cells');
  expect(await here()).toBe('B2');
  await keys('ArrowDown');
  expect(await selection()).toBe('');
  expect(await here()).toBe('B3');
  expect(await selectedCount()).toBe(1);
});

test('Ctrl and Shift lead to the edge of what is filled, and to the first and the last cell', async () => {
  const { cell, here, keys, selection } = await openRanges();
  await keys('Control+Shift+ArrowRight');
  expect(await selection()).toBe('B2 to F2, 5 cells');
  await keys('Control+Shift+ArrowDown');
  expect(await selection()).toBe('B2 to F3, 10 cells');
  await keys('Control+Shift+Home');
  expect(await selection()).toBe('A1 to B2, 4 cells');
  await keys('Control+Shift+End');
  expect(await selection()).toBe('B2 to F3, 10 cells');
  await cell('H1').or(cell('G1')).first().click();
  await keys('Control+ArrowLeft');
  expect(await here()).toBe('F1');
});

test('a row is selected whole by its number, a column by its letter, more of them by drag or with Shift, everything by Ctrl+A', async () => {
  const { cell, here, keys, selection, drag, rowNumber, columnLetter } = await openRanges();
  await rowNumber(2).click();
  expect(await selection()).toBe('row 2');
  expect(await here()).toBe('A2');
  await rowNumber(3).click({ modifiers: ['Shift'] });
  expect(await selection()).toBe('rows 2 to 3');
  await drag(columnLetter('C'), columnLetter('E'));
  expect(await selection()).toBe('columns C to E');
  await keys('Shift+ArrowLeft');
  expect(await selection()).toBe('columns C to D');
  await cell('B3').click();
  await keys('Shift+Space');
  expect(await selection()).toBe('row 3');
  await keys('Shift+ArrowUp');
  expect(await selection()).toBe('rows 2 to 3');
  await cell('B3').click();
  await keys('Control+Space');
  expect(await selection()).toBe('column B');
  await keys('Control+a');
  expect(await selection()).toBe('A1 to F3, 18 cells');
});

test('another sheet has a selection of its own, and after a link is followed a single cell is selected', async () => {
  const { page, cell, here, selection, selectedCount, sheet, drag } = await openRanges();
  await drag(cell('E2'), cell('F3'));
  await sheet('Wrap').click();
  await page
    .getByRole('gridcell', { name: /Twice the first girth/ })
    .first()
    .waitFor();
  expect(await selectedCount()).toBe(1);
  await sheet('Pieces').click();
  await page.getByRole('gridcell', { name: 'Piece, heading, A1', exact: true }).waitFor();
  expect(await selection()).toBe('E2 to F3, 4 cells');
  expect(await here()).toBe('E2');
  await page
    .getByRole('region', { name: 'Working' })
    .getByRole('button', { name: /^Pieces!B2/ })
    .click();
  expect(await here()).toBe('B2');
  expect(await selectedCount()).toBe(1);
});

test('a press beside the last column selects nothing', async () => {
  const { page, cell, here, selection } = await openRanges();
  const [row, table] = [
    await cell('A2').boundingBox(),
    await page.locator('.sheet-grid-table').boundingBox(),
  ];
  const last = await page.locator('[row-id="1"] [col-id]').last().boundingBox();
  if (!row || !table || !last) throw new Error('The sheet is not on the page.');
  const beside = (last.x + last.width + table.x + table.width) / 2;
  await page.mouse.click(beside, row.y + 10);
  expect(await selection()).toBe('');
  expect(await here()).toBe('B2');
});

test('Delete empties every selected cell and is taken back at once', async () => {
  const { page, cell, words, keys, drag } = await openRanges();
  await drag(cell('B2'), cell('C3'));
  await keys('Delete');
  expect(await words('B2')).toBe('fill');
  expect(await words('C3')).toBe('');
  expect(await page.getByRole('button', { name: /^Undo/ }).textContent()).toContain('emptying 3 cells');
  await keys('Control+z');
  expect(await words('B2')).toBe('16″');
  expect(await words('C3')).toBe('14′ 6 1⁄2″');
});

test('past the edge of the sheet a drag goes on, and the sheet comes along', async () => {
  const { page, cell, selection } = await openRanges({ size: { width: 1024, height: 420 } });
  const start = await cell('B2').boundingBox();
  if (!start) throw new Error('B2 is not on the page.');
  await page.mouse.move(start.x + 5, start.y + 5);
  await page.mouse.down();
  await page.mouse.move(start.x + 5, 415);
  await expect.poll(selection, { timeout: 10_000 }).toMatch(/^B2 to B(1[5-9]|[2-9]\d), /);
  await page.mouse.up();
  const done = await selection();
  await page.mouse.move(start.x, start.y);
  expect(await selection()).toBe(done);
  expect((await cell('B2').boundingBox())?.y).toBeLessThan(start.y - 100);
});

test('the working tells what several selected lengths come to, and adds nothing that does not go together', async () => {
  const { page, cell, drag, keys } = await openRanges();
  const figures = page.getByRole('region', { name: 'The selected cells' });
  expect(await figures.count()).toBe(0);
  await drag(cell('C2'), cell('C3'));
  const text = async () => (await figures.allInnerTexts()).join().replaceAll(/\s+/g, ' ').trim();
  expect(await text()).toBe('Selected · C2 to C3, 2 cells Filled 2 Sum 29′ 1″ Least 14′ 6 ½″ Most 14′ 6 ½″');
  await keys('Control+Shift+End');
  expect(await text()).toContain('Selected · C2 to F3, 8 cells Filled 8');
  await keys('ArrowLeft');
  expect(await figures.count()).toBe(0);
});

test('a sheet with several cells selected keeps the rules of accessibility, and says that several may be', async () => {
  const { page, cell, drag, faults, keys } = await openRanges();
  await drag(cell('B2'), cell('D3'));
  await expectAccessible(page);
  expect(await page.getByRole('grid').getAttribute('aria-multiselectable')).toBe('true');
  await keys('Shift+F10');
  await page.getByRole('menu').waitFor();
  await expectAccessible(page);
  expect(faults).toEqual([]);
});
