import { expect, test } from 'vitest';
import { openRanges } from './range-page.ts';

test('the folded corner of a selection, pulled down, continues marks, copies what stands alone and shifts formulas', async () => {
  const { page, cell, words, selection, drag } = await openRanges();
  await drag(cell('A2'), cell('E2'));
  const corner = await page.locator('.fill-corner').boundingBox();
  const end = await cell('E5').boundingBox();
  if (!corner || !end) throw new Error('The corner is not on the page.');
  await page.mouse.move(corner.x + 10, corner.y + 10);
  await page.mouse.down();
  await page.mouse.move(end.x + 20, end.y - 10);
  await page.mouse.move(end.x + 20, end.y + 10);
  expect(await page.locator('[data-outline]').count()).toBe(20);
  await page.mouse.up();
  expect(await page.locator('[data-outline]').count()).toBe(0);
  expect(await selection()).toBe('A2 to E5, 20 cells');
  expect(await words('A5')).toBe('S4 trunk');
  expect(await words('B5')).toBe('16″');
  await expect.poll(() => words('E5')).toBe('50 5⁄16″');
  await cell('E5').click();
  await page.locator('.working').getByText('PI()*B5').waitFor();
});

test('a pull that ends where it began fills nothing', async () => {
  const { page, cell, drag } = await openRanges();
  await cell('B2').click();
  await drag(page.locator('.fill-corner'), cell('B2'));
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
  expect(await page.locator('[data-outline]').count()).toBe(0);
});

test('Escape gives a pull up, and nothing is filled', async () => {
  const { page, cell, keys } = await openRanges();
  await cell('C2').click();
  const end = await cell('C5').boundingBox();
  if (!end) throw new Error('C5 is not on the page.');
  await page.locator('.fill-corner').hover();
  await page.mouse.down();
  await page.mouse.move(end.x + 5, end.y + 5);
  expect(await page.locator('[data-outline]').count()).toBe(4);
  await keys('Escape');
  expect(await page.locator('[data-outline]').count()).toBe(0);
  await page.mouse.up();
  expect(await page.getByRole('button', { name: /^Undo/ }).getAttribute('aria-disabled')).toBe('true');
});

test('Ctrl+D fills down and Ctrl+R to the right, a single cell from its neighbour', async () => {
  const { cell, words, keys, selection, drag } = await openRanges();
  await drag(cell('B2'), cell('C4'));
  await keys('Control+d');
  expect(await selection()).toBe('B2 to C4, 6 cells');
  expect(await words('B3')).toBe('16″');
  expect(await words('B4')).toBe('16″');
  await cell('B5').click();
  await keys('Control+d');
  expect(await words('B5')).toBe('16″');
  await drag(cell('A3'), cell('B3'));
  await keys('Control+r');
  expect(await words('B3')).toBe('S3 trunk');
  await keys('Control+z', 'Control+z', 'Control+z');
  expect(await words('B3')).toBe('fill');
  expect(await words('B4')).toBe('');
});

test('the corner is pulled with a finger too', async () => {
  const { page, cell, context, words } = await openRanges({
    context: { hasTouch: true, permissions: ['clipboard-read', 'clipboard-write'] },
    size: { width: 1024, height: 768 },
  });
  await cell('C2').tap();
  const corner = await page.locator('.fill-corner').boundingBox();
  const end = await cell('C4').boundingBox();
  if (!corner || !end) throw new Error('The corner is not on the page.');
  const finger = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number, y?: number) =>
    finger.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: x === undefined || y === undefined ? [] : [{ x, y }],
    });
  await touch('touchStart', corner.x + 8, corner.y + 8);
  await touch('touchMove', end.x + 8, end.y - 10);
  await touch('touchMove', end.x + 8, end.y + 10);
  await touch('touchEnd');
  await expect.poll(() => words('C4')).toBe('14′ 6 1⁄2″');
});
