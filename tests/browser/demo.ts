import type { Locator, Page } from 'playwright-core';
import { openPage } from './support/page.ts';
import type { Window, WindowOptions } from './support/window.ts';

/** The page as a new browser first shows it: the demo job. */
export interface DemoPage extends Window {
  readonly working: Locator;
  readonly goTo: (sheet: string) => Promise<void>;
  /** A cell of the open sheet by its place: `C2`. */
  readonly cell: (place: string) => Locator;
  /** What a cell shows, a fraction as `5/16`. */
  readonly shows: (place: string) => Promise<string>;
  readonly type: (place: string, typed: string) => Promise<void>;
}

export async function openDemo(options: WindowOptions = {}): Promise<DemoPage> {
  const window = await openPage(options);
  const { page } = window;
  await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
  const cell = (place: string) => page.locator(selectorOf(place));
  return {
    ...window,
    working: page.getByRole('region', { name: 'Working' }),
    goTo: (sheet) => goTo(page, sheet),
    cell,
    shows: async (place) => plain((await cell(place).locator('.sheet-cell-words').textContent()) ?? ''),
    type: async (place, typed) => {
      await cell(place).click();
      await page.keyboard.type(typed);
      await page.keyboard.press('Enter');
    },
  };
}

async function goTo(page: Page, sheet: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Sheets of this workbook' })
    .getByRole('button', { name: sheet })
    .click();
  await page.getByRole('heading', { level: 1, name: sheet }).waitFor();
}

function selectorOf(place: string): string {
  const column = place.charCodeAt(0) - 65;
  return `[row-id="${Number(place.slice(1)) - 1}"] [col-id="c${column}"]`;
}

function plain(text: string): string {
  return text.replaceAll('⁄', '/').replace(/\s+/g, ' ').trim();
}
