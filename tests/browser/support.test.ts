import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { expectAccessible } from './support/axe.ts';
import { openPage } from './support/page.ts';

test('a field without a name and a picture without words are told apart from a good page', async () => {
  const { page } = await openPage();
  const show = (html: string) =>
    page.evaluate((inner) => {
      document.body.innerHTML = inner;
    }, html);
  await show('<main><h1>Order</h1><label>Width <input></label></main>');
  await expectAccessible(page);
  await show('<main><h1>Order</h1><input><img src="x"></main>');
  await expect(expectAccessible(page)).rejects.toThrow(
    /image-alt.*\n {2}at img\n[\s\S]*label.*\n {2}at input/,
  );
});

test('a script written into the page is stopped, and the window tells of it', async () => {
  const { page, faults } = await openPage();
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "changed"';
    document.body.append(script);
  });
  expect(await page.title()).not.toBe('changed');
  expect(faults.join('\n')).toContain('Content Security Policy');
});

test('what was stored with a profile is there after the browser was killed', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'profile-'));
  const first = await openPage({ profile });
  await store(first.page, 42.5);
  await first.kill();
  const second = await openPage({ profile });
  expect(await stored(second.page)).toBe(42.5);
  await second.close();
  await rm(profile, { recursive: true });
});

function store(page: Page, value: number): Promise<void> {
  return page.evaluate(
    (given) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('support-test', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('values');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction('values', 'readwrite', { durability: 'strict' });
          writing.objectStore('values').put(given, 'width');
          writing.oncomplete = () => resolve();
          writing.onerror = () => reject(writing.error);
        };
      }),
    value,
  );
}

function stored(page: Page): Promise<unknown> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('support-test', 1);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('values').objectStore('values').get('width');
          reading.onsuccess = () => resolve(reading.result);
          reading.onerror = () => reject(reading.error);
        };
      }),
  );
}
