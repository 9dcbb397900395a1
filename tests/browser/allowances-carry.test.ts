import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

const demo = readFileSync(new URL('../../sheets/demo.job.stretchout.json', import.meta.url), 'utf8');

test('the allowances go into a file of their own, which opens as a workbook', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const part = page.getByRole('region', { name: 'Allowances on their own' });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    part.getByRole('button', { name: 'Save the allowances as a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^allowances-of-.*\.allowances\.stretchout\.json$/);
  const saved = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect([saved.workbook.kind, saved.workbook.sheets.length]).toEqual(['allowances', 1]);
  await part.getByText(/^Saved as allowances-of-/).waitFor();

  await part.getByLabel('File of allowances to lay beside').setInputFiles(await download.path());
  await part.getByText(/^Nothing in .* to bring in/).waitFor();

  await page.getByLabel('Workbook file', { exact: true }).setInputFiles(await download.path());
  await page.getByRole('heading', { level: 1, name: 'Allowances', exact: true }).waitFor();
  const sheets = page.getByRole('navigation', { name: 'Sheets of this workbook' });
  expect(await sheets.getByRole('button', { name: 'Allowances' }).count()).toBe(1);
  expect(await sheets.getByRole('button', { name: 'Pieces' }).count()).toBe(0);
  expect(faults).toEqual([]);
});

test('ticked rows of another workbook come in as one deed, by keyboard alone, and Undo takes them back', async () => {
  const { page, goTo, faults } = await openDemo();
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const part = page.getByRole('region', { name: 'Allowances on their own' });
  await part.getByLabel('File of allowances to lay beside').setInputFiles({
    name: 'other.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(otherShop()),
  });
  const table = part.getByRole('table');
  await table.waitFor();
  const tick = table.getByRole('checkbox', { name: 'Bring in Lap of the wrap, single allowance' });
  const line = tick.locator('xpath=ancestor::tbody');
  expect(await line.locator('td').allInnerTexts()).toEqual(['', 'Value', '2″', '3″']);
  await tick.focus();
  await page.keyboard.press('Space');
  await expectAccessible(page);
  await part.getByRole('button', { name: 'Bring in the ticked row' }).press('Enter');
  await part.getByText(/^1 row brought in from/).waitFor();
  await part.getByText(/^Nothing in .* to bring in/).waitFor();
  await page.keyboard.press('Control+z');
  await tick.waitFor();
  await goTo('Allowances');
  expect(faults).toEqual([]);
});

test('a file without allowances says so, and nothing is laid beside', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const part = page.getByRole('region', { name: 'Allowances on their own' });
  await part.getByLabel('File of allowances to lay beside').setInputFiles({
    name: 'list.json',
    mimeType: 'application/json',
    buffer: Buffer.from('[1, 2'),
  });
  await part.getByText('The file is damaged or cut off').waitFor();
  expect(await part.getByRole('table').count()).toBe(0);
  expect(faults).toEqual([]);
});

/** The demo job of a shop that laps its wrap by an inch more. */
function otherShop(): string {
  const file = JSON.parse(demo);
  const sheet = file.workbook.sheets.find(({ name }: { name: string }) => name === 'Allowances');
  const [, place] = /^(\w+)/.exec(file.workbook.names.lap.range) ?? [];
  sheet.cells[place ?? ''].content = 3;
  file.workbook.title = 'Alder Court';
  delete file.workbook.seal;
  return JSON.stringify(file);
}
