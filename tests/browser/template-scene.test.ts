import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';
import { templateScene } from './template-walk.ts';

/** A person's presses and entries, from an empty browser to a job of the new template, as counted; one more is to be
 *  noticed. */
const countedSteps = 48;

/** The whole walk in one test. */
const timeout = 120_000;

test('a finished job becomes a template with givens, locks, a check and two worked examples, and the next job comes from it', {
  timeout,
}, async () => {
  const { page, faults } = await openPage();
  page.setDefaultTimeout(20_000);
  const scene = await templateScene(page);
  await scene.makeTemplate('Ranch trunk');
  await scene.askForTheCrew();
  await scene.writeCheck();
  await scene.lock();
  await scene.recordExamples();
  await expectAccessible(page);
  await scene.saveRevision('The first, from Larkspur Lane.');
  await scene.makeJob('Larkspur Lane, lot 9');
  await page.locator('.header-quiet').filter({ hasText: 'from Ranch trunk, revision 1' }).waitFor();

  // What the author locked stays as it is in the job.
  await page.locator('[data-sheet]').filter({ hasText: 'Wrap' }).first().click();
  await page.locator('[row-id="1"] [col-id="c2"]').dblclick();
  await page.locator('.cell-editor-note').filter({ hasText: 'is locked, as the template has it' }).waitFor();
  await page.keyboard.press('Escape');
  expect(scene.steps()).toBe(countedSteps);
  expect(faults).toEqual([]);
});
