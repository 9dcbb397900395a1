import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openFiles, quietLine } from './files-page.ts';

const name = 'larkspur-lane-lot-7.stretchout.json';

/** The names that were chosen in the browser's window for files, in order. */
function picked(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => (localStorage.getItem('picked') ?? '').split('\n').filter(Boolean));
}

function textOnDisk(page: Page): Promise<string> {
  return page.evaluate(async (file) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle(file);
    return (await handle.getFile()).text();
  }, name);
}

async function widthOnDisk(page: Page): Promise<unknown> {
  const { workbook } = JSON.parse(await textOnDisk(page));
  return workbook.sheets.find((sheet: { name: string }) => sheet.name === 'Pieces').cells.C2.content;
}

test('saving again writes the same file without asking, also after a reload', async () => {
  const demo = await openFiles({ picker: 'own files' });
  const { page } = demo;
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain(`saved to ${name}`);
  await demo.goTo('Pieces');
  await demo.type('C2', '18');
  await expect.poll(() => quietLine(page)).toContain(`changed since it was saved to ${name}`);
  await page.keyboard.press('Control+z');
  await expect.poll(() => quietLine(page)).toContain(`· saved to ${name}`);
  await page.keyboard.press('Control+y');
  await expect.poll(() => quietLine(page)).toContain(`changed since it was saved to ${name}`);
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain(`· saved to ${name}`);
  expect(await widthOnDisk(page)).toBe(18);
  expect(await picked(page)).toEqual([name]);

  await page.reload();
  await expect.poll(() => quietLine(page)).toContain(`saved before to ${name}`);
  await demo.goTo('Pieces');
  await demo.type('C2', '20');
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain(`· saved to ${name}`);
  expect(await widthOnDisk(page)).toBe(20);
  expect(await picked(page)).toEqual([name]);
  expect(demo.faults).toEqual([]);
});

test('a file that something else wrote since is not written over unasked', async () => {
  const demo = await openFiles({ picker: 'own files' });
  const { page } = demo;
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain(`saved to ${name}`);
  await page.waitForTimeout(20);
  await page.evaluate(async (file) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle(file);
    const writing = await handle.createWritable();
    await writing.write('something else');
    await writing.close();
  }, name);
  await demo.press('Save to a file');
  await expect.poll(() => picked(page)).toEqual([name, name]);
});

test('a workbook opened from a file is saved to that file; another file can be chosen', async () => {
  const demo = await openFiles({ picker: 'own files' });
  const { page } = demo;
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain('saved to');
  await page.evaluate((file) => localStorage.setItem('open', file), name);
  await demo.press('Open a file');
  await page.getByRole('navigation', { name: 'Other workbooks here' }).waitFor();
  await expect.poll(() => quietLine(page)).toContain(`saved to ${name}`);
  await demo.goTo('Pieces');
  await demo.type('C2', '24');
  await demo.press('Save to a file');
  await expect.poll(() => widthOnDisk(page)).toBe(24);
  expect(await picked(page)).toEqual([name, name]);
  await demo.files();
  await demo.press('Save to another file');
  await expect.poll(() => picked(page)).toEqual([name, name, name]);
});

test('a file that cannot be written is told, and what it held stays', async () => {
  const demo = await openFiles({ picker: 'own files' });
  const { page } = demo;
  await demo.press('Save to a file');
  await expect.poll(() => quietLine(page)).toContain('saved to');
  const before = await textOnDisk(page);
  await page.evaluate(() => {
    FileSystemWritableFileStream.prototype.write = () => Promise.reject(new Error('The disk is full.'));
  });
  await demo.goTo('Pieces');
  await demo.type('C2', '18');
  await demo.press('Save to a file');
  await page.getByRole('alert').filter({ hasText: 'The disk is full.' }).waitFor();
  expect(await textOnDisk(page)).toBe(before);
});

test('figures for other programs go to the place that the person chooses', async () => {
  const demo = await openFiles({ picker: 'own files' });
  const { page } = demo;
  await demo.files();
  await demo.press('Hand out Job as CSV');
  const csv = 'larkspur-lane-lot-7-job.csv';
  await expect.poll(demo.said).toBe(`Written to ${csv}.`);
  const text = await page.evaluate(async (file) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle(file);
    return (await handle.getFile()).text();
  }, csv);
  expect(text).toMatch(/^This job,,Before you cut,,\r\nJob,"Larkspur Lane, lot 7",/);
});
