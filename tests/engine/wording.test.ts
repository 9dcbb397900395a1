import { expect, test } from 'vitest';
import { type EngineErrorType, wordEngineError, wordRing } from '../../src/engine/wording.ts';

const types: readonly EngineErrorType[] = [
  'DIV_BY_ZERO',
  'NAME',
  'VALUE',
  'NUM',
  'NA',
  'CYCLE',
  'REF',
  'SPILL',
  'LIC',
  'ERROR',
];

test.each(types)('an error %s is told in full sentences that say what to do', (type) => {
  const { sentence } = wordEngineError(type, '');
  expect(sentence).toMatch(/^[A-Z][^#]+\. [A-Z][^#]+\.$/);
  expect(sentence).not.toMatch(/\b(error|array|spill|invalid|argument|reference|cyclic|parse)\b/i);
});

test('a name or function that the engine alone misses is told by name', () => {
  expect(wordEngineError('NAME', 'Function name WRAPP not recognized.').sentence).toContain(
    'no function WRAPP',
  );
  expect(wordEngineError('NAME', 'Named expression lapp not recognized.').sentence).toContain('“lapp”');
});

test('what the engine has no words for is told by its kind', () => {
  expect(wordEngineError('VALUE', 'Something new.')).toEqual(wordEngineError('VALUE', ''));
});

test('a ring names its cells from one of them round to the same', () => {
  expect(wordRing(['Wrap!E4', 'Wrap!F4'])).toContain('Wrap!E4 → Wrap!F4 → Wrap!E4.');
  expect(wordRing(['Wrap!E4'])).toMatch(/^The formula in Wrap!E4 points to itself/);
});

test('a long ring is cut short but still closes', () => {
  const ring = Array.from({ length: 40 }, (_, row) => `Wrap!A${row + 1}`);
  expect(wordRing(ring)).toMatch(/Wrap!A12 → … → Wrap!A1\./);
});

test('a ring that was not followed is told without its cells', () => {
  expect(wordRing([])).toBe(wordEngineError('CYCLE', '').sentence);
});
