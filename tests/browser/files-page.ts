import type { Page } from 'playwright-core';
import { type DemoPage, openDemo } from './demo.ts';
import type { WindowOptions } from './support/window.ts';

export interface FilesPage extends DemoPage {
  /** Opens the page of files and the shelf, from the sheet that is open. */
  readonly files: () => Promise<void>;
  readonly press: (name: string | RegExp) => Promise<void>;
  /** What the page says was done. */
  readonly said: () => Promise<string>;
  /** Presses a button and gives the file that comes of it. */
  readonly handedOut: (button: string) => Promise<{ readonly name: string; readonly path: string }>;
  /** Chooses a list to bring in. */
  readonly bring: (name: string, text: string | Uint8Array) => Promise<void>;
}

export async function openFiles(options: WindowOptions = {}): Promise<FilesPage> {
  const demo = await openDemo(options);
  const { page } = demo;
  const press = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' }).click();
  return {
    ...demo,
    press,
    files: async () => {
      await press('Files and shelf');
      await page.getByRole('heading', { level: 1, name: 'Files and shelf' }).waitFor();
    },
    said: async () => (await page.locator('.files-said').textContent()) ?? '',
    handedOut: async (button) => {
      const coming = page.waitForEvent('download');
      await press(button);
      const download = await coming;
      return { name: download.suggestedFilename(), path: await download.path() };
    },
    bring: (name, text) =>
      page
        .getByLabel('List to bring in')
        .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) }),
  };
}

/** A new job from a template that came with the program, open in the grid. */
export async function beginJob(template: string): Promise<FilesPage> {
  const files = await openFiles();
  await files.files();
  await files.press(new RegExp(`^New job from ${template}\\.`));
  await files.page.getByText(`from ${template}, revision`).waitFor();
  return files;
}

export function quietLine(page: Page): Promise<string | null> {
  return page.locator('.header-quiet').textContent();
}
