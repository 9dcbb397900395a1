import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { writeWorkbookFile } from '../../src/workbook/file.ts';
import type { Site } from '../browser/support/site.ts';
import { openWindow } from '../browser/support/window.ts';
import type { Figure } from './figure.ts';
import { largeKept, largeRows } from './large-workbook.ts';
import { median } from './median.ts';

const rounds = 3;
const edits = 9;

/** What a person feels of the largest workbook: opened from this browser's storage, scrolled and edited. */
export async function measureLarge(site: Site, browser: Browser, folder: string): Promise<readonly Figure[]> {
  const kept = await largeKept();
  const { page, context } = await openWindow(site, browser);
  const place = await mkdtemp(join(tmpdir(), 'stretchout-bench-'));
  const file = join(place, 'large.stretchout.json');
  await writeFile(file, writeWorkbookFile(kept));
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor({ timeout: 120_000 });
  await page.getByRole('gridcell', { name: / A2$/ }).waitFor();
  await rm(place, { recursive: true });
  await isCurrent(page);
  // So long until the workbook rests on the shelf.
  await page.waitForTimeout(4000);
  await context.addInitScript(markLarge);
  const openings: { readonly painted: number; readonly asked: number; readonly current: number }[] = [];
  for (let round = 0; round < rounds; round += 1) {
    await page.reload();
    await isCurrent(page);
    openings.push(
      await page.evaluate(() => ({
        painted: performance.getEntriesByName('stretchout cells painted')[0]?.startTime ?? Number.NaN,
        asked: performance.getEntriesByName('stretchout engine asked')[0]?.startTime ?? Number.NaN,
        current: performance.getEntriesByName('stretchout figures current')[0]?.startTime ?? Number.NaN,
      })),
    );
  }
  const bare = await bareBuild(page, folder);
  const scrolled = await scroll(page);
  const shown = await edit(page);
  const took = shown.map((one) => one.milliseconds);
  const frames = shown.map((one) => one.frames);
  await context.close();
  const live = median(openings.map(({ asked, current }) => current - asked));
  const about = `26 columns x ${largeRows.toLocaleString('en-US')} rows, 100,000 formulas`;
  const ms = (name: string, value: number): Figure => ({ name, value, unit: 'ms' });
  return [
    ms(`${about}: painted from stored values, after navigation`, median(openings.map((one) => one.painted))),
    ms('large: from asking for the engine to values live again', live),
    ms('large: the bare engine builds the same', bare),
    { name: 'large: values live again over bare build', value: live / bare, unit: 'times' },
    ms(
      'large: frame while scrolling, 95 in 100 within',
      scrolled.frames[Math.floor(scrolled.frames.length * 0.95)] ?? Number.NaN,
    ),
    ms('large: frame while scrolling, longest', scrolled.frames.at(-1) ?? Number.NaN),
    { name: 'large: frames of over 50 ms by the count of the browser', value: scrolled.long, unit: 'frames' },
    ms('large: edit with 100 dependants until painted, median', median(took)),
    ms('large: the same, slowest', Math.max(...took)),
    { name: 'large: the same, frames drawn, median', value: median(frames), unit: 'frames' },
    { name: 'large: the same, frames drawn, most', value: Math.max(...frames), unit: 'frames' },
  ];
}

/** Runs in the page before anything else: marks the frame after the first one that holds a cell of the sheet. */
const markLarge = `new MutationObserver((_, watch) => {
  if (document.querySelectorAll('.sheet-cell-words').length < 50) return;
  watch.disconnect();
  requestAnimationFrame(() => requestAnimationFrame(() => performance.mark('stretchout cells painted')));
}).observe(document, { childList: true, subtree: true })`;

async function isCurrent(page: Page): Promise<void> {
  await page.waitForFunction(
    () => performance.getEntriesByName('stretchout figures current').length > 0,
    undefined,
    { timeout: 120_000 },
  );
}

async function bareBuild(page: Page, folder: string): Promise<number> {
  const entry = fileURLToPath(new URL('bare-engine.ts', import.meta.url));
  await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      target: 'es2023',
      outDir: folder,
      emptyOutDir: false,
      lib: { entry, formats: ['es'], fileName: 'bare-engine' },
    },
  });
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    times.push(
      await page.evaluate(
        () =>
          new Promise<number>((resolve, reject) => {
            const worker = new Worker('/bare-engine.js', { type: 'module' });
            worker.onerror = () => reject(new Error('The bare engine was not built.'));
            worker.onmessage = ({ data }) => {
              worker.terminate();
              resolve(data);
            };
            worker.postMessage('build');
          }),
      ),
    );
  }
  return median(times);
}

/** As text, since a name given to an inner function does not survive the way into the page. */
const watchFrames = `{
  const times = [];
  let last = performance.now();
  let isOn = true;
  let long = 0;
  const watch = new PerformanceObserver((seen) => {
    long += seen.getEntries().length;
  });
  watch.observe({ type: 'long-animation-frame' });
  requestAnimationFrame(function frame() {
    const now = performance.now();
    times.push(now - last);
    last = now;
    if (isOn) requestAnimationFrame(frame);
  });
  window.endScroll = () => {
    isOn = false;
    long += watch.takeRecords().length;
    return { frames: times.slice(2), long };
  };
}`;

/** Turns the wheel for five seconds; gives how long the frames were, the shortest first, and how many the browser itself calls
 *  long (Long Animation Frames: over 50 ms from the frame's beginning until it is drawn). */
async function scroll(page: Page): Promise<Scrolled> {
  await page.mouse.move(600, 500);
  await page.evaluate(watchFrames);
  for (let turn = 0; turn < 150; turn += 1) {
    await page.mouse.wheel(0, turn % 30 === 29 ? 20_000 : 160);
    await page.waitForTimeout(30);
  }
  const { frames, long } = await page.evaluate(() => window.endScroll());
  return { frames: frames.toSorted((one, other) => one - other), long };
}

interface Scrolled {
  readonly frames: readonly number[];
  readonly long: number;
}

/** As text too. A message that is sent as a frame begins arrives when that frame is drawn. */
const watchEdit = `{
  const drawn = new MessageChannel();
  const area = document.querySelector('[row-id="9"] [col-id="c5"]');
  let hasNews = false;
  const watch = new MutationObserver(() => {
    hasNews = true;
  });
  watch.observe(area, { childList: true, subtree: true, characterData: true });
  window.shownEdit = new Promise((resolve) => {
    const begin = () => {
      const pressed = performance.now();
      let frames = 0;
      requestAnimationFrame(function frame() {
        frames += 1;
        if (hasNews) drawn.port2.postMessage('drawn');
        else requestAnimationFrame(frame);
      });
      drawn.port1.onmessage = () => {
        watch.disconnect();
        resolve({ milliseconds: performance.now() - pressed, frames });
      };
    };
    document.addEventListener('keydown', begin, { capture: true, once: true });
  });
  0; // the page would wait for the promise if the text ended on it
}`;

/** From the Enter that puts A2 in until the last of its dependants in sight has been drawn with its new words, and how many
 *  frames that took. */
async function edit(page: Page): Promise<readonly ShownEdit[]> {
  await page.mouse.click(600, 500);
  await page.keyboard.press('Control+Home');
  await page.waitForTimeout(1000);
  const shown: ShownEdit[] = [];
  for (let round = 0; round < edits; round += 1) {
    await page.locator('[row-id="1"] [col-id="c0"]').first().click();
    await page.keyboard.type(String(20 + round));
    await page.evaluate(watchEdit);
    await page.keyboard.press('Enter');
    shown.push(await page.evaluate(() => window.shownEdit));
    await page.waitForTimeout(round % 2 === 0 ? 400 : 2500); // with the snapshot at rest, and without
  }
  return shown;
}

interface ShownEdit {
  readonly milliseconds: number;
  readonly frames: number;
}

declare global {
  interface Window {
    endScroll: () => Scrolled;
    shownEdit: Promise<ShownEdit>;
  }
}
