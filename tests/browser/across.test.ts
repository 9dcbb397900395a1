import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a heading goes across its empty neighbors from the form, is painted over them and says so', async () => {
  const { page, cell, words, keys, faults } = await openRanges();
  await cell('G1').click();
  await page.keyboard.type('Branches on the north side of the house');
  await keys('Enter');
  await cell('G1').click();
  const form = page.locator('.cell-dress');
  await form.locator('summary').click();
  await form.getByLabel('Role').selectOption({ label: 'heading' });
  await form.getByLabel('Goes across').selectOption({ label: '3 columns, G to I' });
  await expect.poll(() => cell('I1').locator('.sheet-cell-across').count()).toBe(1);
  expect(await cell('J1').locator('.sheet-cell-across').count()).toBe(0);
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('title')).toMatch(
    /the columns under Pieces!G1/,
  );
  const name = (place: string) => cell(place).locator('.sheet-cell-said').textContent();
  expect(await name('G1')).toBe('Branches on the north side of the house, heading, across to column I, G1');
  expect(await name('H1')).toBe('empty, Branches on the north side of the house of G1 goes across, H1');
  await form.getByLabel('Stands').selectOption({ label: 'middle' });
  await expect
    .poll(() =>
      cell('H1')
        .locator('.sheet-cell-across')
        .evaluate((one) => getComputedStyle(one).textAlign),
    )
    .toBe('center');
  // One piece of text, three windows onto it: each begins where the heading does.
  const lefts = await Promise.all(
    ['G1', 'H1', 'I1'].map((place) =>
      cell(place)
        .locator('.sheet-cell-across')
        .evaluate((one) => Math.round(one.getBoundingClientRect().left)),
    ),
  );
  expect(new Set(lefts).size).toBe(1);
  await expectAccessible(page, '.sheet-grid');

  await cell('H1').click();
  await page.keyboard.type('x');
  await keys('Enter');
  expect(await words('H1')).toBe('x');
  await expect.poll(() => cell('I1').locator('.sheet-cell-across').count()).toBe(0);
  await keys('Control+z');
  await expect.poll(() => cell('I1').locator('.sheet-cell-across').count()).toBe(1);
  expect(faults).toEqual([]);
});

test('selected cells of one row become one heading from the menu, and it stands in its own column again', async () => {
  const { page, cell, keys, columnLetter } = await openRanges();
  await cell('A5').click();
  await page.keyboard.type('Returns');
  await keys('Enter');
  await cell('A5').click();
  await keys('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+F10');
  await page.getByRole('menuitem', { name: 'Let A5 go across to C5' }).press('Enter');
  await expect.poll(() => cell('C5').locator('.sheet-cell-across').count()).toBe(1);
  await columnLetter('B').click();
  await keys('Control+Shift+Equal');
  await expect.poll(() => cell('D5').locator('.sheet-cell-across').count()).toBe(1);
  await cell('A5').click();
  await keys('Shift+F10');
  await page.getByRole('menuitem', { name: 'Let A5 stand in its own column' }).press('Enter');
  await expect.poll(() => page.locator('.sheet-cell-across').count()).toBe(0);
});
