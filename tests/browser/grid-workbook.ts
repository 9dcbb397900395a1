import type { Locator, Page } from 'playwright-core';
import type { Cell, Workbook } from '../../src/workbook/document.ts';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import { noValues } from '../../src/workbook/values.ts';
import { openPage } from './support/page.ts';
import type { Window, WindowOptions } from './support/window.ts';

const tape = { type: 'tape', denominator: 16, round: 'up', feet: false } as const;
const heading = (content: string): Cell => ({ content, role: 'heading' });

/** An invented job of two pieces: givens of every kind, a figured length, a check and a fault. */
const workbook: Workbook = {
  id: 'grid-test',
  title: 'Foxglove Close, house 3',
  kind: 'job',
  template: { name: 'Two pipes', revision: 2 },
  sheets: [
    {
      id: 'pieces',
      name: 'Pieces',
      says: 'Fill the underlined cells.',
      columns: [14, 12, 12, 12, 12, 16].map((width) => ({ width })),
      rows: [
        ['Piece', 'Diameter', 'Length', 'Wrap', 'Girth', 'Fits'].map(heading),
        piece('S1 trunk', 16, 2),
        piece('S2 trunk', null, 3),
      ],
    },
    {
      id: 'wrap',
      name: 'Wrap',
      says: 'Nothing to fill here.',
      columns: [{ width: 20 }, { width: 12 }],
      rows: [
        [
          { content: 'Twice the first girth', role: 'text' },
          { content: { formula: 'Pieces!E2*2' }, role: 'figured', unit: 'in', format: tape },
        ],
      ],
    },
    {
      id: 'notes',
      name: 'Notes',
      says: 'For whoever comes next.',
      columns: [{ width: 40 }],
      rows: [[{ content: 'The ladder stands behind the garage.', role: 'text' }]],
    },
    {
      id: 'allowances',
      name: 'Allowances',
      says: 'What this shop allows.',
      columns: [{ width: 16 }, { width: 10 }],
      rows: [
        [
          { content: 'Lap', role: 'text' },
          { content: 2, role: 'given', unit: 'in', format: tape },
        ],
      ],
    },
  ],
  names: {},
  examples: [],
};

function piece(name: string, diameter: number | null, row: number): readonly Cell[] {
  return [
    { content: name, role: 'text' },
    {
      content: diameter,
      role: 'given',
      unit: 'in',
      format: tape,
      question: { asks: 'How wide across?', least: 2, most: 60, why: 'the rolls take no more' },
    },
    { content: 174.5, role: 'given', unit: 'in', format: { ...tape, feet: true } },
    {
      content: 'R-8 wrap',
      role: 'given',
      question: { asks: 'Which wrap?', choices: ['R-6 wrap', 'R-8 wrap', 'no wrap'] },
    },
    { content: { formula: `PI()*B${row}` }, role: 'figured', unit: 'in', format: tape },
    { content: { formula: `IF(B${row}>12,"holds","look: small")` }, role: 'check' },
  ];
}

export interface GridPage extends Window {
  /** `B2` on the open sheet. */
  readonly cell: (place: string) => Locator;
  /** The visible words of a cell, a fraction as `1⁄2`. */
  readonly words: (place: string) => Promise<string>;
  /** The place of the cell where the person is. */
  readonly here: () => Promise<string>;
  readonly keys: (...pressed: readonly string[]) => Promise<void>;
  readonly field: Locator;
  /** A sheet in the list of sheets. */
  readonly sheet: (name: string) => Locator;
}

/** Opens the page with the job above, figured by the engine, and the first given selected. */
export async function openGrid(options: WindowOptions = {}): Promise<GridPage> {
  const window = await openPage(options);
  const { page } = window;
  await page.getByLabel('Workbook file').setInputFiles({
    name: 'foxglove.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeWorkbookFile({ workbook, values: noValues })),
  });
  const cell = (place: string) => page.locator(selectorOf(place));
  await page
    .getByRole('gridcell', { name: /Girth of S1 trunk/ })
    .filter({ hasText: '50 5⁄16″' })
    .waitFor();
  await cell('B2').click();
  return {
    ...window,
    cell,
    words: async (place) => (await cell(place).locator('.sheet-cell-words').textContent()) ?? '',
    here: () => placeOf(page),
    keys: async (...pressed) => {
      for (const key of pressed) await page.keyboard.press(key);
    },
    field: page.locator('.cell-editor input'),
    sheet: (name) =>
      page.getByRole('navigation', { name: 'Sheets' }).getByRole('button', { name: new RegExp(`^${name}`) }),
  };
}

function selectorOf(place: string): string {
  const column = place.charCodeAt(0) - 65;
  return `[row-id="${Number(place.slice(1)) - 1}"] [col-id="c${column}"]`;
}

async function placeOf(page: Page): Promise<string> {
  const selected = page.locator('[role="gridcell"][data-here]');
  const name = await selected.locator('.sheet-cell-said').textContent();
  return name?.split(', ').at(-1) ?? '';
}
