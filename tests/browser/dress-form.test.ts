import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { expectAccessible } from './support/axe.ts';
import type { WindowOptions } from './support/window.ts';

async function openForm(options: WindowOptions = {}) {
  const grid = await openGrid(options);
  const form = grid.page.locator('.cell-dress');
  await form.locator('summary').click();
  return { ...grid, form, undo: () => grid.page.getByRole('button', { name: /^Undo/ }) };
}

const refusal = async (page: Page) => (await page.locator('.cell-dress-refusal').textContent()) ?? '';

test('a plain cell becomes a given with a question, and guards itself from then on', async () => {
  const { form, cell, keys, page, field } = await openForm();
  await cell('G2').click();
  await form.getByLabel('Role').selectOption({ label: 'given: a person fills it in' });
  await form.getByLabel('Measures').selectOption({ label: 'in, length in inches' });
  await form.getByLabel('Shows').selectOption({ label: 'as on a tape' });
  await form.getByLabel('Marks').selectOption({ label: '1/8 inch' });
  await form.getByLabel('Rounded').selectOption({ label: 'up to the next' });
  await form.getByLabel('Asks').fill('How deep is the chase?');
  await form.getByLabel('Least').fill('4');
  await form.getByLabel('Most').fill(`2' 6"`);
  await form.getByLabel('Because').fill('the studs stand that far apart');
  await form.getByLabel('Usual value').fill('14.3');
  await form.getByRole('button', { name: 'Keep the question' }).click();
  await page.locator('.working').getByText('How deep is the chase?').first().waitFor();
  await page.getByRole('button', { name: 'Take the usual value' }).click();
  await expect.poll(() => cell('G2').locator('.sheet-cell-words').textContent()).toBe('14 3⁄8″');
  await cell('G2').click();
  await keys('4', '0', 'Enter');
  await field.waitFor();
  expect(await page.locator('.cell-editor').textContent()).toContain(
    'because the studs stand that far apart',
  );
});

test('everything that does not agree in a question is told at once, and nothing is lost meanwhile', async () => {
  const { form, cell } = await openForm();
  await form.getByLabel('Least').fill('60');
  await form.getByLabel('Most').fill('2');
  await form.getByLabel('Usual value').fill('twelve');
  const told = form.locator('.cell-dress-faults');
  expect(await told.textContent()).toContain('“twelve” cannot be read as a length');
  expect(await told.textContent()).toContain('is above the most');
  await form.getByRole('button', { name: 'Keep the question' }).click();
  await cell('C2').click();
  await cell('B2').click();
  expect(await form.getByLabel('Usual value').inputValue()).toBe('twelve');
  await form.getByRole('button', { name: 'Leave it as it was' }).click();
  expect(await form.getByLabel('Least').inputValue()).toBe('2″');
});

test('a whole range is dressed in one deed, which undo names and takes back', async () => {
  const { form, cell, undo } = await openForm();
  await cell('C2').click();
  await cell('C3').click({ modifiers: ['Shift'] });
  expect(await form.locator('summary').textContent()).toBe('What these 2 cells are');
  await form.getByLabel('Shows').selectOption({ label: 'millimeters' });
  await expect.poll(() => cell('C3').locator('.sheet-cell-words').textContent()).toBe('4,432 mm');
  expect(await undo().textContent()).toContain('how numbers show in 2 cells');
  await undo().click();
  await expect.poll(() => cell('C3').locator('.sheet-cell-words').textContent()).toBe('14′ 6 1⁄2″');
});

test('what differs over a range says so, and a formula does not become a given', async () => {
  const { page, form, cell } = await openForm();
  await cell('B2').click();
  await cell('E2').click({ modifiers: ['Shift'] });
  expect(await form.getByLabel('Role').locator('option:checked').textContent()).toBe('several');
  await form.getByLabel('Role').selectOption({ label: 'given: a person fills it in' });
  expect(await refusal(page)).toMatch(/^E2 has a formula/);
});

test('a note is kept when its field is left', async () => {
  const { page, form, cell } = await openForm();
  await cell('A2').click();
  await form.getByLabel('Note').fill('Ask the roofer first.');
  await form.getByLabel('Role').focus();
  expect(await page.locator('.working-note').textContent()).toBe('Ask the roofer first.');
  expect(await cell('A2').locator('.sheet-cell-said').textContent()).toContain('note: Ask the roofer first.');
});

test('the form is worked by keys alone, reads well, and tells a second window why nothing changes', async () => {
  const { page, form, cell, keys, context } = await openForm();
  await expectAccessible(page, '.working');
  await form.locator('summary').focus();
  await keys('Tab');
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
  await form.getByRole('checkbox', { name: 'bold' }).focus();
  await keys('Space');
  expect(await form.getByRole('checkbox', { name: 'bold' }).isChecked()).toBe(true);
  expect(
    await form.getByRole('checkbox', { name: 'bold' }).evaluate((box) => box === document.activeElement),
  ).toBe(true);
  expect(await cell('B2').getAttribute('data-bold')).toBe('');
  const second = await context.newPage();
  await second.goto(page.url());
  await second.locator('.cell-dress summary').click();
  await second.getByRole('checkbox', { name: 'bold' }).click();
  expect(await refusal(second)).toMatch(/^This workbook is open in another window/);
});
