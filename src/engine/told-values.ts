import type { CellValue } from '../base/value.ts';
import type { Place } from './calculator.ts';

/** The value of each formula cell as told last. */
export interface ToldValues {
  get(place: Place): CellValue | undefined;
  set(place: Place, value: CellValue): void;
  forget(place: Place): void;
}

export function toldValues(): ToldValues {
  /** By row and column, which is quicker to fill for a whole book than a map. */
  const sheets = new Map<string, (CellValue | undefined)[][]>();
  return {
    get: ({ sheet, row, column }) => sheets.get(sheet)?.[row]?.[column],
    set: ({ sheet, row, column }, value) => {
      let rows = sheets.get(sheet);
      if (!rows) {
        rows = [];
        sheets.set(sheet, rows);
      }
      let cells = rows[row];
      if (!cells) {
        cells = [];
        rows[row] = cells;
      }
      cells[column] = value;
    },
    forget: ({ sheet, row, column }) => {
      const cells = sheets.get(sheet)?.[row];
      if (cells) cells[column] = undefined;
    },
  };
}
