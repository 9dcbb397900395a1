import type { CellValue } from '../base/value.ts';
import { placeKey } from '../workbook/place-key.ts';
import type { Place } from './calculator.ts';

/** The value of each formula cell as told last. */
export interface ToldValues {
  get(place: Place): CellValue | undefined;
  set(place: Place, value: CellValue): void;
  forget(place: Place): void;
}

export function toldValues(): ToldValues {
  const sheets = new Map<string, Map<number, CellValue>>();
  return {
    get: (place) => sheets.get(place.sheet)?.get(placeKey(place)),
    set: (place, value) => {
      const own = sheets.get(place.sheet) ?? new Map();
      sheets.set(place.sheet, own.set(placeKey(place), value));
    },
    forget: (place) => {
      sheets.get(place.sheet)?.delete(placeKey(place));
    },
  };
}
