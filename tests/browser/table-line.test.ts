import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';

async function openDemo(options: Parameters<typeof openPage>[0] = {}) {
  const window = await openPage(options);
  const { page } = window;
  const cell = (place: string) =>
    page.locator(`[row-id="${Number(place.slice(1)) - 1}"] [col-id="c${place.charCodeAt(0) - 65}"]`);
  const goTo = async (name: string) => {
    await page
      .getByRole('navigation', { name: 'Sheets' })
      .getByRole('button', { name: new RegExp(`^${name}`) })
      .click();
    await page.getByRole('heading', { level: 1, name }).waitFor();
  };
  const words = async (place: string) => (await cell(place).locator('.sheet-cell-words').textContent()) ?? '';
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  return { ...window, cell, goTo, words };
}

test('a line like another one is put in by key, and into every table that follows; it waits to be filled in', async () => {
  const { page, cell, goTo, words, faults } = await openDemo();
  await goTo('Blanks');
  const second = await words('A4');
  await goTo('Pieces');
  await cell('A3').click();
  await page.keyboard.press('Alt+Shift+ArrowDown');
  const said = page.locator('.sheet-grid-said');
  await expect
    .poll(() => said.textContent())
    .toContain('The same was done in Blanks, Wrap and Seal and fasten, since these tables go line by line.');
  await expectAccessible(page, '.sheet-grid');
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('title')).toMatch(
    /a line like row 3 of Pieces/,
  );
  await page.keyboard.type('S9');
  for (const typed of ['round', '16', '', '60']) {
    await page.keyboard.press('Tab');
    if (typed !== '') await page.keyboard.type(typed);
  }
  await page.keyboard.press('Enter');
  expect(await words('A4')).toBe('S9');
  await goTo('Blanks');
  await expect.poll(() => words('A4')).toBe('S9');
  expect(await words('A5')).toBe(second);
  expect(faults).toEqual([]);
});

test('the menu says where else a line is put in and taken out', async () => {
  const { page, cell, goTo, words } = await openDemo();
  await goTo('Pieces');
  const third = await words('A4');
  await cell('A3').click();
  await page.keyboard.press('Shift+F10');
  const menu = page.getByRole('menu', { name: 'Rows and columns' });
  expect(
    await menu.getByRole('menuitem', { name: 'Put in a line like row 3, on 3 other sheets too' }).count(),
  ).toBe(1);
  await menu.getByRole('menuitem', { name: 'Take out row 3, on 3 other sheets too' }).click();
  await expect.poll(() => words('A3')).toBe(third);
  await goTo('Blanks');
  await expect.poll(() => words('A3')).toBe(third);
  await page.keyboard.press('Control+z');
  await goTo('Pieces');
  await expect.poll(() => words('A4')).toBe(third);
});

test('a bare row put in between says what would go wrong, and offers to take it back', async () => {
  const { page, cell, goTo, words } = await openDemo();
  await goTo('Pieces');
  const second = await words('A3');
  await cell('A3').click();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menuitem', { name: 'Put in a row above' }).click();
  const said = page.locator('.sheet-grid-said');
  await expect
    .poll(() => said.textContent())
    .toMatch(/Taps!.* finds a line in piece_.* no longer go together/);
  await said.getByRole('button', { name: /^Take back putting in row 3/ }).click();
  await expect.poll(() => words('A3')).toBe(second);
});
