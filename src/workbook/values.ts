import type { CellAddress } from '../base/address.ts';
import type { CellValue } from '../base/value.ts';
import { lineAfterMove } from '../formula/stretch.ts';
import { cellAt } from './cells.ts';
import { applyDifference, type Change, type Difference } from './difference.ts';
import { isFormula, type Workbook } from './document.ts';
import { moveOf } from './lines.ts';

/** The values of formula cells as last figured, by sheet name and place. Derived, so it may be thrown away. */
export type Values = ReadonlyMap<string, ReadonlyMap<number, CellValue>>;

export const noValues: Values = new Map();

/** More than the 702 columns that a file may have. */
const columnsAtMost = 1024;

/** One number for a place in a sheet, so that a map can hold it. */
export function placeKey(address: CellAddress): number {
  return address.row * columnsAtMost + address.column;
}

export function placeOfKey(key: number): CellAddress {
  return { row: Math.floor(key / columnsAtMost), column: key % columnsAtMost };
}

export function valueAt(values: Values, sheet: string, address: CellAddress): CellValue | undefined {
  return values.get(sheet)?.get(placeKey(address));
}

/** The same values with some of them new; sheets without news are shared. */
export function withValues(
  values: Values,
  news: readonly (CellAddress & { readonly sheet: string; readonly value: CellValue })[],
): Values {
  const next = new Map(values);
  const copied = new Map<string, Map<number, CellValue>>();
  for (const { sheet, value, ...address } of news) {
    const own = copied.get(sheet) ?? new Map(values.get(sheet));
    copied.set(sheet, own);
    next.set(sheet, own);
    if (value === null) own.delete(placeKey(address));
    else own.set(placeKey(address), value);
  }
  return next;
}

/** Values where their cells have gone: along with rows, columns and sheet names. They are the same figures as before, to
 *  be looked at until new ones come. */
export function valuesAfter(values: Values, difference: Difference, before: Workbook): Values {
  let moved = values;
  let workbook = before;
  for (const change of difference) {
    if (change.type === 'lines_place') {
      const name = workbook.sheets.find((sheet) => sheet.id === change.sheet)?.name ?? '';
      const own = moved.get(name);
      if (own) moved = new Map(moved).set(name, movedElsewhere(own, change));
    }
    if (change.type === 'lines') {
      const name = workbook.sheets.find((sheet) => sheet.id === change.sheet)?.name ?? '';
      const own = moved.get(name);
      if (own) moved = new Map(moved).set(name, movedAlong(own, change));
    }
    if (change.type === 'sheet_name') {
      const own = moved.get(change.before);
      const next = new Map(moved);
      next.delete(change.before);
      if (own) next.set(change.after, own);
      moved = next;
      workbook = applyDifference(workbook, [change]);
    }
  }
  return moved;
}

function movedAlong(
  own: ReadonlyMap<number, CellValue>,
  { axis, at, before, after }: Extract<Change, { type: 'lines' }>,
): ReadonlyMap<number, CellValue> {
  const next = new Map<number, CellValue>();
  for (const [key, value] of own) {
    const place = placeOfKey(key);
    if (place[axis] < at) next.set(key, value);
    else if (place[axis] >= at + before.length) {
      next.set(placeKey({ ...place, [axis]: place[axis] - before.length + after.length }), value);
    }
  }
  return next;
}

function movedElsewhere(
  own: ReadonlyMap<number, CellValue>,
  change: Extract<Change, { type: 'lines_place' }>,
): ReadonlyMap<number, CellValue> {
  const move = moveOf(change);
  const next = new Map<number, CellValue>();
  for (const [key, value] of own) {
    const place = placeOfKey(key);
    next.set(placeKey({ ...place, [change.axis]: lineAfterMove(place[change.axis], move) }), value);
  }
  return next;
}

/** Only the values of cells that hold formulas now; what an undone formula once came to is left out. */
export function valuesOfFormulas(workbook: Workbook, values: Values): Values {
  return new Map(
    workbook.sheets.flatMap((sheet) => {
      const own = values.get(sheet.name);
      if (!own) return [];
      const kept = [...own].filter(([key]) => {
        const cell = cellAt(sheet, placeOfKey(key));
        return cell !== null && isFormula(cell.content);
      });
      return [[sheet.name, kept.length === own.size ? own : new Map(kept)] as const];
    }),
  );
}
