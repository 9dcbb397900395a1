import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { figureLots, figuresOf } from '../../src/lots/figure-lots.ts';
import { writeLotTableFile } from '../../src/lots/file.ts';
import { lotWorkbook } from '../../src/lots/lot-givens.ts';
import type { Lot, LotTable } from '../../src/lots/lot-table.ts';
import { readWorkbookFile } from '../../src/workbook/file.ts';
import { openSite, type Site } from '../browser/support/site.ts';
import { launchBrowser, openWindow } from '../browser/support/window.ts';
import type { Figure } from './figure.ts';
import { median } from './median.ts';

const count = 500;
const rounds = 3;
const slow = { timeout: 120_000 };

/** Five hundred lots of the whole single-storey house, no two alike: in the engine, and in the page beside its frames. */
export async function benchLots(): Promise<readonly Figure[]> {
  const table = manyLots();
  const seconds: number[] = [];
  const busy: number[] = [];
  let apart = 0;
  let figured = 0;
  for (let round = 0; round < rounds; round += 1) {
    const began = performance.now();
    const cpu = process.cpuUsage();
    const outcomes = await figureLots(table, { calculator });
    seconds.push((performance.now() - began) / 1000);
    const { user, system } = process.cpuUsage(cpu);
    busy.push((user + system) / 1e6);
    apart = outcomes.filter((one) => one?.type === 'disagrees').length;
    figured = outcomes.filter((one) => one?.type === 'figured').length;
  }
  const { site, close } = await openSite();
  const browser = await launchBrowser(site.chromium);
  try {
    return [
      { name: `${count} lots in one thread, middle of ${rounds}`, value: median(seconds), unit: 's' },
      { name: 'the same, of a processor', value: median(busy), unit: 's' },
      { name: 'the same, slowest', value: Math.max(...seconds), unit: 's' },
      { name: 'lots that came to figures', value: figured, unit: 'lots' },
      { name: 'of 11 figured from scratch as well, not the same', value: apart, unit: 'lots' },
      { name: 'of every fiftieth figured alone here, not the same', value: await alone(table), unit: 'lots' },
      ...(await inThePage(site, browser, table)),
    ];
  } finally {
    await browser.close();
    await close();
  }
}

function calculator() {
  return createCalculator({ functions: tradeFunctions });
}

function manyLots(): LotTable {
  const file = new URL('../../sheets/single-storey.template.stretchout.json', import.meta.url);
  const read = readWorkbookFile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.fault.code);
  const type = read.value.workbook;
  const rows = Array.from({ length: count }, (_, at): Lot => {
    const options = {
      ...(at % 2 === 0 ? { Mirrored: 'mirrored' } : {}),
      ...(at % 3 === 0 ? { Insulation: 'R-6' } : {}),
      ...(at % 5 === 0 ? { Trunk: 'rectangular' } : {}),
      ...(at % 7 === 0 ? { 'Ducts in': 'crawl space' } : {}),
    };
    const overrides = { 'House!B15': 0.9 + (at % 40) / 200, 'Rooms!B5': 2800 + at };
    return { name: `Lot ${at + 1}`, type: type.template?.name ?? type.title, options, overrides };
  });
  return { id: 'bench', title: 'Many lots', types: [type], rows };
}

/** The same check from outside: a workbook of one lot and a calculator that has seen nothing else. */
async function alone(table: LotTable): Promise<number> {
  const outcomes = await figureLots(table, { calculator });
  const [type] = table.types;
  let apart = 0;
  for (let at = 0; type && at < count; at += 50) {
    const lot = table.rows[at];
    const filled = lot && lotWorkbook(type, lot);
    if (!filled?.ok) continue;
    const values = await figureWorkbook(filled.value, calculator());
    const fresh = { type: 'figured', figures: figuresOf(type, { workbook: filled.value, values }) };
    if (JSON.stringify(fresh) !== JSON.stringify(outcomes[at])) apart += 1;
  }
  return apart;
}

async function inThePage(site: Site, browser: Browser, table: LotTable): Promise<readonly Figure[]> {
  const { page, context } = await openWindow(site, browser);
  await page.getByRole('button', { name: 'House types and lots' }).click();
  await page
    .getByRole('button', { name: /^Begin a lot table|^New lot table/ })
    .first()
    .waitFor(slow);
  await page.evaluate(watchFrames);
  await page.getByLabel('Lot table file', { exact: true }).setInputFiles({
    name: 'many.lots.stretchout.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeLotTableFile(table)),
  });
  await page.getByText(`of ${count} lots figured …`).waitFor(slow);
  const opened = await frames(page);
  const began = performance.now();
  await page.getByText(`All ${count} lots figured.`).waitFor(slow);
  const seconds = (performance.now() - began) / 1000;
  const figuring = await frames(page);
  await page.locator('[data-cell="0 0"]').click();
  for (let turn = 0; turn < 30; turn += 1) await page.keyboard.press('PageDown');
  const walking = await frames(page);
  await context.close();
  return [
    { name: `page: ${count} lots, from the first on the screen to the last`, value: seconds, unit: 's' },
    { name: 'page: longest frame while a file of them is opened', value: Math.max(...opened), unit: 'ms' },
    { name: 'page: longest frame while they are figured', value: Math.max(...figuring), unit: 'ms' },
    { name: 'page: longest frame while walking through them', value: Math.max(...walking), unit: 'ms' },
  ];
}

const watchFrames = `window.frames_ = [];
let last = performance.now();
requestAnimationFrame(function next(now) {
  window.frames_.push(now - last);
  last = now;
  requestAnimationFrame(next);
});`;

/** The frames since it was last asked, in milliseconds. */
function frames(page: Page): Promise<readonly number[]> {
  return page.evaluate('window.frames_.splice(0)');
}
