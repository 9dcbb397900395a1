import { expect, test } from 'vitest';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';
import { lockedJob, openJob, openWorkbook, twoPipes } from './template-workbook.ts';

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

/** The two pipes with a table of wraps that people fill in, of which the first has an R. */
function withWraps(workbook: Workbook, r: number): Workbook {
  const asking = (asks: string, content: string | number): Cell => ({
    content,
    role: 'given',
    question: { asks },
  });
  const heading = (content: string): Cell => ({ content, role: 'heading' });
  const wraps = [
    [heading('Wrap'), heading('R')],
    [asking('What is this wrap called?', 'R-8 wrap'), asking('What R has it?', r)],
    [asking('What is this wrap called?', 'R-6 wrap'), asking('What R has it?', 6)],
  ];
  const sheets = workbook.sheets.map((sheet) =>
    sheet.id === 'allowances' ? { ...sheet, rows: [...sheet.rows, [], ...wraps] } : sheet,
  );
  return { ...workbook, sheets };
}

test('an allowance that the revision corrects is shown before and after, and taken by the keyboard', async () => {
  const window = await openPage();
  const { page, faults } = window;
  page.setDefaultTimeout(12000);
  await openWorkbook(page, withWraps(lockedJob(), 8.3));
  await openWorkbook(page, withWraps(revisionThree(), 7.9));
  await page.getByRole('button', { name: 'Foxglove Close, house 3' }).click();
  await page.getByRole('button', { name: 'Look what would change' }).click();
  const corrected = page.getByRole('table', {
    name: 'Allowances and usual values that the revision changes',
  });
  const row = corrected.getByRole('row', { name: /Allowances!B4/ });
  await row.filter({ hasText: '8.3' }).filter({ hasText: '7.9' }).waitFor();
  const tick = corrected.getByLabel('Take Allowances!B4');
  expect(await tick.isChecked()).toBe(false);
  await tick.focus();
  await page.keyboard.press('Space');
  expect(await tick.isChecked()).toBe(true);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Take revision 3' }).click();
  await page.locator('[data-sheet="allowances"]').click();
  const taken = page.locator('[row-id="3"] [col-id="c1"]');
  await taken.filter({ hasText: '7.9' }).waitFor();
  await page.getByRole('button', { name: /^Undo.*revision 3 of Two pipes/ }).click();
  await taken.filter({ hasText: '8.3' }).waitFor();
  expect(faults).toEqual([]);
});
