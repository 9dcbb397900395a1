import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type DemoPage, openDemo } from './demo.ts';
import { expectAccessible } from './support/axe.ts';

const sheets = ['Job', 'Pieces', 'Taps', 'Blanks', 'Wrap', 'Seal and fasten', 'Allowances'];
const profiles: string[] = [];

async function profile(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'stretchout-'));
  profiles.push(folder);
  return folder;
}

afterAll(async () => {
  await Promise.all(profiles.map((folder) => rm(folder, { recursive: true, force: true })));
});

async function becomes(page: DemoPage, place: string, text: string): Promise<void> {
  await expect.poll(() => page.shows(place), { timeout: 5000 }).toBe(text);
}

describe('the first working day', () => {
  test('a new browser opens the demo job with its seven sheets, and each holds the accessibility rules', async () => {
    const demo = await openDemo();
    for (const sheet of sheets) {
      await demo.goTo(sheet);
      await expectAccessible(demo.page);
    }
    await demo.page.getByRole('button', { name: 'Trade functions' }).click();
    await demo.page.getByRole('searchbox').fill('how far round');
    await demo.page.getByRole('button', { name: /^WRAP\.STRETCHOUT/ }).click();
    await expectAccessible(demo.page);
    expect(demo.faults).toEqual([]);
  });

  test('a diameter and a length are changed, and everything that depends on them follows at once', async () => {
    const demo = await openDemo();
    await demo.goTo('Pieces');
    await demo.type('C2', '18');
    await demo.type('E2', `12' 4 1/2"`);
    await becomes(demo, 'E2', '12′ 4 1/2″');
    await demo.goTo('Blanks');
    // Girth of 18 in inside in 26 ga, π × (18 + 0.0217) = 56.617, and 1 in of seam: 57.617, shown up to 57 5/8.
    await becomes(demo, 'B2', '57 5/8″');
    await demo.goTo('Wrap');
    // π × 18 + 17 of the published table = 73.549, up to the next sixteenth.
    await becomes(demo, 'C2', '73.55 in');
    await becomes(demo, 'D2', '73 9/16″');
    // 148.5 in from 48 in rolls.
    await becomes(demo, 'E2', '4');
    await demo.goTo('Seal and fasten');
    // Four sections of at most 46 in, so four joints with the one at the end: 4 × π × 18 = 226.2 in, up to an inch.
    await becomes(demo, 'D2', '18′ 11″');
    // π × 18 in ÷ 12 in makes 5 screws in each, and the taps take 2 × ⌈6π ÷ 6⌉ + 2 × ⌈8π ÷ 6⌉.
    await becomes(demo, 'H2', '38');
    // 148.5 in of seam, a staple every 6 in.
    await becomes(demo, 'I2', '25');
  });

  test('the working of a cut length is read: number, formula, steps, drawing, source, cautions, links', async () => {
    const demo = await openDemo();
    await demo.goTo('Wrap');
    await demo.cell('C2').click();
    const { working } = demo;
    await working.getByText('Stretch-out of S1').waitFor();
    await working.getByRole('img', { name: /16″ round duct/ }).waitFor();
    const steps = await working.locator('.call-step').allTextContents();
    expect(steps[0]).toMatch(/^Around the metal.*π × 16.*50\.265 in$/);
    expect(steps.at(-1)).toMatch(/67\.265 in$/);
    await working.getByText('read at source').first().waitFor();
    await working.getByText('Take care').first().waitFor();
    await working.getByRole('button', { name: /^Pieces!C2 Width of S1/ }).click();
    await demo.page.getByRole('heading', { level: 1, name: 'Pieces' }).waitFor();
    await working.getByRole('button', { name: /^Show all/ }).click();
    await working.getByRole('button', { name: /^Wrap!C2 Stretch-out of S1/ }).waitFor();
  });

  test('another lap on Allowances changes the cut lengths, and undo brings them back', async () => {
    const demo = await openDemo();
    await demo.goTo('Allowances');
    await demo.type('B12', '3');
    await demo.goTo('Wrap');
    await becomes(demo, 'C2', '68.27 in');
    await becomes(demo, 'D2', '68 5/16″');
    await demo.page.keyboard.press('Control+z');
    await becomes(demo, 'C2', '67.27 in');
    await demo.page.keyboard.press('Control+Shift+Z');
    await becomes(demo, 'C2', '68.27 in');
  });

  test('a cut that squeezes the wrap says the R that it really leaves', async () => {
    const demo = await openDemo();
    await demo.goTo('Wrap');
    await demo.cell('G7').click();
    const caution = demo.working.getByText('not the rated R 8.3 at 2.25 in');
    await expect.poll(() => caution.textContent()).toMatch(/R 6\.4/);
    await expect.poll(() => demo.shows('F7')).toMatch(/^!look: by geometry/);
  });
});

describe('nothing is lost', () => {
  test('what was typed is there after a reload', async () => {
    const demo = await openDemo();
    await demo.goTo('Pieces');
    await demo.type('C2', '18');
    await demo.goTo('Blanks');
    await becomes(demo, 'B2', '57 5/8″');
    await demo.page.reload();
    await demo.goTo('Pieces');
    await becomes(demo, 'C2', '18″');
    await demo.goTo('Blanks');
    await becomes(demo, 'B2', '57 5/8″');
  });

  test('what was typed is there after the browser is killed in the middle', async () => {
    const folder = await profile();
    const first = await openDemo({ profile: folder });
    await first.goTo('Pieces');
    await first.type('C2', '18');
    await first.page.getByText('kept on this computer').waitFor();
    await first.kill();
    const second = await openDemo({ profile: folder });
    await second.goTo('Pieces');
    await becomes(second, 'C2', '18″');
  });

  test('a second window on the same workbook is told so, and cannot change it', async () => {
    const demo = await openDemo();
    await demo.page.waitForTimeout(100);
    const other = await demo.context.newPage();
    await other.goto(demo.page.url());
    await other.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
    await other
      .getByText(/another window/)
      .first()
      .waitFor();
    await other.locator('[row-id="1"] [col-id="c1"]').click();
    await other.keyboard.type('Another title');
    await other.keyboard.press('Enter');
    expect(await demo.shows('B2')).toBe('Larkspur Lane, lot 7');
    expect(await other.locator('[row-id="1"] [col-id="c1"] .sheet-cell-words').textContent()).toBe(
      'Larkspur Lane, lot 7',
    );
  });
});

describe('files', () => {
  test('a workbook is saved to a file, changed, and opened again from it', async () => {
    const demo = await openDemo();
    const saving = demo.page.waitForEvent('download');
    await demo.page.getByRole('button', { name: 'Save to a file' }).click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe('larkspur-lane-lot-7.stretchout.json');
    const path = await saved.path();
    await demo.goTo('Pieces');
    await demo.type('C2', '18');
    await demo.goTo('Blanks');
    await becomes(demo, 'B2', '57 5/8″');
    await demo.page.getByLabel('Workbook file').setInputFiles({
      name: 'back.stretchout.json',
      mimeType: 'application/json',
      buffer: await readFile(path),
    });
    await demo.page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
    await demo.goTo('Pieces');
    await becomes(demo, 'C2', '16″');
    // The one that was open before is still on the shelf, with its change.
    await demo.page.getByRole('navigation', { name: 'Other workbooks here' }).getByRole('button').click();
    await demo.page.getByRole('heading', { level: 1, name: 'Job' }).waitFor();
    await demo.goTo('Pieces');
    await becomes(demo, 'C2', '18″');
  });

  const good = readFile(new URL('../../sheets/demo.job.stretchout.json', import.meta.url), 'utf8');
  test.each([
    [
      'a wrong type',
      (text: string) => text.replace('"title": "', '"title": 7, "x": "'),
      /damaged|changed by hand/,
    ],
    [
      'an unknown version',
      (text: string) => text.replace('"stretchout": 1', '"stretchout": 99'),
      /version 99/,
    ],
    [
      '__proto__ keys',
      (text: string) => text.replace('"names": {', '"names": {"__proto__": {},'),
      /__proto__/,
    ],
    ['50 MB of spaces', () => ' '.repeat(50 * 1024 * 1024), /50 MB/],
    ['half a file', (text: string) => text.slice(0, text.length / 2), /cut off/],
  ])(
    'a file with %s is refused with a reason, and the open workbook stays as it was',
    async (_, spoil, reason) => {
      const demo = await openDemo();
      await demo.goTo('Pieces');
      const file = join(await profile(), 'spoiled.json');
      await writeFile(file, spoil(await good));
      await demo.page.getByLabel('Workbook file').setInputFiles(file);
      const notice = demo.page.getByRole('alert').filter({ hasText: 'was not opened' });
      await notice.waitFor();
      expect(await notice.textContent()).toMatch(reason);
      expect(await demo.shows('C2')).toBe('16″');
      expect(demo.faults).toEqual([]);
    },
  );
});
