import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';

/** What is pressed or filled in within a part of the page and is less than 44 px high; a label is pressed with its tick.
 *  What is folded away has no height in one browser and no width in another. */
function tooSmall(page: Page, part: string): Promise<readonly string[]> {
  return page.locator(`${part} :is(button, select, summary, input, textarea)`).evaluateAll((targets) =>
    targets
      .filter((target) => target.checkVisibility())
      .map((target) => ({
        target,
        height: Math.max(
          ...[target, target.closest('label')].map((one) => one?.getBoundingClientRect().height ?? 0),
        ),
      }))
      .filter(({ target, height }) => target.getBoundingClientRect().width > 1 && height < 43.5)
      .map(({ target, height }) => `${target.outerHTML.slice(0, 80)} is ${height} high`),
  );
}

test('on a tablet the list, the form of a cell and the pages can be pressed with a finger', {
  timeout: 60_000,
}, async () => {
  const { page, faults } = await openDemo({
    size: { width: 1024, height: 768 },
    context: { hasTouch: true },
  });
  expect(await page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
  expect(await tooSmall(page, '.app-side')).toEqual([]);
  expect(await tooSmall(page, '.header')).toEqual([]);
  await page.getByText('What this cell is').tap();
  await page.getByLabel('Role').waitFor();
  expect(await tooSmall(page, '.working .cell-dress')).toEqual([]);

  await page.getByRole('button', { name: 'Template and worked examples' }).tap();
  await page.getByLabel('Name of the template').fill('Trunk of the lane');
  expect(await tooSmall(page, '.template')).toEqual([]);
  await page.getByRole('button', { name: 'Make the template' }).tap();
  await page.locator('.header-title').filter({ hasText: 'Trunk of the lane' }).waitFor();
  await page.getByRole('button', { name: 'Template and worked examples' }).tap();
  await page.getByRole('button', { name: 'Record the example' }).waitFor();
  expect(await tooSmall(page, '.template')).toEqual([]);

  await page.getByRole('button', { name: 'House types and lots' }).tap();
  await page.getByText('Trunk of the lane as a house type').tap();
  await page.getByText('A new option').tap();
  await page.getByLabel('Option, such as Insulation').waitFor();
  expect(await tooSmall(page, '.app-sheet .lots-part')).toEqual([]);
  expect(faults).toEqual([]);
});

test('a question is read as a whole sentence where it is written', async () => {
  const { page, goTo, cell, faults } = await openDemo({ size: { width: 1024, height: 768 } });
  await goTo('Pieces');
  await cell('E2').click();
  await page.getByText('What this cell is').click();
  for (const field of ['Asks', 'Because']) {
    const hidden = await page
      .getByLabel(field, { exact: true })
      .evaluate(
        (area) => area.scrollHeight - area.clientHeight + Math.max(0, area.scrollWidth - area.clientWidth),
      );
    expect(hidden).toBe(0);
  }
  const asks = page.getByLabel('Asks', { exact: true });
  await asks.fill('How long is it?');
  await asks.press('Enter');
  await asks.pressSequentially('Joint to joint.');
  expect(await asks.inputValue()).toBe('How long is it? Joint to joint.');
  expect(faults).toEqual([]);
});
