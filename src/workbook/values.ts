import type { CellAddress } from '../base/address.ts';
import { type CellValue, sameValue } from '../base/value.ts';
import { lineAfterMove } from '../formula/stretch.ts';
import { BandedValues, type BandWriter, type SheetValues, sharingBands, writeBands } from './bands.ts';
import { cellAt } from './cells.ts';
import { applyDifference, type Change, type Difference } from './difference.ts';
import { isFormula, type Workbook } from './document.ts';
import { moveOf } from './lines.ts';
import { placeKey, placeOfKey } from './place-key.ts';

/** The values of formula cells as last figured, by sheet name and place. Derived, so it may be thrown away. */
export type Values = ReadonlyMap<string, SheetValues>;

export const noValues: Values = new Map();

export function valueAt(values: Values, sheet: string, address: CellAddress): CellValue | undefined {
  return values.get(sheet)?.get(placeKey(address));
}

type ValueNews = CellAddress & { readonly sheet: string; readonly value: CellValue };

/** The same values with some of them new; sheets without news are shared, and of the others the rows without. */
export function withValues(values: Values, news: readonly ValueNews[]): Values {
  const writers = new Map<string, BandWriter>();
  for (const one of news) {
    let own = writers.get(one.sheet);
    if (!own) {
      own = writeBands(values.get(one.sheet));
      writers.set(one.sheet, own);
    }
    own.put(placeKey(one), one.value);
  }
  const next = new Map(values);
  for (const [sheet, own] of writers) next.set(sheet, own.done());
  return next;
}

/** All values figured anew; what came to the same as before stays the same object, so that nobody looks at it again. */
export function valuesAnew(before: Values, news: readonly ValueNews[]): Values {
  if (areAllThere(before, news)) return before;
  const next = new Map<string, SheetValues>();
  for (const [sheet, own] of withValues(noValues, news)) {
    next.set(sheet, own instanceof BandedValues ? sharingBands(before.get(sheet), own) : own);
  }
  const isSame = before.size === next.size && [...next].every(([sheet, own]) => before.get(sheet) === own);
  return isSame ? before : next;
}

/** Whether the news, one for each place, are just the values that there are: as a rule they are when a workbook is opened. */
function areAllThere(values: Values, news: readonly ValueNews[]): boolean {
  let count = 0;
  for (const own of values.values()) count += own.size;
  return (
    count === news.length &&
    news.every((one) => {
      const known = valueAt(values, one.sheet, one);
      return known !== undefined && sameValue(known, one.value);
    })
  );
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
  own: SheetValues,
  { axis, at, before, after }: Extract<Change, { type: 'lines' }>,
): SheetValues {
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

function movedElsewhere(own: SheetValues, change: Extract<Change, { type: 'lines_place' }>): SheetValues {
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
