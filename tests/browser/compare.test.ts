import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

const demo = readFileSync(new URL('../../sheets/demo.job.stretchout.json', import.meta.url), 'utf8');

test('the open job beside an earlier file of it: the order, what was given, what was figured; a cell is a link', async () => {
  const { page, goTo, type, faults } = await openDemo();
  await goTo('Pieces');
  await type('E2', `24' 6 1/2"`);
  await page.getByRole('button', { name: 'Compare workbooks' }).click();
  await page.getByLabel('Workbook file to compare with').setInputFiles({
    name: 'earlier.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(demo),
  });
  const given = page.getByRole('table', { name: 'What was given' });
  await given.waitFor();
  expect((await given.locator('tbody tr').allInnerTexts()).map((row) => row.replace(/\s+/g, ' '))).toEqual([
    'Pieces!E2 Length of S1 14′ 6 ½″ 24′ 6 ½″ 69 % more',
  ]);
  // The titles are the same, so each says where it lies.
  const titles = page.locator('.compare-titles div');
  expect(await titles.allInnerTexts()).toEqual([
    expect.stringMatching(
      /^Before\s+Larkspur Lane, lot 7 from the file earlier\.stretchout\.json · made from/,
    ),
    expect.stringMatching(/^After\s+Larkspur Lane, lot 7 open now · made from/),
  ]);
  const order = page.getByRole('table', { name: 'To order' });
  await expect.poll(() => order.locator('tbody tr').count()).toBeGreaterThan(0);
  const wrap = order.getByRole('row', { name: /R-8 wrap/ }).getByRole('cell');
  expect(await wrap.allTextContents()).toEqual(['2', '3', '1 more']);
  await page.getByRole('table', { name: 'What was figured' }).getByText('Duct in all').waitFor();
  await expectAccessible(page);

  await page.getByLabel('The open one is the earlier').check();
  await given.getByText('41 % less').waitFor();
  expect(await titles.first().textContent()).toContain('open now');
  await page.getByLabel('The open one is the earlier').uncheck();
  await given.getByRole('button', { name: 'Pieces!E2' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(faults).toEqual([]);
});

test('a file that is none says so, and the open job stays', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Compare workbooks' }).click();
  await page.getByLabel('Workbook file to compare with').setInputFiles({
    name: 'list.json',
    mimeType: 'application/json',
    buffer: Buffer.from('[1, 2'),
  });
  await page.getByText('The file is damaged or cut off').waitFor();
  expect(faults).toEqual([]);
});

test('of two choices in quick turn the last one is shown, whichever is read last', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Compare workbooks' }).click();
  // Files whose name begins with “held” are read only when the test lets them.
  await page.evaluate(() => {
    const read = File.prototype.text;
    const gate = new Promise((open) => addEventListener('let them be read', open, { once: true }));
    File.prototype.text = async function text() {
      if (this.name.startsWith('held')) await gate;
      return read.call(this);
    };
  });
  const choose = (name: string, content: string) =>
    page.getByLabel('Workbook file to compare with').setInputFiles({
      name: `${name}.stretchout.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    });
  const titled = (title: string) => {
    const data = JSON.parse(demo);
    return JSON.stringify({ ...data, workbook: { ...data.workbook, title } });
  };
  await choose('held damaged', '[1, 2');
  await choose('held', titled('The first choice'));
  await page.getByText('Figuring the other workbook …').waitFor();
  await choose('quick', titled('The last choice'));
  const beside = page.getByRole('region', { name: 'Compare workbooks' });
  await beside.getByText('The last choice').waitFor();
  await page.evaluate(() => dispatchEvent(new Event('let them be read')));
  await page.waitForTimeout(2000); // long enough for both to be read and figured
  expect(await beside.getByText('The last choice').count()).toBe(1);
  expect(await beside.getByText('The first choice').count()).toBe(0);
  expect(await beside.getByRole('status').first().textContent()).toBe('');
  expect(faults).toEqual([]);
});
