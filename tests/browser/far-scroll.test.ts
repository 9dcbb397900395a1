import { expect, test } from 'vitest';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { openPage } from './support/page.ts';
import { openWorkbook } from './template-workbook.ts';

const columns = 8;

/** An invented job of many rows. Each cell holds a number that tells its row and its column: 1403 stands in D15. */
const workbook: Workbook = {
  id: 'far-scroll',
  title: 'Foxglove Close, all pieces',
  kind: 'job',
  sheets: [
    {
      id: 'pieces',
      name: 'Pieces',
      says: 'All pieces of the close.',
      columns: Array.from({ length: columns }, () => ({ width: 12 })),
      rows: Array.from({ length: 2000 }, (_, row) =>
        Array.from(
          { length: columns },
          (_, column): Cell => ({ content: row * 100 + column, role: 'given' }),
        ),
      ),
    },
  ],
  names: {},
  examples: [],
};

interface InSight {
  readonly row: number;
  readonly column: number;
  readonly words: string | undefined;
  readonly said: string | undefined;
}

/** As text, since it runs in the page: what stands in the cells in sight. */
const cellsInSight = `[...document.querySelectorAll('[row-id] [role="gridcell"]')].map((cell) => ({
  row: Number(cell.closest('[row-id]').getAttribute('row-id')),
  column: Number(cell.getAttribute('col-id').slice(1)),
  words: cell.querySelector('.sheet-cell-words')?.textContent,
  said: cell.querySelector('.sheet-cell-said')?.textContent,
}))`;

/** Scrolls to `top` and looks at the cells in the same frame, before it is drawn. */
const jumpTo = (top: number) => `new Promise((done) => {
  document.querySelector('.ag-grid-viewport').scrollTop = ${top};
  requestAnimationFrame(() => done(${cellsInSight}));
})`;

test('on a slow machine a far jump brings its cells over several frames, and every one of them is right', async () => {
  const { page, context, faults } = await openPage();
  await openWorkbook(page, workbook);
  await page.getByRole('gridcell', { name: / A2$/ }).waitFor();
  await (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 20 });
  const isBlank = ({ words }: InSight) => words === undefined;
  for (const top of [20_000, 40_000, 5_000]) {
    const first: readonly InSight[] = await page.evaluate(jumpTo(top));
    expect(first.filter(isBlank).length).toBeGreaterThan(20);
    await expect
      .poll(async () => ((await page.evaluate(cellsInSight)) as InSight[]).filter(isBlank).length)
      .toBe(0);
    const all: readonly InSight[] = await page.evaluate(cellsInSight);
    const filled = all.filter(({ column }) => column < columns);
    expect(filled.length).toBeGreaterThan(80);
    for (const { row, column, words, said } of filled) {
      expect(Number(words?.replaceAll(/\D/g, ''))).toBe(row * 100 + column);
      expect(said).toContain(`${String.fromCharCode(65 + column)}${row + 1}`);
    }
  }
  expect(faults).toEqual([]);
});

test('keys go on from the cell where the person is, however far it was scrolled out of sight', async () => {
  const { page, faults } = await openPage();
  await openWorkbook(page, workbook);
  const here = () =>
    page.evaluate(() => document.activeElement?.querySelector('.sheet-cell-said')?.textContent ?? '');
  await page.getByRole('gridcell', { name: / B2$/ }).click();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  expect(await here()).toMatch(/ B4$/);
  await page.mouse.wheel(0, 20_000);
  await page.getByRole('gridcell', { name: / B600$/ }).waitFor();
  expect(await here()).toMatch(/ B4$/);
  await page.keyboard.press('ArrowDown');
  expect(await here()).toMatch(/ B5$/);
  await expect.poll(() => page.getByRole('gridcell', { name: / B600$/ }).count()).toBe(0);
  expect(faults).toEqual([]);
});
