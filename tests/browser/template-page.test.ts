import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';
import { openJob, openWorkbook, twoPipes } from './template-workbook.ts';

const templatePage = { name: 'Template and worked examples' } as const;

test('an example is recorded, runs on every change, and a revision that breaks it must say why', async () => {
  const { page, faults } = await openPage();
  page.setDefaultTimeout(12000);
  await openWorkbook(page, twoPipes());
  await page
    .getByRole('gridcell', { name: /Girth of S1 trunk/ })
    .filter({ hasText: '52 5⁄16″' })
    .click();
  await page.getByRole('button', templatePage).click();
  await page.getByRole('button', { name: 'Add Pieces!C2' }).click();
  await page.getByRole('button', { name: 'Record the example' }).click();
  await page.getByRole('alert').filter({ hasText: /name/ }).waitFor();
  await page.getByLabel('Name', { exact: true }).fill('A 16 in pipe');
  await page.getByLabel('Where the results are known from').fill('worked by hand');
  await page.getByLabel('may differ by').fill('0.01');
  await page.getByRole('button', { name: 'Record the example' }).click();
  await page.getByText(/The example comes out as recorded\./).waitFor();
  await expectAccessible(page);

  await page.locator('[data-sheet="allowances"]').click();
  const lap = page.locator('[row-id="0"] [col-id="c1"]');
  await lap.click();
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await page.getByRole('button', templatePage).click();
  await page.getByText(/1 of 1 comes out otherwise\./).waitFor();
  await page.getByText(/wanted 52 5.16″, got 53 5.16″, may differ by 0.01/).waitFor();
  await page.getByLabel('What is new in revision 3').fill('A wider lap.');
  await page.getByRole('button', { name: 'Save as revision 3' }).click();
  await page.getByRole('alert').filter({ hasText: 'say why this revision is saved all the same' }).waitFor();
  await page.getByLabel('Why it is saved although').fill('The example waits for the new table.');
  await page.getByRole('button', { name: 'Save as revision 3' }).click();
  await page.getByText('Revision 3 is saved.').waitFor();
  await page.getByText('came out otherwise: The example waits for the new table.').waitFor();
  await page.getByRole('button', { name: /^As it is now/ }).click();
  await page
    .getByText('The example comes out as recorded.')
    .or(page.getByText('is recorded as it is now'))
    .first()
    .waitFor();
  await page.locator('.template-state').filter({ hasText: 'holds' }).waitFor();
  await page.getByRole('button', { name: /^Take out/ }).click();
  await page.getByText('Undo puts it back').waitFor();
  expect(faults).toEqual([]);
});

test('a template is made of a job, with the job’s numbers as usual values; the job stays', async () => {
  const { page, faults } = await openJob();
  await page.getByRole('button', templatePage).click();
  await page.getByLabel('Name of the template').fill('');
  await page.getByRole('button', { name: 'Make the template' }).click();
  await page.getByText('The template has no name.').waitFor();
  await page.getByLabel('Name of the template').fill('Two pipes, our way');
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Make the template' }).click();
  await page.locator('.header-title').filter({ hasText: 'Two pipes, our way' }).waitFor();
  await page.locator('[row-id="1"] [col-id="c1"]').click();
  await page.getByText('Measure inside the metal.').waitFor();
  expect(await page.locator('.given-question').textContent()).toContain('Usually16″');
  await page.getByRole('button', { name: 'Foxglove Close, house 3' }).click();
  await page.locator('.header-quiet').filter({ hasText: 'from Two pipes, revision 2' }).waitFor();
  expect(faults).toEqual([]);
});

test('an author locks cells, and writes a check from sentences', async () => {
  const { page, faults } = await openPage();
  page.setDefaultTimeout(12000);
  await openWorkbook(page, { ...twoPipes(), title: 'Open pipes' });
  await page.locator('[row-id="1"] [col-id="c3"]').click();
  await page.locator('.cell-dress summary').click();
  await page.getByLabel('locked in jobs').uncheck();
  await page.getByLabel('Stops when').fill('C2>50');
  await page.getByRole('button', { name: 'Write its formula' }).click();
  await page.getByText('The stop has no sentence.').waitFor();
  await page.getByLabel('and says', { exact: true }).fill('wider than the roll');
  await page.getByRole('button', { name: 'Write its formula' }).click();
  await page.getByRole('gridcell', { name: /stop: wider than the roll/ }).waitFor();
  await page.getByRole('button', { name: 'Lock all but the givens of this sheet' }).click();
  expect(await page.getByLabel('locked in jobs').isChecked()).toBe(true);
  await expectAccessible(page);
  expect(faults).toEqual([]);
});
