import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  lineAfterMove,
  stretchAfterInsert,
  stretchAfterMove,
  stretchAfterRemove,
} from '../../src/formula/stretch.ts';

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

const move = fc
  .tuple(fc.nat({ max: 30 }), fc.integer({ min: 1, max: 8 }), fc.nat({ max: 40 }))
  .map(([at, count, to]) => ({ at, count, to }));

it('lines that move change places with those between, and nothing is lost', () => {
  fc.assert(
    fc.property(move, ({ at, count, to }) => {
      const all = Array.from({ length: 60 }, (_, line) => line);
      const isMoved = (line: number) => line >= at && line < at + count;
      const order = [
        ...all.filter((line) => line < to && !isMoved(line)),
        ...all.filter(isMoved),
        ...all.filter((line) => line >= to && !isMoved(line)),
      ];
      const wanted = to >= at && to <= at + count ? all : order;
      expect(all.map((line) => wanted.indexOf(line))).toEqual(
        all.map((line) => lineAfterMove(line, { at, count, to })),
      );
    }),
  );
});

it('a stretch keeps its lines where they still lie together, else those that stayed and what came between them', () => {
  fc.assert(
    fc.property(stretch, move, (before, moving) => {
      const place = (line: number) => lineAfterMove(line, moving);
      const after = linesOf(stretchAfterMove(before, moving));
      const own = linesOf(before)
        .map(place)
        .sort((one, other) => one - other);
      const [first = 0] = own;
      if ((own.at(-1) ?? 0) - first === own.length - 1) {
        expect(after).toEqual(own);
        return;
      }
      const stayed = linesOf(before)
        .filter((line) => line < moving.at || line >= moving.at + moving.count)
        .map(place);
      expect([after[0], after.at(-1)]).toEqual([stayed[0], stayed.at(-1)]);
    }),
  );
});
