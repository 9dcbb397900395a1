import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { grammarFiles } from '../../scripts/grammar.ts';
import { syntaxOf } from '../../src/formula/syntax.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

it('the reader of formulas is the one that the grammar gives (else: npm run grammar)', async () => {
  for (const [file, text] of Object.entries(await grammarFiles())) {
    expect(readFileSync(at(`../../src/formula/${file}`), 'utf8'), file).toBe(text);
  }
});

/** A file of cases: headings with #, and lines of `formula ==> tree`. */
function casesIn(file: string): readonly (readonly [string, string])[] {
  return readFileSync(at(`./cases/${file}`), 'utf8')
    .split('\n')
    .filter((line) => line.includes(' ==> '))
    .map((line) => {
      const split = line.indexOf(' ==> ');
      return [line.slice(0, split), line.slice(split + 5)];
    });
}

describe.each(readdirSync(at('./cases')))('grammar cases in %s', (file) => {
  it('are there', () => expect(casesIn(file)).not.toEqual([]));

  it.each(casesIn(file))('%s', (formula, tree) => {
    expect(String(syntaxOf(formula))).toBe(tree);
  });
});
