import { openSite } from '../tests/browser/support/site.ts';
import { launchBrowser, openWindow } from '../tests/browser/support/window.ts';
import { templateScene } from '../tests/browser/template-walk.ts';

/** Takes the pictures of the guide to templates anew, on the very walk that its test goes. */
const { site, close } = await openSite();
const browser = await launchBrowser(site.chromium);
const { page } = await openWindow(site, browser, { size: { width: 1440, height: 900 } });
const scene = await templateScene(page);
await scene.makeTemplate('Ranch trunk');
await scene.askForTheCrew();
await scene.writeCheck();
await scene.lock();
await scene.recordExamples();
await page.locator('.template').evaluate((part) => part.scrollTo(0, 330));
await page.waitForTimeout(500); // until the typeface stands
await page.screenshot({ path: 'docs/guide/template.png' });
await scene.saveRevision('The first, from Larkspur Lane.');
await page.getByRole('button', { name: 'Files and shelf' }).click();
await page.getByRole('button', { name: /Fill in a form for a job from Ranch trunk/ }).click();
await page.getByLabel('Title of the job').fill('Larkspur Lane, lot 9');
await page.waitForTimeout(500);
await page.screenshot({ path: 'docs/guide/job-form.png' });
await browser.close();
await close();
console.log('docs/guide/template.png and docs/guide/job-form.png are new.');
