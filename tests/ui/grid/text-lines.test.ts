import { expect, test } from 'vitest';
import { countLines } from '../../../src/ui/grid/text-lines.ts';

const width = (words: string) => words.length;

test.each<[string, number, number]>([
  ['', 10, 1],
  ['short', 10, 1],
  ['two words', 9, 1],
  ['two words', 8, 2],
  ['one two three', 7, 2],
  ['one two three', 5, 3],
  ['unbreakable', 4, 3],
  ['a unbreakable b', 4, 5],
  ['one\ntwo', 10, 2],
])('%j takes, in a room of %i, %i lines', (words, room, lines) => {
  expect(countLines(words, room, width)).toBe(lines);
});
