import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('what was copied, how far it was scrolled and what is selected outlive a look at a page', async () => {
  const { page, cell, keys, here, words, selectedCount, sheet } = await openRanges();
  await cell('A2').click();
  await keys('Shift+ArrowDown', 'Control+c');
  const link = page.getByRole('button', { name: 'Functions' });
  await link.click();
  await page.getByRole('heading', { level: 1, name: 'Functions' }).waitFor();
  await expectAccessible(page, 'main');
  // Out of sight is out of reach: neither the keys nor a screen reader come to it.
  expect(await page.getByRole('gridcell').count()).toBe(0);
  expect(await page.locator('.sheet-grid').evaluate((grid) => (grid as HTMLElement).inert)).toBe(true);
  await sheet('Pieces').click();
  expect(await here()).toBe('A2');
  expect(await selectedCount()).toBe(2);
  await cell('A5').click();
  await keys('Control+v');
  expect(await words('A6')).toBe('S2 trunk');
});

test('each sheet comes back scrolled and selected as it was left', async () => {
  const { page, cell, keys, sheet, selection } = await openRanges();
  await cell('A2').click();
  for (let press = 0; press < 60; press += 1) await page.keyboard.press('ArrowDown');
  await keys('Shift+ArrowRight');
  await cell('B60').hover();
  await page.mouse.wheel(0, -250);
  const scrolled = () => page.locator('.ag-grid-viewport').evaluate((rows) => rows.scrollTop);
  await expect.poll(scrolled).toBeGreaterThan(500);
  const before = await scrolled();
  await sheet('Notes').click();
  await page.getByRole('heading', { level: 1, name: 'Notes' }).waitFor();
  await sheet('Pieces').click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await expect.poll(scrolled).toBe(before);
  expect(await selection()).toBe('A62 to B62, 2 cells');
  await page.getByRole('button', { name: 'Functions' }).click();
  await sheet('Pieces').click();
  await expect.poll(scrolled).toBe(before);
});
