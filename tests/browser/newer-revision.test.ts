import { expect, test } from 'vitest';
import type { Workbook } from '../../src/workbook/document.ts';
import { expectAccessible } from './support/axe.ts';
import { openJob, openWorkbook, twoPipes } from './template-workbook.ts';

/** Revision 3: the girth counts the lap twice, and the lap is 3. */
function revisionThree(): Workbook {
  const text = JSON.stringify(twoPipes())
    .replaceAll('+lap', '+2*lap')
    .replace('"content":2,"role":"text"', '"content":3,"role":"text"');
  return {
    ...JSON.parse(text),
    template: { name: 'Two pipes', revision: 3 },
    revisions: [
      { revision: 2, says: 'The first to be used.' },
      { revision: 3, says: 'Both laps are counted.' },
    ],
  };
}

async function openOlderJob() {
  const window = await openJob();
  const { page } = window;
  await openWorkbook(page, revisionThree());
  await page.getByRole('button', { name: 'Foxglove Close, house 3' }).click();
  await page.getByText('Two pipes has revision 3; this job is from 2.').waitFor();
  return window;
}

test('a job is told of a newer revision, sees cell by cell what it would change, takes it, and undo takes it back', async () => {
  const { page, cell, faults } = await openOlderJob();
  await page.getByRole('button', { name: 'Look what would change' }).click();
  await page.getByText('Both laps are counted.').waitFor();
  const changes = page.locator('.template-changes');
  const girth = changes.getByRole('row', { name: /Pieces!C2/ });
  await girth.filter({ hasText: /54 5.16″/ }).waitFor();
  expect(await girth.textContent()).toMatch(/52 5.16″/);
  // The shop's own lap stays, and can be taken.
  await changes
    .getByRole('row', { name: /Allowances!B1/ })
    .filter({ hasText: 'stays as this job has it' })
    .waitFor();
  await expectAccessible(page);
  await page.getByLabel('Take Pieces!C3').uncheck();
  await page.getByRole('button', { name: 'Take revision 3' }).click();
  await page.locator('.header-quiet').filter({ hasText: 'from Two pipes, revision 3' }).waitFor();
  await page.locator('[data-sheet="pieces"]').click();
  await cell('C2').filter({ hasText: '54 5⁄16″' }).waitFor();
  await cell('C3')
    .filter({ hasText: /39 .{1,3}″/ })
    .waitFor();
  await page.getByRole('button', { name: /^Undo.*revision 3 of Two pipes/ }).click();
  await page.locator('.header-quiet').filter({ hasText: 'from Two pipes, revision 2' }).waitFor();
  await cell('C2').filter({ hasText: '52 5⁄16″' }).waitFor();
  expect(faults).toEqual([]);
});

test('a revision that is left is not told of again', async () => {
  const { page, faults } = await openOlderJob();
  await page.getByRole('button', { name: 'Look what would change' }).click();
  await page.getByRole('button', { name: 'Leave it until the next revision' }).click();
  await page.locator('[data-sheet="pieces"]').click();
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  await page.waitForTimeout(1500);
  expect(await page.getByText('Two pipes has revision 3').count()).toBe(0);
  expect(faults).toEqual([]);
});
