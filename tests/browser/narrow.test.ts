import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

/** What a window of 1440 by 900 shows at twice the size. */
const zoomed = { width: 720, height: 450 };

/** How far down each name of the list stands. */
function places(page: Page): Promise<readonly number[]> {
  return page
    .locator('.sheet-list-one')
    .evaluateAll((names) => names.map((name) => name.getBoundingClientRect().top));
}

test('at 200 % zoom the first lines of the sheet are in sight, and the pages are folded away', async () => {
  const { page, cell, faults } = await openDemo({ size: zoomed });
  const line = await cell('B5').boundingBox();
  expect((line?.y ?? Number.POSITIVE_INFINITY) + (line?.height ?? 0)).toBeLessThan(zoomed.height);
  await expectAccessible(page);

  const fold = page.getByText('Pages and files');
  await fold.press('Enter');
  await page.getByRole('button', { name: 'Template and worked examples' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Template and worked examples' }).waitFor();
  await page.getByRole('button', { name: 'Compare workbooks' }).waitFor({ state: 'hidden' });
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(
    'Pages and files: Template and worked examples',
  );
  // The page has its full length, so that only the window scrolls.
  const inner = await page.evaluate(() => {
    const part = document.querySelector('.template');
    return part ? part.scrollHeight - part.clientHeight : null;
  });
  expect(inner).toBe(0);
  expect(faults).toEqual([]);
});

test('a page chosen at once after unfolding folds the pages away as well', async () => {
  const { page, faults } = await openDemo({ size: zoomed });
  const fold = page.locator('.side-pages');
  // Before the browser tells that the fold is open.
  await fold.evaluate((part: HTMLDetailsElement) => {
    part.querySelector('summary')?.click();
    part.querySelector('button')?.click();
  });
  await fold.evaluate(() => new Promise((done) => setTimeout(done, 100)));
  expect(await fold.evaluate((part: HTMLDetailsElement) => part.open)).toBe(false);
  expect(faults).toEqual([]);
});

test('on a narrow desk no sheet moves in the list when one is opened', async () => {
  const { page, goTo, cell, faults } = await openDemo({ size: { width: 1024, height: 768 } });
  const before = await places(page);
  for (const sheet of ['Pieces', 'Blanks', 'Seal and fasten']) {
    await goTo(sheet);
    expect(await places(page)).toEqual(before);
  }
  // What is typed and not taken has the most to say.
  await goTo('Blanks');
  await cell('B3').click();
  await page.keyboard.type('=1+');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.getByText('1 not taken').waitFor();
  expect(await places(page)).toEqual(before);
  // Nor does what is said of a sheet stand over its name.
  const overlap = await page.locator('.sheet-list-item').evaluateAll((items) =>
    items.map((item) => {
      const name = item.querySelector('.sheet-list-one span')?.getBoundingClientRect();
      const said = item.querySelector('.sheet-list-standing')?.getBoundingClientRect();
      return name && said ? Math.max(0, name.right - said.left) : 0;
    }),
  );
  expect(overlap.filter((pixels) => pixels > 0)).toEqual([]);
  expect(faults).toEqual([]);
});

test('nothing in the list moves when the letters of the page come late', async () => {
  const { page, faults } = await openDemo({ size: { width: 1024, height: 768 } });
  await page.route(/woff2/, async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 400));
    await route.continue();
  });
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  const before = await places(page);
  await page.evaluate(async () => {
    await document.fonts.ready;
  });
  expect(await places(page)).toEqual(before);
  expect(faults).toEqual([]);
});
