import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { serve } from '../../../scripts/serve.ts';
import { type Chromium, findChromium } from './chromium.ts';

/** The page as people get it, at an address, and a browser to open it with. Plain data: it goes to test processes. */
export interface Site {
  readonly address: string;
  readonly chromium: Chromium;
}

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** Apart from `dist`, so that a test never changes the page that somebody is looking at. */
const folder = `${root}.cache/page`;

/** Away from the ports of `npm start` and `npm run dev`. */
const firstPort = 4300;

/** Builds the page, serves it and finds a browser. */
export async function openSite(): Promise<{
  readonly site: Site;
  /** Where the built page stands. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}> {
  const chromium = await findChromium();
  await build({ root, logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } });
  const served = await serve(folder, { from: firstPort });
  return { site: { address: served.address, chromium }, folder, close: served.close };
}
