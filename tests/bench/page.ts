import type { Browser, Page } from 'playwright-core';
import { openSite } from '../browser/support/site.ts';
import { launchBrowser, openWindow } from '../browser/support/window.ts';
import type { Figure } from './figure.ts';
import { measureLarge } from './large-page.ts';
import { median } from './median.ts';

const edits = 15;
const openings = 5;

/** What a person feels of the page: how soon the demo stands there, and how soon an edit shows. */
export async function benchPage(): Promise<readonly Figure[]> {
  const { site, folder, close } = await openSite();
  const browser = await launchBrowser(site.chromium);
  try {
    const first = await measureOpenings(site, browser);
    const edit = await measureEdits(site, browser);
    const large = await measureLarge(site, browser, folder);
    return [
      ...first,
      {
        name: 'edit of a length until every sheet is figured and its check painted, median',
        value: median(edit),
        unit: 'ms',
      },
      { name: 'the same, slowest', value: Math.max(...edit), unit: 'ms' },
      ...large,
    ];
  } finally {
    await browser.close();
    await close();
  }
}

/** Runs in the page before anything else: marks the frame after the first one that holds a figured cell. */
const markFirstCells = `new MutationObserver((_, watch) => {
  const words = [...document.querySelectorAll('.sheet-cell-words')];
  if (!words.some((one) => / lb$/.test(one.textContent))) return;
  watch.disconnect();
  requestAnimationFrame(() => requestAnimationFrame(() => performance.mark('stretchout cells painted')));
}).observe(document, { childList: true, subtree: true })`;

type Site = Parameters<typeof openWindow>[0];

async function measureOpenings(site: Site, browser: Browser): Promise<readonly Figure[]> {
  const painted: number[] = [];
  const asked: number[] = [];
  const current: number[] = [];
  for (let round = 0; round < openings; round += 1) {
    const { page, context } = await openWindow(site, browser);
    await context.addInitScript(markFirstCells);
    await figuredText(page, 'Job', /[0-9.]+ lb/);
    // The second time the workbook comes from this browser's own storage, as it does every day.
    await page.reload();
    await figuredText(page, 'Job', /[0-9.]+ lb/);
    await page.waitForFunction(() => performance.getEntriesByName('stretchout figures current').length > 0);
    const times = await page.evaluate(() => ({
      cells: performance.getEntriesByName('stretchout cells painted')[0]?.startTime ?? Number.NaN,
      worker: performance.getEntriesByName('stretchout engine asked')[0]?.startTime ?? Number.NaN,
      figured: performance.getEntriesByName('stretchout figures current')[0]?.startTime ?? Number.NaN,
    }));
    painted.push(times.cells);
    asked.push(times.worker);
    current.push(times.figured);
    await context.close();
  }
  return [
    { name: 'demo painted from stored values, after navigation, median', value: median(painted), unit: 'ms' },
    { name: 'engine asked for, median', value: median(asked), unit: 'ms' },
    { name: 'every figure from the engine, median', value: median(current), unit: 'ms' },
  ];
}

/** From the Enter that puts a length in to the frame after its check has its new words; by then all sheets are figured. */
async function measureEdits(site: Site, browser: Browser): Promise<readonly number[]> {
  const { page, context } = await openWindow(site, browser);
  await page.getByRole('button', { name: 'Pieces' }).click();
  await figuredText(page, 'Pieces', /holds/);
  await page.waitForFunction(() => performance.getEntriesByName('stretchout figures current').length > 0);
  const times: number[] = [];
  for (let round = 0; round < edits; round += 1) {
    await page.locator('[row-id="1"] [col-id="c4"]').click();
    await page.keyboard.type(round % 2 === 0 ? '10' : '174.5');
    await page.evaluate(() => {
      const check = document.querySelector('[row-id="1"] [col-id="c7"]');
      window.benched = new Promise((resolve) => {
        document.addEventListener(
          'keydown',
          () => {
            const pressed = performance.now();
            const watch = new MutationObserver(() => {
              watch.disconnect();
              // The second frame begins when the first one has been painted.
              requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now() - pressed)));
            });
            if (check) watch.observe(check, { childList: true, subtree: true, characterData: true });
          },
          { capture: true, once: true },
        );
      });
    });
    await page.keyboard.press('Enter');
    times.push(await page.evaluate(() => window.benched));
    await page.waitForTimeout(60);
  }
  await context.close();
  return times;
}

async function figuredText(page: Page, sheet: string, text: RegExp): Promise<void> {
  await page.getByRole('heading', { level: 1, name: sheet }).waitFor();
  await page.locator('.sheet-cell-words').filter({ hasText: text }).first().waitFor();
}

declare global {
  interface Window {
    benched: Promise<number>;
  }
}
