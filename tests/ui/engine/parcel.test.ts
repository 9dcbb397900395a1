import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CellValue } from '../../../src/base/value.ts';
import type { CellChange } from '../../../src/engine/calculator.ts';
import { packBook, packValues, unpackBook, unpackValues } from '../../../src/ui/engine/parcel.ts';
import type { Content } from '../../../src/workbook/document.ts';
import { placeKey } from '../../../src/workbook/place-key.ts';

const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((one) => one + 0);
const content: fc.Arbitrary<Content> = fc.oneof(
  number,
  fc.string({ unit: 'binary' }),
  fc.boolean(),
  fc.constant(null),
  fc.string().map((formula) => ({ formula })),
);
const value: fc.Arbitrary<CellValue> = fc.oneof(
  fc.double(),
  fc.string(),
  fc.boolean(),
  fc.constant(null),
  fc.constant({ fault: 'trade' as const, sentence: 'Too wide.', bornAt: 'Wrap!F4' }),
);
const change: fc.Arbitrary<CellChange> = fc.record({
  sheet: fc.constantFrom('Pieces', 'Wrap round', '__proto__'),
  row: fc.nat(1_000_000),
  column: fc.nat(701),
  value,
});

test('a book comes out of its parcel as it went in', () => {
  const sheet = fc.record({ name: fc.string(), rows: fc.array(fc.array(content)) });
  const names = fc.dictionary(fc.stringMatching(/^[a-z]+$/), fc.string(), { noNullPrototype: true });
  fc.assert(
    fc.property(fc.record({ sheets: fc.array(sheet), names }), (book) => {
      expect(unpackBook(packBook(book))).toEqual(book);
    }),
  );
});

test('values come out of their parcel at the same places', () => {
  const inOrder = (changes: readonly CellChange[]) =>
    [...changes].sort((one, other) =>
      one.sheet === other.sheet ? placeKey(one) - placeKey(other) : one.sheet < other.sheet ? -1 : 1,
    );
  const changes = fc.uniqueArray(change, { selector: (one) => `${one.sheet} ${placeKey(one)}` });
  fc.assert(
    fc.property(changes, (all) => {
      expect(inOrder(unpackValues(packValues(all)))).toEqual(inOrder(all));
    }),
  );
});
