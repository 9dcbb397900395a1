import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a name is made of the selection, used, renamed with its formulas, and taken away with what would break', async () => {
  const { page, cell, keys, words, faults } = await openRanges();
  await cell('C2').click();
  await keys('Shift+ArrowDown');
  await page.getByRole('button', { name: 'Names' }).click();
  const names = page.getByRole('region', { name: 'Names' });
  expect(await names.getByLabel('for the cells').inputValue()).toBe('Pieces!C2:C3');
  await names.getByLabel('New name').fill('runs');
  await keys('Enter');
  await names.getByText('Pieces!C2:C3 is now called runs.').waitFor();
  await names.getByText('used by no formula').waitFor();
  await names.getByRole('button', { name: 'Go to runs' }).click();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await page.locator('.sheet-grid > p[role="status"]').textContent()).toMatch(/^C2 to C3/);
  await cell('G2').click();
  await page.keyboard.type('=SUM(ru');
  await page.getByRole('option', { name: /^runs/ }).waitFor();
  await keys('Tab', ')', 'Enter');
  await expect.poll(() => words('G2')).toBe('349');

  await page.getByRole('button', { name: 'Names' }).click();
  await names.getByText('used by 1 formula').waitFor();
  await names.getByRole('button', { name: 'Rename runs' }).click();
  await names.getByLabel('New name for runs').fill('R8');
  await keys('Enter');
  await names.getByText(/“R8” cannot be a name/).waitFor();
  await names.getByLabel('New name for runs').fill('all_runs');
  await keys('Enter');
  await names.getByText('used by 1 formula').waitFor();
  await expectAccessible(page);

  await names.getByRole('button', { name: 'Take away all_runs' }).click();
  await names.getByRole('button', { name: /Pieces!G2/ }).waitFor();
  await expectAccessible(page);
  await names.getByRole('button', { name: 'Take all_runs away all the same' }).click();
  await names.getByText('No cell of this workbook has a name yet.').waitFor();
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('title')).toMatch(
    /taking away the name all_runs/,
  );
  await keys('Control+z');
  await names.getByRole('button', { name: 'Go to all_runs, Pieces!C2:C3' }).waitFor();
  expect(faults).toEqual([]);
});

test('a name is made of cells that are typed; what is none is refused with a sentence', async () => {
  const { page, keys } = await openRanges();
  await page.getByRole('button', { name: 'Names' }).click();
  const names = page.getByRole('region', { name: 'Names' });
  await names.getByLabel('New name').fill('lap');
  await names.getByLabel('for the cells').fill('Attic!B1');
  await keys('Enter');
  await names.getByText(/“Attic!B1” is no cell/).waitFor();
  await names.getByLabel('for the cells').fill('Allowances!B1');
  await keys('Enter');
  await names.getByRole('button', { name: 'Go to lap, Allowances!B1' }).waitFor();
  expect(await names.getByRole('listitem').textContent()).toMatch(/2″/);
});
