import type { Browser } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import { launchBrowser, openWindow, type Window, type WindowOptions } from './window.ts';

let browser: Promise<Browser> | null = null;
const opened: Window[] = [];

/** Opens the page for a test. Windows left open are closed after the last test of the file. */
export async function openPage(options: WindowOptions = {}): Promise<Window> {
  const site = inject('site');
  browser ??= launchBrowser(site.chromium);
  const window = await openWindow(site, await browser, options);
  opened.push(window);
  return window;
}

afterAll(async () => {
  await Promise.all(opened.map((window) => window.close()));
  await (await browser)?.close();
});
