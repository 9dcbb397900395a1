import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { manualFiles } from '../../scripts/manual/manual.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';

const docs = new URL('../../docs/', import.meta.url);
const files = manualFiles();

describe('the manual', () => {
  it('stands in docs as the catalogue makes it; `npm run manual` writes it anew', () => {
    const stale = [...files].filter(([place, text]) => readFile(place) !== text).map(([place]) => place);
    expect(stale).toEqual([]);
  });

  it('has no page of a function that is gone', () => {
    const kept = readdirSync(new URL('functions/', docs), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('//', '/').split('/docs/').at(-1));
    expect(kept.filter((place) => !files.has(place ?? ''))).toEqual([]);
  });

  it('has a page for every function', () => {
    expect([...files.keys()].filter((place) => /^functions\/[a-z].*\.md$/.test(place))).toHaveLength(
      tradeFunctions.length,
    );
  });
});

function readFile(place: string): string | null {
  try {
    return readFileSync(new URL(place, docs), 'utf8');
  } catch {
    return null;
  }
}
