import { type CellValue, sameValue } from '../base/value.ts';
import { columnsAtMost } from './place-key.ts';

/** Values of one sheet by place. */
export type SheetValues = ReadonlyMap<number, CellValue>;

/** So many rows make a band. */
export const rowsInBand = 64;

const keysInBand = rowsInBand * columnsAtMost;

/** A map that is parted into bands of rows. One that comes from another with some values new shares every band without
 *  news with it: an edit costs what it changes, and whoever looks at both sees where nothing has changed. */
export class BandedValues implements SheetValues {
  readonly bands: ReadonlyMap<number, SheetValues>;
  readonly size: number;

  constructor(bands: ReadonlyMap<number, SheetValues>) {
    this.bands = bands;
    let size = 0;
    for (const band of bands.values()) size += band.size;
    this.size = size;
  }

  get(key: number): CellValue | undefined {
    return this.bands.get(bandOf(key))?.get(key);
  }

  has(key: number): boolean {
    return this.bands.get(bandOf(key))?.has(key) ?? false;
  }

  forEach(tell: (value: CellValue, key: number, map: SheetValues) => void): void {
    for (const [key, value] of this) tell(value, key, this);
  }

  *entries(): MapIterator<[number, CellValue]> {
    for (const band of this.bands.values()) yield* band.entries();
  }

  *keys(): MapIterator<number> {
    for (const band of this.bands.values()) yield* band.keys();
  }

  *values(): MapIterator<CellValue> {
    for (const band of this.bands.values()) yield* band.values();
  }

  [Symbol.iterator](): MapIterator<[number, CellValue]> {
    return this.entries();
  }
}

function bandOf(key: number): number {
  return Math.floor(key / keysInBand);
}

/** The values of one band of rows: the same object while none of them is new. Values that are not parted are one band. */
export function bandAt(own: SheetValues | undefined, band: number): SheetValues | undefined {
  return own instanceof BandedValues ? own.bands.get(band) : own;
}

/** Takes news of one sheet; `done` gives the map with them in it. */
export interface BandWriter {
  /** Null is no value. */
  put(key: number, value: CellValue): void;
  done(): BandedValues;
}

export function writeBands(before?: SheetValues): BandWriter {
  const bands = new Map(before instanceof BandedValues ? before.bands : undefined);
  const fresh = new Map<number, Map<number, CellValue>>();

  function put(key: number, value: CellValue): void {
    const at = bandOf(key);
    let band = fresh.get(at);
    if (!band) {
      band = new Map(bands.get(at));
      fresh.set(at, band);
      bands.set(at, band);
    }
    if (value === null) band.delete(key);
    else band.set(key, value);
  }

  if (before && !(before instanceof BandedValues)) for (const [key, value] of before) put(key, value);
  return { put, done: () => new BandedValues(bands) };
}

/** The values of `next`, with the bands of `before` wherever they hold the same; `before` itself where nothing differs. */
export function sharingBands(before: SheetValues | undefined, next: BandedValues): SheetValues {
  if (!(before instanceof BandedValues)) return next;
  const shared = new Map<number, SheetValues>();
  for (const [at, band] of next.bands) {
    const old = before.bands.get(at);
    shared.set(at, old && holdSame(old, band) ? old : band);
  }
  const isSame =
    before.size === next.size &&
    [...shared].every(([at, band]) => band.size === 0 || band === before.bands.get(at));
  return isSame ? before : new BandedValues(shared);
}

function holdSame(some: SheetValues, others: SheetValues): boolean {
  if (some.size !== others.size) return false;
  for (const [key, value] of some) {
    const other = others.get(key);
    if (other === undefined || !sameValue(value, other)) return false;
  }
  return true;
}
