import fc from 'fast-check';
import { expect, test } from 'vitest';
import { writeAddress } from '../../../src/base/address.ts';
import { nextRound } from '../../../src/ui/grid/round.ts';
import '../../fixed-seed.ts';

test('walking round a block comes to each of its cells once and back to where one began, either way', () => {
  const edge = fc.integer({ min: 0, max: 5 });
  fc.assert(
    fc.property(
      fc.record({ row: edge, column: edge }),
      fc.record({ row: edge, column: edge }),
      fc.constantFrom(['right', 'left'] as const, ['down', 'up'] as const),
      (from, size, [onward, back]) => {
        const to = { row: from.row + size.row, column: from.column + size.column };
        const seen = new Set<string>();
        let at = from;
        for (let step = 0; step < (size.row + 1) * (size.column + 1); step += 1) {
          seen.add(writeAddress(at));
          const next = nextRound({ from, to }, at, onward);
          expect(nextRound({ from, to }, next, back)).toEqual(at);
          at = next;
        }
        expect(at).toEqual(from);
        expect(seen.size).toBe((size.row + 1) * (size.column + 1));
      },
    ),
  );
});
