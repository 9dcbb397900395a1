import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

const template = fileURLToPath(new URL('../../sheets/round-trunk.template.stretchout.json', import.meta.url));

test('a template becomes a house type: an option recorded choice by choice, a given that varies, a result; then a lot of it', {
  timeout: 90_000,
}, async () => {
  const { page, goTo, type, shows, faults } = await openDemo();
  await page.getByLabel('Workbook file', { exact: true }).setInputFiles(template);
  await page.getByText('Round trunk').first().waitFor();
  const lots = async () => {
    await page.getByRole('button', { name: 'House types and lots' }).click();
    await page.getByText('Round trunk as a house type').click();
  };
  await lots();
  await page.getByText('A new option').click();
  await page.getByLabel('Option, such as Insulation').fill('Insulation');
  await page.getByLabel('What stands there now is called').fill('as usual');
  const options = page.getByRole('region', { name: 'Options' });
  await page.getByRole('button', { name: 'Add the option' }).click();
  await page.getByText('An option fills at least one given.').waitFor();
  await options.getByLabel('Find a cell by its name or place').fill('Job!B10');
  await options.getByRole('checkbox', { name: /Job!B10/ }).check();
  await page.getByRole('button', { name: 'Add the option' }).click();
  const choices = page.getByRole('table', { name: 'Choices of Insulation' });
  const wrap = (await choices.getByRole('cell').first().textContent()) ?? '';
  expect(wrap).toMatch(/wrap/);

  await goTo('Job');
  await type('B10', 'R-6 wrap');
  await lots();
  await page.getByLabel('Another choice of Insulation').fill('R-6');
  await page.getByRole('button', { name: 'Record what stands there now' }).click();
  await choices.getByRole('row', { name: /^R-6/ }).getByText('R-6 wrap').waitFor();

  const varies = page.getByRole('region', { name: 'What varies' });
  await varies.getByLabel('Find a cell by its name or place').fill('Pieces!E2');
  await varies.getByRole('checkbox', { name: /Pieces!E2\b/ }).check();
  const name = varies.getByLabel('The name of the lot is filled in at');
  expect(await name.getByRole('option', { name: /Pieces!E2\b/ }).count()).toBe(0); // a number is no name
  await name.selectOption('Job!B2');
  const results = page.getByRole('region', { name: 'Results' });
  await results.getByRole('combobox', { name: 'Figure' }).selectOption({ index: 3 });
  await results.getByLabel('Called').fill('First figure');
  await results.getByRole('button', { name: 'Show it for each lot' }).click();
  await results.getByRole('button', { name: 'Take out First figure' }).waitFor();
  await expectAccessible(page);

  await results.getByRole('button', { name: 'Take out First figure' }).focus();
  await page.keyboard.press('Control+z');
  await results.getByRole('button', { name: 'Take out First figure' }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Redo.*of the house type/ }).click();
  await results.getByRole('button', { name: 'Take out First figure' }).waitFor();

  await results.getByRole('combobox', { name: 'Figure' }).selectOption({ index: 3 });
  await results.getByLabel('Called').fill('Second figure');
  await results.getByRole('button', { name: 'Show it for each lot' }).click();
  await results.getByRole('button', { name: 'Show Second figure sooner' }).press('Enter');
  await expect
    .poll(() => results.locator('.house-results strong').allTextContents())
    .toEqual(['Second figure', 'First figure']);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
    'Show Second figure sooner',
  );

  await page.getByRole('button', { name: 'Begin a lot table' }).click();
  await page.getByLabel('Add a house type, or take a newer revision').selectOption('open');
  await page.getByText(/is a house type of this table now/).waitFor();
  await page.getByRole('button', { name: 'Add a lot' }).click();
  await page.getByText('The lot is figured.').waitFor();
  await page.getByRole('columnheader', { name: 'First figure' }).waitFor();
  await page.getByRole('button', { name: 'Open Lot 1 as a job' }).click();
  await page.getByRole('heading', { level: 1, name: 'Job', exact: true }).waitFor();
  await expect.poll(() => shows('B2')).toBe('Lot 1');
  expect(faults).toEqual([]);
});
