import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { choose, openWorkbook } from './working-workbook.ts';

test('a girth is read as a tape shows it, with what it leaves out, its sum and what it comes from', async () => {
  const { page, working, faults } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByText('50.2655 in, shown up to the next 1/16').waitFor();
  expect(await working.locator('.working-figure').textContent()).toContain('50');
  expect(await working.locator('.working-figure .visually-hidden').textContent()).toBe('50 and 5/16 inches');
  expect(await working.locator('.working-sum').textContent()).toMatch(/^= PI\(\)\s?[*×]\s?16$/);
  await working.getByRole('button', { name: 'Pieces!B2 Diameter of S1 trunk 16″' }).waitFor();
  expect(faults).toEqual([]);
});

test('a trade function is worked through: drawing, steps that end in the figure, givens, source', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 2);
  const call = working.getByRole('region', { name: 'TAPE.ROUND' });
  await call.getByRole('img').waitFor();
  const last = call.locator('.call-steps li').last();
  expect(await last.textContent()).toMatch(/^On the tape/);
  expect(await last.locator('.visually-hidden').first().textContent()).toBe('50 and 5/16 inches');
  await call.getByText('Left out, so the usual value: most tapes are marked in sixteenths').waitFor();
  await call.getByText('exact geometry').waitFor();
  await expectAccessible(page, '.working');
});

test('a stretch-out of wrap is read: number, drawing, each step, cautions, sources, and the table it comes from', async () => {
  const { page, working, faults } = await openWorkbook();
  await choose(page, 'Round', 3, 1);
  const call = working.getByRole('region', { name: 'WRAP.STRETCHOUT' });
  await call.getByRole('img', { name: /16″ round duct in wrap 2 ¼″ thick/ }).waitFor();
  expect(await working.locator('.working-figure .visually-hidden').textContent()).toBe('67 and 5/16 inches');
  const steps = await call.locator('.call-step').allTextContents();
  // π × 16 and the 17 in of the published stretch-out table for 3 in wrap on round duct, its 2 in lap included.
  expect(steps[0]).toMatch(/^Around the metal.*π × 16.*50\.265 in$/);
  expect(steps[1]).toMatch(/^Table, round.*17\.000 in$/);
  expect(steps.at(-1)).toMatch(/^Cut the wrap.*67\.265 in$/);
  await call.getByText('Take care').waitFor();
  await call.getByText('read at source').first().waitFor();
  await working.getByRole('button', { name: /^wraps/ }).press('Enter');
  await page.getByRole('heading', { name: 'Wraps', level: 1 }).waitFor();
  expect(faults).toEqual([]);
});

test('a function inside another comes first and folded, its cautions in sight all the same', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 3, 2);
  const last = working.getByRole('region', { name: 'TAPE.ROUND' });
  await last.getByText('Take care').waitFor();
  const inner = working.getByRole('group').filter({ hasText: 'BLANK.ROUND' });
  const drawing = inner.getByRole('img');
  expect(await drawing.isVisible()).toBe(false);
  await inner.locator('summary').press('Enter');
  await drawing.waitFor();
  await inner.getByText('Blank width').waitFor();
  await expectAccessible(page, '.working');
});

test('an IF says which way it went', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 3);
  await expect.poll(() => working.locator('.decisions').textContent()).toBe('because Pieces!B2>14 holds');
});

test('a check that stops says so in a word, a sign and its sentence', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 4);
  await expect
    .poll(() => working.locator('.verdict').textContent())
    .toMatch(/✕\s*Stop\s*the sheet is 40 in wide/);
});

test('a figure that fails says why, and leads to the cell where it began', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 2, 2);
  const began = working.getByRole('button', { name: 'Go to Round!B3, where it began' });
  await began.press('Enter');
  await working.getByRole('heading', { name: /Working · B3/ }).waitFor();
  await working.locator('.fault-box').getByText('No figure').waitFor();
  await expectAccessible(page, '.working');
});

test('a given says what it asks, what it may be and why', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Pieces', 1, 1);
  await working.getByText('Diameter of the pipe').waitFor();
  expect(await working.locator('.given-question').textContent()).toMatch(
    /3″ to 60″\s*because the rolls take no other/,
  );
});

test('links are followed with the keyboard, there and back', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByRole('button', { name: /^Pieces!B2/ }).press('Enter');
  await page.getByRole('heading', { name: 'Pieces', level: 1 }).waitFor();
  // Whoever follows a link stands in the cell that it leads to.
  await page.locator('.app-sheet [row-id="1"] [col-id="c1"]:focus').waitFor();
  await working.getByRole('button', { name: /^Round!B2/ }).press('Enter');
  await page.getByRole('heading', { name: 'Round', level: 1 }).waitFor();
  await page.locator('.app-sheet [row-id="1"] [col-id="c1"]:focus').waitFor();
  await working.getByText('Girth of S1 trunk').waitFor();
});

test('nothing of the working runs out of its panel, on a small screen or at 200 % zoom', async () => {
  for (const size of [
    { width: 1024, height: 768 },
    { width: 720, height: 450 },
  ]) {
    const { page, working, close } = await openWorkbook(size);
    await choose(page, 'Round', 1, 2);
    await working.getByRole('region', { name: 'TAPE.ROUND' }).waitFor();
    const wide = await working.evaluate((panel) =>
      [...panel.querySelectorAll('*')]
        .filter((one) => one.getBoundingClientRect().right > panel.getBoundingClientRect().right + 1)
        .map((one) => one.outerHTML),
    );
    expect(wide).toEqual([]);
    await close();
  }
});
