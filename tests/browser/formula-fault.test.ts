import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a ring of cells is shown whole in Working, each cell a link, and so is the cell where trouble began', async () => {
  const { page, cell, keys, here } = await openRanges();
  const enter = async (place: string, typed: string) => {
    await cell(place).click();
    await page.keyboard.type(typed);
    await keys('Enter');
  };
  await enter('G2', '=G3+1');
  await enter('G3', '=Wrap!B5');
  await page.getByRole('button', { name: /^Wrap/ }).click();
  await enter('B5', '=Pieces!G2');
  await enter('B6', '=B5*2');
  await cell('B6').click();
  const working = page.locator('.working');
  await working.getByRole('button', { name: /Go to (Wrap!B5|Pieces!G[23]), where it began/ }).waitFor();
  const ring = working.getByRole('list', { name: 'The cells of the ring' });
  expect((await ring.getByRole('button').allTextContents()).toSorted()).toEqual([
    'Pieces!G2',
    'Pieces!G3',
    'Wrap!B5',
  ]);
  await expectAccessible(page, '.working');
  await ring.getByRole('button', { name: 'Pieces!G3' }).click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await here()).toBe('G3');
  await enter('G3', '=4');
  await expect.poll(() => ring.count()).toBe(0);
});
