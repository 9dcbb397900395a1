import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openDemo } from './demo.ts';

const example = readFileSync(
  new URL('../../sheets/larkspur-lane.lots.stretchout.json', import.meta.url),
  'utf8',
);
const slow = { timeout: 120_000 };

/** Three hundred lots of the first type, no two alike. */
function manyLots(): string {
  const data = JSON.parse(example);
  const [first] = data.lots.rows;
  data.lots.rows = Array.from({ length: 300 }, (_, at) => ({
    ...first,
    name: `Plot ${at + 1}`,
    overrides: { 'House!B15': 0.8 + at / 1000 },
  }));
  data.lots.title = 'Three hundred';
  return JSON.stringify(data);
}

test(
  'three hundred lots: a bar, a stop, the rest; only the rows in sight are drawn; the last is reached by key',
  slow,
  async () => {
    const { page, faults } = await openDemo();
    await page.getByRole('button', { name: 'House types and lots' }).click();
    await page.getByLabel('Lot table file', { exact: true }).setInputFiles({
      name: 'many.lots.stretchout.json',
      mimeType: 'application/json',
      buffer: Buffer.from(manyLots()),
    });
    await page.getByRole('progressbar', { name: 'Lots figured' }).waitFor(slow);
    await page.getByText(/^[1-9]\d* of 300 lots figured …/).waitFor(slow);
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    const stopped = page.getByText(/^Stopped: \d+ of 300 lots figured\./);
    await page.waitForTimeout(500); // lots that were on their way still come in
    const words = (await stopped.textContent()) ?? '';
    const count = Number(/\d+/.exec(words)?.[0]);
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThan(300);
    await page.getByText(/^Without .*\(not figured yet\)\.$/).waitFor();
    await page.waitForTimeout(600);
    expect(await stopped.textContent()).toBe(words);

    const grid = page.getByRole('grid', { name: 'Lots' });
    expect(await grid.getAttribute('aria-rowcount')).toBe('302');
    expect(await grid.locator('tbody tr').count()).toBeLessThan(60);
    await page.locator('[data-cell="0 0"]').click();
    await page.keyboard.press('Control+End');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-cell')))
      .toMatch(/^299 /);
    await page.keyboard.press('Home');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Plot 300');

    await page.getByRole('button', { name: 'Figure the rest' }).click();
    await page.getByText('All 300 lots figured.').waitFor(slow);
    await page.getByText('To order for 300 lots').waitFor();
    expect(await page.getByText('not to be trusted').count()).toBe(0);
    expect(faults).toEqual([]);
  },
);

test('a second window gets the lots when the first lets go', slow, async () => {
  const { page, context } = await openDemo();
  await page.getByRole('button', { name: 'House types and lots' }).click();
  await page.getByRole('button', { name: 'Begin a lot table' }).click();
  await page.getByText('Kept in this browser.').waitFor();
  const other = await context.newPage();
  await other.goto(page.url());
  await other.getByRole('button', { name: 'House types and lots' }).click();
  await other.getByText('here it can only be read').waitFor(slow);
  await page.close();
  await other.getByText('Kept in this browser.').waitFor(slow);
  await other.getByLabel('Add a house type, or take a newer revision').waitFor();
});

test(
  'of two lot tables chosen in quick turn the last one lies there, and only that one is held',
  slow,
  async () => {
    const { page, context, faults } = await openDemo();
    await page.getByRole('button', { name: 'House types and lots' }).click();
    await page.getByRole('button', { name: 'Begin a lot table' }).click();
    await page.getByText('Kept in this browser.').waitFor();
    const open = async (title: string) => {
      const data = JSON.parse(example);
      data.lots = { ...data.lots, title, rows: [] };
      await page.getByLabel('Lot table file', { exact: true }).setInputFiles({
        name: 'one.lots.stretchout.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(data)),
      });
      await page.getByRole('heading', { level: 2, name: title }).waitFor();
    };
    await open('The last choice');
    await open('The one before');
    const kept = page.getByLabel('Lot tables kept in this browser');
    const ids = await kept
      .getByRole('option')
      .evaluateAll((all) =>
        Object.fromEntries(all.map((one) => [one.textContent, one.getAttribute('value')])),
      );
    // The first to be chosen is held late.
    await page.evaluate((late) => {
      const request = LockManager.prototype.request;
      LockManager.prototype.request = async function held(
        this: LockManager,
        name: string,
        ...rest: unknown[]
      ) {
        if (name.includes(late)) await new Promise((go) => setTimeout(go, 700));
        return Reflect.apply(request, this, [name, ...rest]);
      };
    }, ids['New lots'] ?? '');
    await kept.evaluate(
      (select: HTMLSelectElement, values) => {
        for (const value of values) {
          select.value = value;
          select.dispatchEvent(new Event('change', { bubbles: true }));
        }
      },
      [ids['New lots'] ?? '', ids['The last choice'] ?? ''],
    );
    await page.getByRole('heading', { level: 2, name: 'The last choice' }).waitFor();
    await page.waitForTimeout(1500); // long enough for the other one to be held
    expect(await page.locator('.lots-title').textContent()).toContain('The last choice');
    const other = await context.newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'House types and lots' }).click();
    await other.getByLabel('Lot tables kept in this browser').selectOption({ label: 'New lots' });
    await other.getByText('Kept in this browser.').waitFor(slow);
    expect(faults).toEqual([]);
  },
);
