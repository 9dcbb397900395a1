import type { CellValue } from '../../base/value.ts';
import type { CalculatorBook, CellChange } from '../../engine/calculator.ts';
import { placeKey, placeOfKey } from '../../workbook/place-key.ts';

/** A whole book as one text: a browser hands half a million cells to a worker one by one, but a text as it stands. What
 *  stands in a book can be stored, so it goes through this text unharmed, as it goes through storage. */
export type BookParcel = string;

export function packBook(book: CalculatorBook): BookParcel {
  return JSON.stringify(book);
}

export function unpackBook(parcel: BookParcel): CalculatorBook {
  return JSON.parse(parcel);
}

/** Values on their way back to the page: numbers and their places side by side, sheet by sheet, since most values are
 *  numbers; all others as they are. */
export interface ValuesParcel {
  readonly numbers: readonly SheetNumbers[];
  readonly others: readonly CellChange[];
}

interface SheetNumbers {
  readonly sheet: string;
  readonly places: Uint32Array<ArrayBuffer>;
  readonly values: Float64Array<ArrayBuffer>;
}

export function packValues(changes: readonly CellChange[]): ValuesParcel {
  const counts = new Map<string, number>();
  const others: CellChange[] = [];
  for (const change of changes) {
    if (typeof change.value === 'number') counts.set(change.sheet, (counts.get(change.sheet) ?? 0) + 1);
    else others.push(change);
  }
  const numbers = Array.from(counts, ([sheet, count]): SheetNumbers => {
    const places = new Uint32Array(count);
    const values = new Float64Array(count);
    let at = 0;
    for (const change of changes) {
      if (typeof change.value !== 'number' || change.sheet !== sheet) continue;
      places[at] = placeKey(change);
      values[at] = change.value;
      at += 1;
    }
    return { sheet, places, values };
  });
  return { numbers, others };
}

/** What can go over to the page instead of being copied. */
export function transferable({ numbers }: ValuesParcel): readonly ArrayBuffer[] {
  return numbers.flatMap(({ places, values }) => [places.buffer, values.buffer]);
}

/** The same values; in another order, which means nothing. */
export function unpackValues({ numbers, others }: ValuesParcel): readonly CellChange[] {
  const changes: CellChange[] = [];
  for (const { sheet, places, values } of numbers) {
    for (const [at, key] of places.entries()) {
      const { row, column } = placeOfKey(key);
      const value: CellValue = values[at] ?? null;
      changes.push({ sheet, row, column, value });
    }
  }
  for (const other of others) changes.push(other);
  return changes;
}
