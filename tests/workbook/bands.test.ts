import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CellValue } from '../../src/base/value.ts';
import { standingsReader } from '../../src/session/standings.ts';
import { bandAt, type SheetValues, writeBands } from '../../src/workbook/bands.ts';
import type { Cell, Sheet, Workbook } from '../../src/workbook/document.ts';
import { placeKey } from '../../src/workbook/place-key.ts';
import { standingOf } from '../../src/workbook/standing.ts';
import { noValues, valuesAnew, withValues } from '../../src/workbook/values.ts';
import { sampleWorkbook } from './sample.ts';

const address = fc.record({ row: fc.nat(300), column: fc.nat(3) });
const value: fc.Arbitrary<CellValue> = fc.oneof(
  fc.integer({ min: 0, max: 3 }),
  fc.constantFrom(null, 'holds', 'stop: too wide'),
  fc.constantFrom(
    { fault: 'trade' as const, sentence: 'Too wide.' },
    { fault: 'trade' as const, sentence: 'Too wide.', bornAt: 'Pieces!A1' },
  ),
);
const news = fc.array(fc.record({ address, value }));

type News = readonly {
  readonly address: { readonly row: number; readonly column: number };
  readonly value: CellValue;
}[];

function plainWith(before: SheetValues, some: News): SheetValues {
  const next = new Map(before);
  for (const one of some) {
    if (one.value === null) next.delete(placeKey(one.address));
    else next.set(placeKey(one.address), one.value);
  }
  return next;
}

const onPieces = (some: News) => some.map((one) => ({ sheet: 'Pieces', ...one.address, value: one.value }));

describe('values in bands of rows are a map like any other', () => {
  test('whatever is put in, turn after turn', () => {
    fc.assert(
      fc.property(fc.array(news, { maxLength: 6 }), (turns) => {
        let plain: SheetValues = new Map();
        let banded: SheetValues | undefined;
        for (const some of turns) {
          const writer = writeBands(banded);
          for (const one of some) writer.put(placeKey(one.address), one.value);
          const before = banded && new Map(banded);
          const held = banded;
          banded = writer.done();
          plain = plainWith(plain, some);
          expect(new Map(banded)).toEqual(plain);
          expect(banded.size).toBe(plain.size);
          expect([...banded.keys()].every((key) => banded?.has(key))).toBe(true);
          expect(new Set(banded.values())).toEqual(new Set(plain.values()));
          for (const [key, each] of plain) expect(banded.get(key)).toEqual(each);
          const told = new Map<number, CellValue>();
          banded.forEach((each, key) => {
            told.set(key, each);
          });
          expect(told).toEqual(plain);
          expect(held && new Map(held)).toEqual(before); // the one that it came from is as it was
        }
      }),
    );
  });

  test('it begins from a plain map as well', () => {
    fc.assert(
      fc.property(news, news, (first, then) => {
        const plain = plainWith(new Map(), first);
        const values = withValues(new Map([['Pieces', plain]]), onPieces(then));
        expect(new Map(values.get('Pieces'))).toEqual(plainWith(plain, then));
      }),
    );
  });

  test('bands without news are shared', () => {
    const rows = [0, 63, 64, 300].map((row) => ({ address: { row, column: 0 }, value: row }));
    const before = withValues(noValues, onPieces(rows)).get('Pieces');
    const after = withValues(new Map([['Pieces', before ?? new Map()]]), [
      { sheet: 'Pieces', row: 10, column: 1, value: 5 },
    ]).get('Pieces');
    expect(bandAt(after, 0)).not.toBe(bandAt(before, 0));
    expect(bandAt(after, 1)).toBe(bandAt(before, 1));
    expect(bandAt(after, 4)).toBe(bandAt(before, 4));
  });
});

describe('values figured anew', () => {
  test('hold what was figured, and nothing of before', () => {
    fc.assert(
      fc.property(news, news, (first, then) => {
        const before = withValues(noValues, onPieces(first));
        const anew = valuesAnew(before, onPieces(then));
        expect(new Map(anew.get('Pieces') ?? [])).toEqual(plainWith(new Map(), then));
      }),
    );
  });

  test('are the same object where they came to the same', () => {
    fc.assert(
      fc.property(news, (some) => {
        const before = withValues(noValues, onPieces(some));
        expect(valuesAnew(before, onPieces(structuredClone(some)))).toBe(before);
      }),
    );
  });
});

test('standings read row by row with news are those read from nothing', () => {
  const cell = fc.constantFrom<Cell | null>(
    null,
    { content: 1, role: 'given' },
    { content: null, role: 'given', question: { asks: 'How wide?' } },
    { content: { formula: 'A1' }, role: 'check' },
    { content: { formula: 'A1' }, role: 'figured' },
  );
  const edit = fc.record({ address, cell });
  const [pieces] = sampleWorkbook().sheets;
  if (!pieces) throw new Error('The sample has sheets.');
  const filled = Array.from({ length: 200 }, () => [
    { content: { formula: 'B1' }, role: 'check' } as const,
    { content: { formula: 'B1' }, role: 'figured' } as const,
  ]);
  fc.assert(
    fc.property(fc.array(fc.record({ edit, news, cut: fc.nat(250) }), { maxLength: 8 }), (turns) => {
      let sheet: Sheet = { ...pieces, rows: filled };
      let values = noValues;
      const read = standingsReader();
      for (const turn of turns) {
        const rows = sheet.rows.length > 100 ? sheet.rows.slice(0, turn.cut) : [...sheet.rows, ...filled];
        const { row, column } = turn.edit.address;
        sheet = {
          ...sheet,
          rows: rows.map((cells, at) =>
            at === row ? Object.assign([...cells], { [column]: turn.edit.cell }) : cells,
          ),
        };
        values = withValues(values, onPieces(turn.news));
        const workbook: Workbook = { ...sampleWorkbook(), sheets: [sheet] };
        expect(read(workbook, values).get(sheet.id)).toEqual(standingOf(sheet, values));
      }
    }),
  );
});
