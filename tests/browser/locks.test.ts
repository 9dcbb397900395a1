import { expect, test } from 'vitest';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { expectAccessible } from './support/axe.ts';
import { lockedJob, openFileText, openJob } from './template-workbook.ts';

const refusal = /is locked, as the template has it; nothing was changed/;

test('a locked cell says so quietly, and says why as soon as one begins to write in it', async () => {
  const { page, cell, faults } = await openJob();
  expect(await cell('C2').textContent()).toContain('locked');
  expect(await cell('B2').textContent()).not.toContain('locked');
  await cell('C2').dblclick();
  await page.locator('.cell-editor-note').filter({ hasText: refusal }).waitFor();
  await page.keyboard.press('Escape');
  await cell('A2').click();
  await page.keyboard.type('S9');
  await page.keyboard.press('Enter');
  await page.locator('.cell-editor-refusal').filter({ hasText: refusal }).waitFor();
  await page.keyboard.press('Escape');
  expect(await cell('A2').textContent()).toContain('S1 trunk');
  await expectAccessible(page);
  expect(faults).toEqual([]);
});

test('neither emptying, paste, nor fill, nor sort changes a locked cell', async () => {
  const { page, cell, context, faults } = await openJob();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const before = async () => {
    const texts = await Promise.all(['A2', 'C2', 'D2', 'A3', 'C3'].map((place) => cell(place).textContent()));
    return texts.join('|');
  };
  const stood = await before();
  await cell('C2').click();
  await page.keyboard.press('Delete');
  await page.getByText(refusal).first().waitFor();
  await cell('B2').click();
  await page.keyboard.press('Control+c');
  await cell('C3').click();
  await page.keyboard.press('Control+v');
  await page
    .getByText(/C3 is locked/)
    .first()
    .waitFor();
  await cell('B2').click();
  await cell('C3').click({ modifiers: ['Shift'] });
  await page.keyboard.press('Control+r');
  await page
    .getByText(/C2 and 1 more are locked/)
    .first()
    .waitFor();
  await cell('B2').click();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menuitem', { name: 'Sort rows 2 to 3 by Diameter, rising' }).press('Enter');
  await page
    .getByText(/A2 and \d+ more are locked/)
    .first()
    .waitFor();
  expect(await before()).toBe(stood);
  expect(faults).toEqual([]);
});

test('a file whose locked cell was changed by hand is refused', async () => {
  const { page, faults } = await openJob();
  const text = writeWorkbookFile({ workbook: lockedJob(), values: noValues });
  await openFileText(page, text.replace('PI()*B2+lap', 'PI()*B2-lap'));
  await page.getByRole('alert').filter({ hasText: 'was not opened' }).waitFor();
  expect(await page.getByRole('alert').first().textContent()).toMatch(/Pieces/);
  expect(faults).toEqual([]);
});

test('whoever owns the job takes its locks off in one deed, and undo puts them on again', async () => {
  const { page, cell, faults } = await openJob();
  await cell('A2').click();
  await page.getByRole('button', { name: 'Take the locks off this job' }).click();
  await page.getByRole('button', { name: 'Take them off' }).click();
  await page.getByRole('button', { name: 'Put the locks on again' }).waitFor();
  expect(await cell('A2').textContent()).not.toContain('locked');
  await cell('A2').click();
  await page.keyboard.type('S9');
  await page.keyboard.press('Enter');
  await expect.poll(() => cell('A2').textContent()).toContain('S9');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByRole('button', { name: /^Undo.*taking the locks off/ }).click();
  await expect.poll(() => cell('A2').textContent()).toContain('locked');
  expect(faults).toEqual([]);
});
