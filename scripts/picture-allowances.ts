import { allowancesWalk } from '../tests/browser/allowances-walk.ts';
import { openSite } from '../tests/browser/support/site.ts';
import { launchBrowser, openWindow } from '../tests/browser/support/window.ts';

/** Takes the pictures of the guide to allowances anew, on the very walk that its test goes. */
const { site, close } = await openSite();
const browser = await launchBrowser(site.chromium);
const { page } = await openWindow(site, browser, { size: { width: 1440, height: 900 } });
const walk = allowancesWalk(page);
await walk.open();
await page
  .getByRole('table', { name: /^What to cut of R-8 wrap/ })
  .getByRole('row', { name: /^16″/ })
  .waitFor();
await page.waitForTimeout(500); // until the typeface stands
await page.screenshot({ path: 'docs/guide/side-by-side.png' });
await walk.copy();
await walk.name();
await walk.setNumbers();
await walk.tryOnJob();
await walk.effect.getByRole('table', { name: 'To order' }).waitFor();
await page.locator('.allowances-all').evaluate((list) => {
  const effect = list.querySelector('#allowances-effect')?.getBoundingClientRect();
  list.scrollTop += (effect?.top ?? 0) - list.getBoundingClientRect().top - 12;
});
await page.waitForTimeout(500);
await page.screenshot({ path: 'docs/guide/tried.png' });
await browser.close();
await close();
console.log('docs/guide/side-by-side.png and docs/guide/tried.png are new.');
