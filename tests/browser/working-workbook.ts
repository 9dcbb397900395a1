import type { Locator, Page } from 'playwright-core';
import { exampleWraps } from '../../src/catalogue/wraps.ts';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { diameter, formula, heading, sheetOf, words } from '../workbook/sample.ts';
import { openPage } from './support/page.ts';
import type { Window } from './support/window.ts';

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

export interface WorkingPage extends Window {
  readonly working: Locator;
}

/** Opens the page with the job above in it. */
export async function openWorkbook(size?: {
  readonly width: number;
  readonly height: number;
}): Promise<WorkingPage> {
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

/** Chooses a cell, rows and columns counted from 0. */
export async function choose(page: Page, sheet: string, row: number, column: number): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Sheets of this workbook' })
    .getByRole('button', { name: sheet })
    .click();
  await page.locator(`.app-sheet [row-id="${row}"] [col-id="c${column}"]`).click();
}
