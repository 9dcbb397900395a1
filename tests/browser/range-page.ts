import type { Locator } from 'playwright-core';
import { type GridPage, openGrid } from './grid-workbook.ts';
import type { WindowOptions } from './support/window.ts';

export interface RangePage extends GridPage {
  /** The selected cells as they are read out: `B2 to C5, 8 cells`. */
  readonly selection: () => Promise<string>;
  /** How many cells on the page are told to be selected. */
  readonly selectedCount: () => Promise<number>;
  /** From the middle of one place to the middle of another with the button held down. */
  readonly drag: (from: Locator, to: Locator) => Promise<void>;
  readonly rowNumber: (row: number) => Locator;
  readonly columnLetter: (letter: string) => Locator;
  /** Why something was not done. */
  readonly complaint: () => Promise<string>;
  /** What stands on the clipboard. */
  readonly clipboard: () => Promise<string>;
  /** Puts a text onto the clipboard, as another program would. */
  readonly copyElsewhere: (text: string) => Promise<void>;
}

/** Opens the job of two pieces, with leave to look at the clipboard. */
export async function openRanges(options: WindowOptions = {}): Promise<RangePage> {
  const grid = await openGrid({
    ...options,
    context: { permissions: ['clipboard-read', 'clipboard-write'], ...options.context },
  });
  const { page } = grid;
  return {
    ...grid,
    selection: async () => (await page.locator('.sheet-grid > p[role="status"]').textContent()) ?? '',
    selectedCount: () => page.locator('[role="gridcell"][aria-selected="true"]').count(),
    drag: async (from, to) => {
      const [start, end] = [await middleOf(from), await middleOf(to)];
      await page.mouse.move(start.x, start.y);
      await page.mouse.down();
      await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2);
      await page.mouse.move(end.x, end.y);
      await page.mouse.up();
    },
    rowNumber: (row) => page.locator(`[row-id="${row - 1}"] [col-id="row"]`),
    columnLetter: (letter) => page.locator(`[role="columnheader"][col-id="c${letter.charCodeAt(0) - 65}"]`),
    complaint: async () => (await page.locator('.sheet-grid-complaint').textContent()) ?? '',
    clipboard: () => page.evaluate(() => navigator.clipboard.readText()),
    copyElsewhere: (text) => page.evaluate((written) => navigator.clipboard.writeText(written), text),
  };
}

async function middleOf(place: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await place.boundingBox();
  if (!box) throw new Error('The place to press is not on the page.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
