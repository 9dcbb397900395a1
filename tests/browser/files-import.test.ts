import { expect, test } from 'vitest';
import { openFiles } from './files-page.ts';
import { expectAccessible } from './support/axe.ts';

const faulty = [
  'List of the second floor',
  'Piece,Shape,Diameter,Length,Remark',
  `S7,round,14,"12' 4 1/2""",upstairs`,
  'S8,oval,twelve,=1+1,',
  'S9,round,200,10,',
  '',
].join('\r\n');

test('every field is shown as what it will be, and every refusal at once, before anything is written', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await demo.goTo('Pieces');
  await demo.files();
  await demo.bring('second-floor.csv', faulty);
  const preview = page.getByRole('region', { name: 'Preview' });
  // The file says Diameter where the sheet says Width: the person maps it.
  await preview.getByLabel('Field for Width').selectOption({ label: 'Diameter' });
  expect(await preview.getByRole('row', { name: /^3 row 8/ }).textContent()).toContain('12′ 4 ½″');
  await expect
    .poll(() => page.locator('.files-refusals li').allTextContents())
    .toEqual([
      expect.stringMatching(/^Line 4, Shape \(B9\): “oval” is not one of the choices/),
      expect.stringMatching(/^Line 4, Width \(C9\): “twelve” cannot be read as a length/),
      expect.stringMatching(/^Line 4, Length \(E9\): “=1\+1” begins with =/),
      expect.stringMatching(/^Line 5, Width \(C10\): 200″ is outside/),
    ]);
  await expectAccessible(page);
  const button = page.getByRole('button', { name: /^Bring in/ });
  expect(await button.getAttribute('aria-disabled')).toBe('true');
  await page.getByLabel('Leave these lines out and bring in the others').check();
  // With line 4 left out line 5 comes to stand one line higher.
  await expect
    .poll(() => page.locator('.files-refusals li').last().textContent())
    .toMatch(/^Line 5, Width \(C9\)/);
  await demo.press('Bring in 1 line');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await demo.shows('A8')).toBe('S7');
  expect(await demo.shows('E8')).toBe('12′ 4 1/2″');
  expect(await demo.shows('A9')).toBe('');
  const undo = page.getByRole('button', { name: /^Undo/ });
  expect(await undo.textContent()).toContain('lines from second-floor.csv at Pieces!A8');
  await undo.click();
  expect(await demo.shows('A8')).toBe('');
  expect(demo.faults).toEqual([]);
});

test('a file of Windows with semicolons is read, and written over the lines that stand there when asked', async () => {
  const demo = await openFiles();
  const { page } = demo;
  await demo.goTo('Pieces');
  await demo.files();
  // 12 ½ as Windows-1252 has it.
  const bytes = Uint8Array.from([...Buffer.from('piece;width\nS1;12 '), 0xbd, ...Buffer.from('\n')]);
  await demo.bring('windows.csv', bytes);
  await page.getByLabel('Beginning at').selectOption('first');
  const empties = page.getByRole('checkbox', { name: /Empty the \d+ cells of the lines that stand there/ });
  await empties.waitFor();
  await demo.press('Bring in 1 line');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await demo.shows('C2')).toBe('12 1/2″');
  expect(await demo.shows('B2')).toBe('round');
  expect(await demo.shows('A3')).toBe('S2');

  await demo.files();
  await demo.bring('windows.csv', bytes);
  await page.getByLabel('Beginning at').selectOption('first');
  await empties.check();
  await demo.press('Bring in 1 line');
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
  expect(await demo.shows('C2')).toBe('12 1/2″');
  expect([await demo.shows('B2'), await demo.shows('A3'), await demo.shows('C7')]).toEqual(['fill', '', '']);
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect([await demo.shows('B2'), await demo.shows('A3')]).toEqual(['round', 'S2']);
});

test('a list goes onto an empty sheet as it is', async () => {
  const demo = await openFiles();
  await demo.files();
  await demo.press('New empty workbook');
  await demo.page.getByRole('heading', { level: 1, name: 'Sheet 1' }).waitFor();
  await demo.files();
  await demo.bring('list.csv', `Mark,Length\nS1,14' 6"\nS2,3\n`);
  await demo.press('Bring in 3 lines');
  await demo.page.getByRole('heading', { level: 1, name: 'Sheet 1' }).waitFor();
  expect(await demo.shows('A1')).toBe('Mark');
  expect(await demo.shows('B2')).toMatch(/^174/);
});

test.each([
  ['nothing in it', '', /is empty/],
  ['a packed workbook of another program', 'PK\u0003\u0004\0\0', /not a CSV file/],
  ['more than 2 MB', 'a,b\n'.repeat(600_000), /at most 2 MB/],
  ['more than 5,000 lines', 'a\n'.repeat(5001), /at most 5,000/],
])('a file with %s is refused with a reason', async (_, text, reason) => {
  const demo = await openFiles();
  await demo.files();
  await demo.bring('odd.csv', text);
  await expect.poll(() => demo.page.locator('.files-complaint').textContent()).toMatch(reason);
  expect(demo.faults).toEqual([]);
});
