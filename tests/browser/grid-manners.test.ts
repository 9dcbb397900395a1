import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('what is said over one workbook does not stay over the next', async () => {
  const { page, sheet } = await openRanges();
  await sheet('Notes').click();
  await page.keyboard.press('Delete');
  await page.getByText('The sheet Notes was taken out').waitFor();
  await page.locator('.shelf-list button').first().click();
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  expect(await page.locator('.notice').count()).toBe(0);
});

test('taking a sheet out says how many cells of others read it, and it can be put back', async () => {
  const { page, sheet } = await openRanges();
  await sheet('Pieces').click();
  await sheet('Pieces').press('Delete');
  await page
    .getByText('The sheet Pieces was taken out, with all that stood on it. 1 cell of another sheet read it')
    .waitFor();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await sheet('Pieces').waitFor();
});

test('the table itself says nothing of rows that it does not show', async () => {
  const { page } = await openRanges();
  expect(await page.locator('body').textContent()).not.toMatch(/No Rows/i);
});

test('a scroll bar that lies over the cells hides nothing of the figures under it', async () => {
  const { page, cell } = await openRanges({ context: { viewport: { width: 1024, height: 768 } } });
  await cell('B2').click();
  await page.keyboard.press('Control+End');
  const bars = page.locator('.sheet-grid :is(.ag-body-vertical-scroll, .ag-body-horizontal-scroll)');
  // The browser of the tests has such bars; with others this would prove nothing.
  expect(await page.locator('.sheet-grid .ag-scrollbar-invisible').count()).toBe(await bars.count());
  const painted = await bars.evaluateAll((found) =>
    found
      .flatMap((bar) => [bar, ...bar.querySelectorAll('*')])
      .map((part) => getComputedStyle(part).backgroundColor)
      .filter((colour) => colour !== 'rgba(0, 0, 0, 0)'),
  );
  expect(painted).toEqual([]);
});

test('the mark of a note stands clear of the words of its cell', async () => {
  const { page, cell } = await openRanges();
  await cell('B2').click();
  await page.keyboard.press('Shift+F9');
  await expect.poll(() => page.getByLabel('Note', { exact: true }).evaluate(hasFocus)).toBe(true);
  await page.keyboard.type('measured twice');
  await cell('C3').click();
  const gap = () =>
    cell('B2').evaluate((element) => {
      const words = element.querySelector('.sheet-cell-words');
      const sign = element.querySelector('.cell-note-sign');
      if (!words || !sign) return null;
      const range = document.createRange();
      range.selectNodeContents(words);
      return sign.getBoundingClientRect().left - range.getBoundingClientRect().right;
    });
  await expect.poll(gap).toBeGreaterThanOrEqual(0);
});

test('what is typed while the form for a note is still fetched does not land in the cell', async () => {
  const { page, cell } = await openRanges();
  let letItCome = () => {};
  const isWanted = new Promise<void>((resolve) => {
    letItCome = resolve;
  });
  await page.route(/cell-dress/, async (route) => {
    await isWanted;
    await route.continue();
  });
  await page.reload();
  await cell('B2').click();
  const words = cell('B2').locator('.sheet-cell-words');
  const before = await words.textContent();
  await page.keyboard.press('Shift+F9');
  await page.keyboard.type('9');
  letItCome();
  await expect.poll(() => page.getByLabel('Note', { exact: true }).evaluate(hasFocus)).toBe(true);
  await page.keyboard.type('measured twice');
  await cell('C3').click();
  await cell('B2').locator('.cell-note-sign').waitFor();
  expect(await words.textContent()).toBe(before);
});

test('a search that has put something in all cells keeps the focus', async () => {
  const { page, keys } = await openRanges();
  await keys('Control+h');
  const search = page.getByRole('search', { name: 'Find and replace' });
  await page.keyboard.type('trunk');
  await search.getByLabel('Put in its place').fill('branch');
  await search.getByRole('button', { name: 'In all 2' }).press('Enter');
  await search.getByText('2 cells were typed anew.').waitFor();
  expect(await search.evaluate((panel) => panel.contains(document.activeElement))).toBe(true);
});

test('many refusals are told one on a line: the first ten, then how many more', async () => {
  const { cell, keys, copyElsewhere, complaint, page } = await openRanges();
  await cell('B2').click();
  await copyElsewhere(Array.from({ length: 2 }, () => '99').join('\n'));
  await keys('Control+v');
  expect((await complaint()).split('\n')).toHaveLength(3);
  await cell('G2').click();
  await copyElsewhere(Array.from({ length: 13 }, (_, at) => `=GIRTHY(${at})`).join('\n'));
  await keys('Control+v');
  const lines = (await complaint()).split('\n');
  expect(lines).toHaveLength(11);
  expect(lines.at(0)).toMatch(/^Pieces!G2: /);
  expect(lines.at(-1)).toBe('And 3 more.');
  const box = await page.locator('.sheet-grid-complaint').boundingBox();
  expect(box?.height).toBeGreaterThan(200);
});

test('what a cell is, is not shown of a sheet that is not in view', async () => {
  const { page, cell, sheet } = await openRanges();
  await cell('G2').click();
  await page.locator('.cell-dress summary').waitFor();
  await page.keyboard.type('=');
  await sheet('Allowances').click();
  await page.locator('.cell-editor').getByText('Pieces, G2').waitFor();
  expect(await page.locator('.cell-dress').count()).toBe(0);
  await page.keyboard.press('Escape');
  await page.locator('.cell-dress summary').waitFor();
});

test('words of another table do not name words beside it, and headings name no heading', async () => {
  const { page, cell } = await openRanges();
  await cell('G1').click();
  await expect.poll(() => page.locator('.working-place').textContent()).toBe('Working · G1');
  await cell('A2').click();
  await expect.poll(() => page.locator('.working-place').textContent()).toBe('Working · A2');
});

test('the numbers and letters of what is selected are marked, also of columns that come into view', async () => {
  const { page, cell, drag, rowNumber, columnLetter } = await openRanges();
  await drag(cell('B2'), cell('C3'));
  const reached = () => page.locator('[data-reached]').allTextContents();
  await expect
    .poll(async () => (await reached()).map((one) => one.trim()).sort())
    .toEqual(['2', '3', 'B', 'C']);
  expect(await rowNumber(4).getAttribute('data-reached')).toBe(null);
  expect(await columnLetter('B').getAttribute('data-reached')).toBe('');
});

function hasFocus(element: Element): boolean {
  return element === document.activeElement;
}
