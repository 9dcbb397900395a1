import { expect, test } from 'vitest';
import { allowancesWalk, triedName } from './allowances-walk.ts';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

/** The walk of docs/guide/allowances.md from a new browser to a kept allowance, step by step. */
test('a new wrap is copied, changed, seen beside the tables, tried on the open job, and kept', async () => {
  const { page, goTo, shows, faults } = await openDemo();
  const walk = allowancesWalk(page);
  await walk.open();
  await walk.copy();
  await walk.name();
  await walk.setNumbers();
  await walk.tryOnJob();

  const table = page.getByRole('table', { name: new RegExp(`^What to cut of ${triedName}`) });
  const sixteen = table.getByRole('row', { name: /^16″ round/ });
  // By geometry: π × (16 + 2 × 1 7/8) + 3 = 65.0465, up to the next sixteenth.
  await expect.poll(() => sixteen.textContent()).toContain('65 1⁄16″');
  expect(await table.getByRole('row', { name: /^(4|24)″ round/ }).count()).toBe(2);
  await expectAccessible(page);

  const { effect } = walk;
  await effect.getByText(/figures of this job change/).waitFor();
  const order = effect.getByRole('table', { name: 'To order' });
  await order.getByRole('row', { name: new RegExp(triedName) }).waitFor();
  await effect
    .getByRole('table', { name: 'What was figured' })
    .getByRole('button', { name: 'Wrap!D2' })
    .waitFor();
  // Rated R 6.8 installed, where this job needs R 8: the job, and each of its six pieces, would say stop.
  await effect
    .getByText(/^✕ 7 checks would turn to stop.*this wrap is rated R 6.8 installed, and R 8 is needed/)
    .waitFor();
  const checks = effect.getByRole('table', { name: 'Checks' });
  expect(await checks.getByRole('row').filter({ hasText: 'stop:' }).count()).toBe(7);
  // Nothing is in the workbook yet.
  expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);

  await walk.keep();
  await page.getByText('Kept in this workbook. Undo takes it back.').waitFor();
  await goTo('Allowances');
  await expect.poll(() => shows('A7')).toBe(triedName);
  expect(await shows('B7')).toBe('2.5 in');
  await goTo('Wrap');
  await expect.poll(() => shows('B2')).toBe(triedName);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => shows('B2')).toBe('R-8 wrap');
  expect(walk.steps()).toBe(11);
  expect(faults).toEqual([]);
}, 120_000);

test('what is tried is put back with one press, and a number that cannot be is refused where it stands', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const wrap = page.getByRole('region', { name: 'Wrap', exact: true });
  const lap = wrap.getByRole('textbox', { name: 'Lap of the wrap' });
  await lap.fill('a hand');
  await wrap.getByText(/“a hand” cannot be read as a length/).waitFor();
  await lap.fill('4');
  await page.getByRole('region', { name: 'What it does to this job' }).waitFor();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await page.getByText('Put back: everything is as it was.').waitFor();
  expect(await lap.inputValue()).toBe('');
  expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
  expect(faults).toEqual([]);
}, 120_000);
