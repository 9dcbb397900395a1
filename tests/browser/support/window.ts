import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { type Chromium, launchOptions } from './chromium.ts';
import type { Site } from './site.ts';

export interface WindowOptions {
  /** A folder that keeps the browser's storage on disk from one window to the next; without it all is forgotten. */
  readonly profile?: string;
  readonly size?: { readonly width: number; readonly height: number };
  /** What to open, under the page's address. */
  readonly path?: string;
  /** What stands for the browser's own window for choosing files, which no test can press in: by default none, as in the
   *  browsers that lack it; `own files` chooses in the page's private folder, whose files and handles are real. */
  readonly picker?: 'none' | 'own files';
  /** The rest of what a browser can be told: color scheme, permissions and so on. */
  readonly context?: BrowserContextOptions;
}

/** A browser window with the page open in it. */
export interface Window {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong in the page unasked: thrown errors, errors on the console, things stopped by the policy. */
  readonly faults: readonly string[];
  readonly close: () => Promise<void>;
  /** Ends the browser at once, with no leave to finish anything, as a power cut would. Needs a profile. */
  readonly kill: () => Promise<void>;
}

const usualSize = { width: 1440, height: 900 };

export function launchBrowser(found: Chromium): Promise<Browser> {
  return chromium.launch(launchOptions(found));
}

/** Opens the page in a window of `browser`, or in a browser of its own where a profile is asked for. */
export async function openWindow(site: Site, browser: Browser, options: WindowOptions = {}): Promise<Window> {
  const told: BrowserContextOptions = {
    locale: 'en-US',
    viewport: options.size ?? usualSize,
    ...options.context,
  };
  const context =
    options.profile === undefined
      ? await browser.newContext(told)
      : await chromium.launchPersistentContext(options.profile, { ...launchOptions(site.chromium), ...told });
  const faults: string[] = [];
  context.on('weberror', (fault) => faults.push(String(fault.error())));
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  await context.addInitScript(options.picker === 'own files' ? pickOwnFiles : pickNothing);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(new URL(options.path ?? '', site.address).href);
  return {
    page,
    context,
    faults,
    close: () => context.close(),
    kill: async () => {
      if (options.profile === undefined) throw new Error('Only a window with a profile can be killed.');
      const own = context.browser();
      if (own === null) throw new Error('This browser cannot be reached to be killed.');
      const gone = new Promise((resolve) => own.once('disconnected', resolve));
      const session = await own.newBrowserCDPSession();
      // The browser cannot answer that it died.
      session.send('Browser.crash').catch(() => {});
      await gone;
    },
  };
}

function pickNothing(): void {
  Object.assign(window, { showOpenFilePicker: undefined, showSaveFilePicker: undefined });
}

/** A person who always takes the name that is offered, and opens the file that was named last. */
function pickOwnFiles(): void {
  const chosen = async (name: string, create: boolean) => {
    localStorage.setItem('picked', `${localStorage.getItem('picked') ?? ''}${name}\n`);
    return (await navigator.storage.getDirectory()).getFileHandle(name, { create });
  };
  Object.assign(window, {
    showSaveFilePicker: ({ suggestedName }: { suggestedName: string }) => chosen(suggestedName, true),
    showOpenFilePicker: async () => [await chosen(localStorage.getItem('open') ?? '', false)],
  });
}
