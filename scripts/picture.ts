import { openSite } from '../tests/browser/support/site.ts';
import { launchBrowser, openWindow } from '../tests/browser/support/window.ts';

/** Takes the picture of the README anew: the demo job with the working of one cut length. */
const { site, close } = await openSite();
const browser = await launchBrowser(site.chromium);
const { page } = await openWindow(site, browser, { size: { width: 1440, height: 900 } });
await page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
await page.getByRole('button', { name: /^Wrap/ }).click();
await page.locator('[row-id="1"] [col-id="c2"]').click();
await page.getByRole('img').first().waitFor();
await page.waitForTimeout(300); // until the typeface and the drawing stand
await page.screenshot({ path: 'docs/picture.png' });
await browser.close();
await close();
console.log('docs/picture.png is new.');
