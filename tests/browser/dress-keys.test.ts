import { expect, test } from 'vitest';
import { openGrid } from './grid-workbook.ts';
import { expectAccessible } from './support/axe.ts';

test('the page of keys lists them by what they are for, and one comes back to the sheet', async () => {
  const { page, sheet, here } = await openGrid();
  await page.getByRole('button', { name: 'Keys', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Keys' }).waitFor();
  const keys = page.getByRole('region', { name: 'Keys' });
  expect(await keys.getByRole('heading', { level: 2 }).allTextContents()).toContain('Rows and columns');
  expect(await keys.textContent()).toContain('Alt+Shift+→');
  await expectAccessible(page, 'main');
  await page.screenshot({ path: '.cache/keys.png' });
  await sheet('Pieces').click();
  expect(await here()).toBe('B2');
});
