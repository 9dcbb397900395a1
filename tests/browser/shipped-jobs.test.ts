import { expect, test } from 'vitest';
import { beginJob } from './files-page.ts';
import { expectAccessible } from './support/axe.ts';

test('an apprentice answers by typing: a slip gets its hint, the right answer holds, and Start counts them', async () => {
  const { page, goTo, type, shows } = await beginJob('Practice for apprentices');
  await goTo('Seal');
  await type('C3', '56.549');
  await expect.poll(() => shows('D3')).toContain('a tap has two seams');
  await type('C3', "9' 5");
  await expect.poll(() => shows('D3')).toContain('holds');
  await goTo('Start');
  await expect.poll(() => shows('D16')).toBe('1');
  await expectAccessible(page, 'main');
});

test('the mark of a problem cannot be typed over', async () => {
  const { page, goTo, type, shows } = await beginJob('Practice for apprentices');
  await goTo('Seal');
  await type('D2', 'holds');
  await page.keyboard.press('Escape');
  expect(await shows('D2')).not.toContain('holds');
  await goTo('Start');
  await expect.poll(() => shows('D16')).toBe('0');
});

test('a whole house with its bonus room gets two branches more, and its order still holds', async () => {
  const { goTo, type, shows } = await beginJob('Single-storey house');
  const boots = async () => {
    await goTo('Order');
    await expect.poll(() => shows('B2')).toContain('holds');
    return Number(await shows('B5'));
  };
  const before = await boots();
  await goTo('House');
  await type('B10', 'yes');
  await goTo('Rooms');
  await expect.poll(() => shows('F14')).toMatch(/\d cfm/);
  expect(await boots()).toBe(before + 2);
});
