import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

test('why a figure is missing stands in sight, once for all sizes, and what is to be minded with it', async () => {
  const { page, faults } = await openDemo();
  await page.getByRole('button', { name: 'Allowances, side by side' }).click();
  const wrap = page.getByRole('region', { name: 'Wrap', exact: true });
  await wrap.getByRole('combobox', { name: 'Which wrap' }).selectOption({ label: 'R-5 wrap' });
  const compare = page.getByRole('region', { name: 'R-5 wrap, side by side' });
  const reasons = compare.getByRole('list', { name: 'Why figures are missing' });
  await reasons.getByText(/^a This cut would squeeze the wrap to 0.95 in/).waitFor();
  expect(await reasons.locator('> li').count()).toBe(1);
  const flat = compare.getByRole('row', { name: /^30 × 14″/ });
  expect(await flat.getByText(/^none a$/).isVisible()).toBe(true);
  await reasons.getByText(/^30 × 14″, published table: Cut at least 96/).waitFor();
  await compare.getByText(/every cut is rounded up to the next 1\/16 in/).waitFor();
  await compare.getByText(/^Glass fibers hurt skin/).waitFor();
  await compare.getByText(/^Which R a duct needs is for your local code/).waitFor();
  await expectAccessible(page);

  await wrap.getByRole('combobox', { name: 'Which wrap' }).selectOption({ label: 'R-11 wrap' });
  const other = page.getByRole('region', { name: 'R-11 wrap, side by side' });
  await other
    .getByText(/^no figure a$/)
    .first()
    .waitFor();
  expect(faults).toEqual([]);
}, 120_000);

test.each([
  [1440, 900],
  [1024, 768],
])(
  'at %i × %i the bar at the foot covers nothing: the last rows can be read above it',
  async (width, height) => {
    const { page, faults } = await openDemo({ size: { width, height } });
    await page.getByRole('button', { name: 'Allowances, side by side' }).click();
    const last = page.getByRole('row', { name: /^30 × 14″/ });
    const bar = page.locator('.allowances-bar');
    const foot = page.getByRole('button', { name: 'Save the allowances as a file' });
    for (const one of [last, foot]) {
      await one.scrollIntoViewIfNeeded();
      const [row, fixed] = [await one.boundingBox(), await bar.boundingBox()];
      expect((row?.y ?? 0) + (row?.height ?? 0)).toBeLessThanOrEqual(fixed?.y ?? 0);
    }
    expect(faults).toEqual([]);
  },
  120_000,
);
