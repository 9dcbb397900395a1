import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('Tab and Enter go round in what is selected, which stays selected', async () => {
  const { page, cell, drag, keys, here, selection, words } = await openRanges();
  await drag(cell('B2'), cell('C3'));
  await keys('Tab');
  expect(await here()).toBe('C2');
  await keys('Tab');
  expect(await here()).toBe('B3');
  await keys('Shift+Tab', 'Shift+Tab', 'Shift+Tab');
  expect(await here()).toBe('C3');
  await page.keyboard.type('12');
  await keys('Enter');
  expect(await here()).toBe('B2');
  await page.keyboard.type('18');
  await keys('Enter');
  expect(await here()).toBe('B3');
  expect(await selection()).toBe('B2 to C3, 4 cells');
  await expect.poll(() => words('B2')).toBe('18″');
  await keys('ArrowDown');
  expect(await here()).toBe('B4');
  expect(await selection()).toBe('');
});

test('a finger selects more by the corner of what is selected', async () => {
  const { page, cell, selection, context } = await openRanges({
    context: { hasTouch: true, isMobile: true },
  });
  await cell('C2').tap();
  const corner = page.locator('.reach-corner');
  await corner.waitFor();
  const from = await corner.boundingBox();
  const to = await cell('D3').boundingBox();
  if (!from || !to) throw new Error('The corner and the cell are on the page.');
  const finger = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number, y: number) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x, y }] });
  await touch('touchStart', from.x + 6, from.y + from.height - 6);
  await touch('touchMove', from.x + 20, from.y + from.height + 6);
  await touch('touchMove', to.x + to.width / 2, to.y + to.height / 2);
  await touch('touchEnd', 0, 0);
  await expect.poll(() => selection()).toBe('C2 to D3, 4 cells');
});
