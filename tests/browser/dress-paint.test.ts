import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { expectAccessible } from './support/axe.ts';
import type { WindowOptions } from './support/window.ts';

async function openForm(options: WindowOptions = {}) {
  const grid = await openGrid(options);
  const form = grid.page.locator('.cell-dress');
  await form.locator('summary').click();
  const height = async (row: number) =>
    (await grid.page.locator(`[row-id="${row - 1}"] [col-id="row"]`).boundingBox())?.height ?? 0;
  return { ...grid, form, height };
}

test('a row grows for words that go on below, and shrinks with undo', async () => {
  const { page, form, cell, keys, height } = await openForm();
  await cell('G2').click();
  await page.keyboard.type('The branch leaves the trunk under the stair, so leave the last strip long.');
  await keys('Enter');
  await cell('G2').click();
  const before = await height(2);
  await form.getByRole('checkbox', { name: 'long words go on below' }).click();
  await expect.poll(() => height(2)).toBeGreaterThan(before + 40);
  expect(await height(3)).toBe(before);
  const box = await cell('G2').boundingBox();
  const words = await cell('G2').locator('.sheet-cell-words').boundingBox();
  expect((words?.y ?? 0) + (words?.height ?? 0)).toBeLessThanOrEqual((box?.y ?? 0) + (box?.height ?? 0) + 1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => height(2)).toBe(before);
});

test('shade, place and note of a cell are seen, and the note is in its name', async () => {
  const { page, form, cell } = await openForm();
  await cell('A2').click();
  await cell('A3').click({ modifiers: ['Shift'] });
  await form.getByRole('radio', { name: 'sky' }).click();
  await form.getByLabel('Stands').selectOption({ label: 'right' });
  await form.getByLabel('Note').fill('Runs over the hall.');
  await form.getByLabel('Role').focus();
  await cell('B2').click();
  const looks = await cell('A3').evaluate((element) => {
    const words = element.querySelector('.sheet-cell-words');
    return [getComputedStyle(element).backgroundColor, words && getComputedStyle(words).textAlign];
  });
  expect(looks).toEqual(['rgb(227, 238, 246)', 'right']);
  expect(await cell('A3').locator('.cell-note-sign').count()).toBe(1);
  expect(await cell('A3').locator('.sheet-cell').getAttribute('title')).toContain('Runs over the hall.');
  expect(await cell('A3').textContent()).toContain('note: Runs over the hall.');
  await expectAccessible(page, '.sheet-grid');
});

test('a heading runs on over empty neighbors, and stops where something stands', async () => {
  const { page, form, cell, keys } = await openForm();
  await cell('A5').click();
  await page.keyboard.type('Everything that is left of the second floor');
  await keys('Enter');
  await cell('A5').click();
  await form.getByLabel('Role').selectOption({ label: 'heading' });
  const head = await cell('A5').locator('.sheet-cell').boundingBox();
  const part = await cell('B5').locator('.sheet-cell-run-on').boundingBox();
  expect(Math.abs((head?.x ?? 0) - (part?.x ?? 99))).toBeLessThan(1.5);
  expect(Math.abs((head?.y ?? 0) - (part?.y ?? 99))).toBeLessThan(3);
  await cell('C5').click();
  await page.keyboard.type('here');
  await keys('Enter');
  expect(await cell('B5').locator('.sheet-cell-run-on').count()).toBe(1);
  expect(await cell('D5').locator('.sheet-cell-run-on').count()).toBe(0);
});

test('a heading tells the unit of its column where the figures do not', async () => {
  const { page, form, cell, keys } = await openForm();
  for (const place of ['G2', 'G3']) {
    await cell(place).click();
    await page.keyboard.type('8');
    await keys('Enter');
  }
  await cell('G1').click();
  await page.keyboard.type('Label');
  await keys('Enter');
  await cell('G1').click();
  await form.getByLabel('Role').selectOption({ label: 'heading' });
  await cell('G2').click();
  await cell('G3').click({ modifiers: ['Shift'] });
  await form.getByLabel('Measures').selectOption({ label: 'R, thermal resistance in h·ft²·°F/Btu' });
  await expect.poll(() => cell('G1').locator('.sheet-heading-unit').textContent()).toBe('R');
  await cell('G3').click();
  await form.getByLabel('Measures').selectOption({ label: 'lb, weight in pounds' });
  await expect.poll(() => cell('G1').locator('.sheet-heading-unit').count()).toBe(0);
});
