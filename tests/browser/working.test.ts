import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { exampleWraps } from '../../src/catalogue/wraps.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { diameter, formula, heading, sheetOf, words } from '../workbook/sample.ts';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';

const inches: Partial<Cell> = {
  unit: 'in',
  format: { type: 'tape', denominator: 16, round: 'up', feet: false },
};

/** Two pieces of pipe on one sheet, what becomes of them on another. */
const workbook: Workbook = {
  id: 'working',
  title: 'Alder Court, lot 3',
  kind: 'job',
  sheets: [
    sheetOf('pieces', 'Pieces', [
      [heading('Piece'), heading('Diameter')],
      [words('S1 trunk'), diameter],
      [words('S2 trunk'), { ...diameter, content: 12 }],
    ]),
    sheetOf('round', 'Round', [
      [heading('Piece'), heading('Girth'), heading('On the tape'), heading('With a lap'), heading('Check')],
      [
        words('S1 trunk'),
        formula('PI()*Pieces!B2', inches),
        formula('TAPE.ROUND(B2)', inches),
        formula('IF(Pieces!B2>14, B2+lap, B2)', inches),
        formula('IF(B2<40,"holds","stop: the sheet is 40 in wide")', { role: 'check' }),
      ],
      [words('S2 trunk'), formula('B2/0', inches), formula('B3+1', inches)],
      [
        words('S3 trunk'),
        formula('WRAP.STRETCHOUT("round", Pieces!B2, , "R-8 wrap", wraps)', inches),
        formula('TAPE.ROUND(BLANK.ROUND(Pieces!B2, 1), 8)', inches),
      ],
    ]),
    sheetOf(
      'wraps',
      'Wraps',
      exampleWraps.map((row) => row.map((content): Cell => ({ content, role: 'text' }))),
    ),
  ],
  names: {
    wraps: { sheet: 'wraps', range: { from: { row: 0, column: 0 }, to: { row: 6, column: 9 } } },
    lap: { sheet: 'pieces', range: { from: { row: 2, column: 1 }, to: { row: 2, column: 1 } } },
  },
  examples: [],
};

async function openWorkbook(size?: { width: number; height: number }) {
  const window = await openPage(size ? { size } : {});
  const { page } = window;
  await page.locator('input[type=file]').setInputFiles({
    name: 'alder.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeWorkbookFile({ workbook, values: noValues })),
  });
  await page.getByRole('heading', { name: 'Pieces', level: 1 }).waitFor();
  return { ...window, working: page.getByRole('region', { name: 'Working', exact: true }) };
}

async function choose(page: Page, sheet: string, row: number, column: number): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Sheets of this workbook' })
    .getByRole('button', { name: sheet })
    .click();
  await page.locator(`.app-sheet [row-index="${row}"] [col-id="c${column}"]`).click();
}

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
  await page.locator('.app-sheet [row-index="1"] [col-id="c1"]:focus').waitFor();
  await working.getByRole('button', { name: /^Round!B2/ }).press('Enter');
  await page.getByRole('heading', { name: 'Round', level: 1 }).waitFor();
  await page.locator('.app-sheet [row-index="1"] [col-id="c1"]:focus').waitFor();
  await working.getByText('Girth of S1 trunk').waitFor();
});

test('a formula is changed with help: words are completed, arguments explained, the new value read out', async () => {
  const { page, working, faults } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByRole('button', { name: /PI\(\)/ }).press('Enter');
  const editor = working.getByRole('textbox', { name: 'Formula' });
  await editor.waitFor();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('TAPE.RO');
  await working.getByRole('option', { name: /TAPE\.ROUND/ }).waitFor();
  await page.keyboard.press('Tab');
  expect(await editor.textContent()).toMatch(/^TAPE\.ROUND\(/);
  await working.getByText(/length in inches, -12000 to 12000/).waitFor();
  await page.keyboard.type('B3x');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('Pieces!B2, 16, ');
  await expect.poll(() => working.locator('.signature-note strong').first().textContent()).toBe('round');
  await page.keyboard.type('"nearest"');
  await page.keyboard.press('Enter');
  await expect
    .poll(() => working.locator('.working-figure .visually-hidden').textContent())
    .toBe('16 inches');
  await expect
    .poll(() => working.getByRole('status').first().textContent())
    .toBe('Girth of S1 trunk: 16 inches');
  await working.getByRole('button', { name: /TAPE\.ROUND/ }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('formula-open');
  expect(faults).toEqual([]);
});

test('a refused formula says why and keeps what was written, also while one looks at another cell', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 1, 1);
  await working.getByRole('button', { name: /PI\(\)/ }).click();
  const editor = working.getByRole('textbox', { name: 'Formula' });
  await editor.waitFor();
  await page.keyboard.type('*2 + GIRTH(3)');
  await page.keyboard.press('Enter');
  await working.getByRole('alert').getByText('GIRTH').waitFor();
  expect(await editor.textContent()).toBe('PI()*Pieces!B2*2 + GIRTH(3)');
  await expectAccessible(page, '.working');
  await page.locator('.app-sheet [row-index="1"] [col-id="c3"]').click();
  await working.getByRole('heading', { name: /Working · D2/ }).waitFor();
  await page.locator('.app-sheet [row-index="1"] [col-id="c1"]').click();
  await expect.poll(() => editor.textContent()).toBe('PI()*Pieces!B2*2 + GIRTH(3)');
  await working.getByText('is not in the cell yet').waitFor();
  await editor.press('Escape');
  await working.getByRole('button', { name: /PI\(\)/ }).waitFor();
});

test('the panel keeps its place when the figure of the same cell changes, and begins anew at another', async () => {
  const { page, working } = await openWorkbook({ width: 1280, height: 500 });
  await choose(page, 'Round', 1, 2);
  await working.getByRole('button', { name: /TAPE\.ROUND/ }).press('Enter');
  await working.getByRole('textbox', { name: 'Formula' }).waitFor();
  await page.keyboard.type('+1');
  await page.keyboard.press('Enter');
  const figure = working.locator('.working-figure .visually-hidden');
  await expect.poll(() => figure.textContent()).toBe('51 and 5/16 inches');
  await working.evaluate((panel) => {
    panel.scrollTop = 150;
  });
  await page.keyboard.press('Control+z');
  await expect.poll(() => figure.textContent()).toBe('50 and 5/16 inches');
  expect(await working.evaluate((panel) => panel.scrollTop)).toBe(150);
  await page.locator('.app-sheet [row-index="1"] [col-id="c1"]').click();
  await working.getByRole('heading', { name: /Working · B2/ }).waitFor();
  expect(await working.evaluate((panel) => panel.scrollTop)).toBe(0);
});

test('a cell without a formula takes one', async () => {
  const { page, working } = await openWorkbook();
  await choose(page, 'Round', 4, 1);
  await working.getByRole('button', { name: 'Write a formula here' }).press('Enter');
  await working.getByRole('textbox', { name: 'Formula' }).waitFor();
  await page.keyboard.type('=2+3');
  await page.keyboard.press('Enter');
  await expect.poll(() => working.locator('.working-figure').textContent()).toBe('5');
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
