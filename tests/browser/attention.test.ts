import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('what wants attention is listed across sheets, filtered, and each entry leads to its cell', async () => {
  const { page, cell, keys, here, sheet, faults } = await openRanges();
  await cell('G2').click();
  await page.keyboard.type('=1/0');
  await keys('Enter');
  await sheet('Pieces').locator('..').getByRole('button', { name: '1 stop' }).click();
  const list = page.getByRole('region', { name: 'Needs attention' });
  await list.getByText('3 cells want attention').waitFor();
  await expectAccessible(page);
  expect((await list.locator('.attention-kind').allTextContents()).map((kind) => kind.trim())).toEqual([
    '✕ stop',
    '… to fill',
    '! look',
  ]);
  await list.getByRole('checkbox', { name: /Stops/ }).uncheck();
  await list.getByRole('checkbox', { name: /Looks/ }).uncheck();
  await list.getByText('1 cell wants attention').waitFor();
  await list.getByRole('combobox').selectOption('Wrap');
  await list.getByText('Nothing here wants attention.').waitFor();
  await list.getByRole('combobox').selectOption('all of them');
  await list.getByRole('button', { name: /Diameter of S2 trunk How wide across/ }).click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await expect.poll(here).toBe('B3');
  expect(faults).toEqual([]);
});
