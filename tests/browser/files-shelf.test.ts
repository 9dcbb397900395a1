import { expect, test } from 'vitest';
import { openFiles } from './files-page.ts';
import { expectAccessible } from './support/axe.ts';

test('a copy is made, taken off the shelf after a second word, and put back', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await demo.goTo('Pieces');
  await demo.type('C2', '18');
  await demo.files();
  await demo.press('Make a copy of Larkspur Lane, lot 7');
  const title = 'Copy of Larkspur Lane, lot 7';
  await expect.poll(demo.said).toContain(`“${title}” stands on the shelf`);
  await demo.press(`Take off the shelf ${title}`);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Keep it');
  await page.keyboard.press('Escape');
  await demo.press(`Take off the shelf ${title}`);
  await expectAccessible(page);
  await demo.press('Take it off');
  await expect.poll(demo.said).toContain('can be put back until this page is closed');
  const shelf = page.getByRole('navigation', { name: 'Other workbooks here' });
  expect(await shelf.count()).toBe(0);
  // The way back is still there after some work elsewhere.
  await demo.goTo('Wrap');
  await demo.files();
  await demo.press(`Put back ${title}`);
  await shelf.getByRole('button', { name: title }).click();
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  await page.getByText(title).first().waitFor();
  await demo.goTo('Pieces');
  await expect.poll(() => demo.shows('C2')).toBe('18″');
  expect(demo.faults).toEqual([]);
});

test('what is off the shelf is gone for good only when the page is closed', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await demo.files();
  await demo.press('Make a copy of Larkspur Lane, lot 7');
  await demo.press('Take off the shelf Copy of Larkspur Lane, lot 7');
  await demo.press('Take it off');
  await page.getByText('can be put back').waitFor();
  await page.reload();
  await demo.files();
  expect(await page.locator('.files-shelf li').count()).toBe(1);
});

test('a workbook that is open in another window stays on the shelf', async () => {
  const demo = await openFiles();
  await demo.files();
  await demo.press('New empty workbook');
  await demo.page.getByRole('heading', { level: 1, name: 'Sheet 1' }).waitFor();
  const other = await demo.context.newPage();
  await other.goto(demo.page.url());
  await other
    .getByText(/another window/)
    .first()
    .waitFor();
  await other.getByRole('button', { name: 'Files and shelf' }).click();
  await other.getByText('nothing can be brought in here').waitFor();
  await other.getByRole('button', { name: 'Larkspur Lane, lot 7', exact: true }).first().click();
  await other.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  await other.getByRole('button', { name: 'Files and shelf' }).click();
  await other.getByRole('button', { name: 'Take off the shelf New workbook' }).click();
  await other.getByRole('button', { name: 'Take it off' }).click();
  await other.getByText('it stays on the shelf').waitFor();
});

test('a new job has the numbers of its template, and a new workbook has an empty sheet to type in', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await demo.files();
  await demo.press(/^New job from Round trunk/);
  await page.getByRole('button', { name: /^New job ?, change the title/ }).waitFor();
  await page.getByText('from Round trunk, revision').waitFor();
  await demo.goTo('Allowances');
  expect(await demo.shows('A2')).toBe('R-4 wrap');
  await demo.files();
  await demo.press('New empty workbook');
  await page.getByRole('heading', { level: 1, name: 'Sheet 1' }).waitFor();
  await demo.type('A1', '16');
  await demo.type('A2', '=A1*2');
  await expect.poll(() => demo.shows('A2')).toBe('32');
  await demo.files();
  expect(await page.locator('.files-shelf li').count()).toBe(3);
  await expectAccessible(page);
  expect(demo.faults).toEqual([]);
});

test('everything is done by keyboard alone', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await page.getByRole('button', { name: 'Files and shelf' }).focus();
  await page.keyboard.press('Enter');
  const copy = page.getByRole('button', { name: 'Make a copy of Larkspur Lane, lot 7' });
  for (let presses = 0; presses < 20; presses += 1) {
    if (await copy.evaluate((button) => button === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  await expect.poll(demo.said).toContain('stands on the shelf');
});
