import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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

/** Away from the ports of `npm start` and `npm run dev`. */
const firstPort = 4300;

/** Builds the page, serves it and finds a browser. The page goes into a folder of its own: two runs side by side leave each
 *  other's page alone, and so does a test the page that somebody is looking at. */
export async function openSite(): Promise<{
  readonly site: Site;
  /** Where the built page stands. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}> {
  const chromium = await findChromium();
  const folder = await mkdtemp(join(tmpdir(), 'stretchout-page-'));
  await build({ root, logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } });
  const served = await serve(folder, { from: firstPort });
  return {
    site: { address: served.address, chromium },
    folder,
    close: async () => {
      await served.close();
      await rm(folder, { recursive: true });
    },
  };
}
