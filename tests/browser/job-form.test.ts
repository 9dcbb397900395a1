import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';
import { openWorkbook, twoPipes } from './template-workbook.ts';

async function openForm() {
  const window = await openPage();
  const { page } = window;
  page.setDefaultTimeout(12000);
  const template = JSON.parse(JSON.stringify(twoPipes()).replaceAll('"content":16', '"content":null'));
  template.sheets[0].rows[2][1].question.usual = 12;
  template.sheets[0].rows[2][1].content = null;
  await openWorkbook(page, template);
  await page.getByRole('button', { name: 'Files and shelf' }).click();
  await page.getByRole('button', { name: 'Fill in a form for a job from Two pipes' }).click();
  await page.getByRole('heading', { name: 'New job from Two pipes' }).waitFor();
  return window;
}

test('a form asks all on one page, tells all faults at once, and makes a job that remembers its template', async () => {
  const { page, faults } = await openForm();
  await page.getByText('2 to answer.').waitFor();
  await page.getByLabel('Title of the job').fill('Larkspur Lane, lot 9');
  const first = page.getByLabel(/How wide across\?\s+Diameter of S1 trunk/);
  await first.fill('99');
  await page.getByRole('button', { name: 'Make the job' }).click();
  await page.getByRole('heading', { name: '2 answers are not taken' }).waitFor();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Pieces!B2' }).press('Enter');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe('Pieces!B2');
  await first.fill(`1' 2"`);
  await page.getByRole('button', { name: 'Take all usual values' }).click();
  await page.getByText('Nothing waits.').waitFor();
  await page.getByRole('button', { name: 'Make the job' }).click();
  await page.locator('.header-title').filter({ hasText: 'Larkspur Lane, lot 9' }).waitFor();
  await page.locator('.header-quiet').filter({ hasText: 'from Two pipes, revision 2' }).waitFor();
  await page
    .getByRole('gridcell', { name: /Girth of S1 trunk/ })
    .filter({ hasText: '46″' })
    .waitFor();
  expect(await page.locator('[row-id="2"] [col-id="c1"]').textContent()).toContain('12″');
  expect(faults).toEqual([]);
});

test('what is not answered yet can be answered in the grid', async () => {
  const { page, faults } = await openForm();
  await page.getByRole('button', { name: 'Answer the rest in the grid' }).click();
  await page.locator('.header-title').filter({ hasText: 'New job' }).waitFor();
  await page.locator('[row-id="1"] [col-id="c1"]').filter({ hasText: 'fill' }).waitFor();
  expect(faults).toEqual([]);
});
