import { openSite } from '../tests/browser/support/site.ts';
import { launchBrowser, openWindow } from '../tests/browser/support/window.ts';

/** Takes the pictures of the guide to lots anew: the twelve lots of the example, and two choices of one of them. */
const { site, close } = await openSite();
const browser = await launchBrowser(site.chromium);
const { page } = await openWindow(site, browser, { size: { width: 1440, height: 900 } });
await page.getByRole('button', { name: 'House types and lots' }).click();
await page.getByRole('button', { name: /^Open the example/ }).click();
await page.getByText('All 12 lots figured.').waitFor({ timeout: 120_000 });
await page.locator('[data-cell="3 6"]').click();
await page.waitForTimeout(300); // until the typeface stands
await page.screenshot({ path: 'docs/guide/lots.png' });
await page.locator('[data-cell="0 0"]').click();
await page.getByText('Compare two lots, or two choices').click();
await page.getByLabel(/^Lot 1 beside/).selectOption({ label: 'Insulation: R-6' });
await page.locator('.pair-bars').waitFor({ timeout: 120_000 });
await page.locator('.lots-part', { has: page.locator('.pair-bars') }).evaluate((part) => {
  const scroller = part.closest('.lots');
  if (scroller instanceof HTMLElement && part instanceof HTMLElement) scroller.scrollTop = part.offsetTop;
});
await page.waitForTimeout(300);
await page.screenshot({ path: 'docs/guide/lots-compared.png' });
await browser.close();
await close();
console.log('docs/guide/lots.png and docs/guide/lots-compared.png are new.');
