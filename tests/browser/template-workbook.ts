import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { openPage } from './support/page.ts';
import type { Window, WindowOptions } from './support/window.ts';

const heading = (content: string): Cell => ({ content, role: 'heading', locked: true });
const words = (content: string): Cell => ({ content, role: 'text', locked: true });
const tape = { type: 'tape', denominator: 16, round: 'up', feet: false } as const;

function line(mark: string, diameter: number, row: number): readonly Cell[] {
  return [
    words(mark),
    {
      content: diameter,
      role: 'given',
      unit: 'in',
      format: tape,
      question: { asks: 'How wide across?', least: 2, most: 60, help: 'Measure inside the metal.' },
    },
    { content: { formula: `PI()*B${row}+lap` }, role: 'figured', unit: 'in', format: tape, locked: true },
    {
      content: { formula: `IF(C${row}>120,"stop: longer than a sheet","holds")` },
      role: 'check',
      locked: true,
    },
  ];
}

/** A job of two pipes, all but its givens locked. */
export function lockedJob(): Workbook {
  return {
    id: 'locked-job',
    title: 'Foxglove Close, house 3',
    kind: 'job',
    template: { name: 'Two pipes', revision: 2 },
    sheets: [
      {
        id: 'pieces',
        name: 'Pieces',
        says: 'Fill the underlined cells.',
        columns: [14, 12, 12, 22].map((width) => ({ width })),
        rows: [
          ['Piece', 'Diameter', 'Girth', 'Fits'].map(heading),
          line('S1 trunk', 16, 2),
          line('S2 trunk', 12, 3),
        ],
      },
      {
        id: 'allowances',
        name: 'Allowances',
        says: 'What this shop allows.',
        columns: [{ width: 16 }, { width: 10 }],
        rows: [
          [
            { content: 'Lap', role: 'text' },
            { content: 2, role: 'text', unit: 'in', format: tape },
          ],
        ],
      },
    ],
    names: {
      lap: { sheet: 'allowances', range: { from: { row: 0, column: 1 }, to: { row: 0, column: 1 } } },
    },
    examples: [],
  };
}

/** The template of that job, at its revision 2. */
export function twoPipes(): Workbook {
  const { sheets, names } = lockedJob();
  return {
    id: 'two-pipes',
    title: 'Two pipes',
    kind: 'template',
    template: { name: 'Two pipes', revision: 2 },
    revisions: [{ revision: 2, says: 'The first to be used.' }],
    sheets,
    names,
    examples: [],
  };
}

export async function openWorkbook(page: Window['page'], workbook: Workbook): Promise<void> {
  await openFileText(page, writeWorkbookFile({ workbook, values: noValues }));
  await page.locator('.header-title').filter({ hasText: workbook.title }).waitFor();
}

export async function openFileText(page: Window['page'], text: string): Promise<void> {
  await page.getByLabel('Workbook file', { exact: true }).setInputFiles({
    name: 'one.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

export async function openJob(options: WindowOptions = {}) {
  const window = await openPage(options);
  const { page } = window;
  page.setDefaultTimeout(12000);
  await openWorkbook(page, lockedJob());
  await page
    .getByRole('gridcell', { name: /Girth of S1 trunk/ })
    .filter({ hasText: '52 5⁄16″' })
    .waitFor();
  const cell = (place: string) => {
    const [, letter = 'A', row = '1'] = /^([A-Z])(\d+)$/.exec(place) ?? [];
    return page.locator(`[row-id="${Number(row) - 1}"] [col-id="c${letter.charCodeAt(0) - 65}"]`);
  };
  return { ...window, cell };
}
