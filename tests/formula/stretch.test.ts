import fc from 'fast-check';
import { expect, it } from 'vitest';
import { stretchAfterInsert, stretchAfterRemove } from '../../src/formula/stretch.ts';

const stretch = fc
  .tuple(fc.nat({ max: 20 }), fc.nat({ max: 10 }))
  .map(([first, more]) => ({ first, last: first + more }));
const change = fc.record({ at: fc.nat({ max: 30 }), count: fc.integer({ min: 1, max: 8 }) });

function linesOf({ first, last }: { first: number; last: number }): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

it('what is left of a stretch is exactly its lines that stay, each moved up by those gone before it', () => {
  fc.assert(
    fc.property(stretch, change, (before, { at, count }) => {
      const left = linesOf(before)
        .filter((line) => line < at || line >= at + count)
        .map((line) => (line < at ? line : line - count));
      const after = stretchAfterRemove(before, { at, count });
      expect(after === null ? [] : linesOf(after)).toEqual(left);
    }),
  );
});

it('a stretch still begins and ends with the same lines after others are put in', () => {
  fc.assert(
    fc.property(stretch, change, (before, { at, count }) => {
      const moved = (line: number) => (line < at ? line : line + count);
      expect(stretchAfterInsert(before, { at, count })).toEqual({
        first: moved(before.first),
        last: moved(before.last),
      });
    }),
  );
});
