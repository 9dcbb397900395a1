import { describe, expect, it } from 'vitest';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { searchFunctions } from '../../src/catalogue/search.ts';

const first = (typed: string) => searchFunctions(tradeFunctions, typed)[0]?.name;

describe('a function is found by what a tradesman would type', () => {
  it.each([
    ['round pipe', 'BLANK.ROUND'],
    ['girth', 'BLANK.ROUND'],
    ['cut at', 'TAPE.ROUND'],
    ['feet and inches to inches', 'TAPE.READ'],
    ['blank.rect', 'BLANK.RECT'],
  ])('%s', (typed, name) => {
    expect(first(typed)).toBe(name);
  });

  it('gives every function for an empty search, in the order of the list', () => {
    expect(searchFunctions(tradeFunctions, '  ')).toEqual(tradeFunctions);
  });

  it('gives nothing for words that stand nowhere', () => {
    expect(searchFunctions(tradeFunctions, 'zebra pipe')).toEqual([]);
  });

  it.each(tradeFunctions.map((spec) => [spec.name, spec.words] as const))(
    'finds %s by each of its own words',
    (name, words) => {
      const missed = words.filter(
        (word) => !searchFunctions(tradeFunctions, word).some((spec) => spec.name === name),
      );
      expect(missed).toEqual([]);
    },
  );
});
