import { type CellAddress, readAddress, writeAddress } from '../base/address.ts';
import { type Change, workbookStanding } from './difference.ts';
import type { HouseType, Workbook, WorkedExample } from './document.ts';

/** A cell that something outside the grid keeps, its sheet by name. */
export interface KeptPlace extends CellAddress {
  readonly sheet: string;
}

/** Where a kept cell comes to stand; null where it goes. What it leaves alone it gives back as it came. */
export type PlaceRule = (place: KeptPlace) => KeptPlace | null;

/** Reads a place as worked examples write it: `Seal and fasten!B4`. Null where the text is no such place. */
export function readKeptPlace(written: string): KeptPlace | null {
  const mark = written.lastIndexOf('!');
  const address = readAddress(written.slice(mark + 1));
  return mark > 0 && address ? { sheet: written.slice(0, mark), ...address } : null;
}

export function writeKeptPlace({ sheet, ...address }: KeptPlace): string {
  return `${sheet}!${writeAddress(address)}`;
}

/** The changes that let everything follow that keeps places of cells, after cells have moved or gone. Every command that
 *  moves cells adds them. */
export function keptPlacesAfter(workbook: Workbook, rule: PlaceRule): readonly Change[] {
  const examples = workbook.examples.flatMap((example) => exampleAfter(example, rule));
  const isSame =
    examples.length === workbook.examples.length &&
    examples.every((example, at) => example === workbook.examples[at]);
  return [
    ...(isSame ? [] : [{ type: 'examples', before: workbook.examples, after: examples } as const]),
    ...houseAfter(workbook, rule),
  ];
}

/** A choice no longer fills, and a lot table no longer shows, a cell that is gone. */
function houseAfter(workbook: Workbook, rule: PlaceRule): readonly Change[] {
  const { house } = workbook;
  if (!house) return [];
  const lotName = house.lotName === undefined ? null : placeAfter(house.lotName, rule);
  const after: HouseType = {
    options: house.options.map((option) => ({
      ...option,
      choices: option.choices.map((choice) => ({ ...choice, sets: byPlaceAfter(choice.sets, rule) })),
    })),
    varies: house.varies.flatMap((place) => placeAfter(place, rule) ?? []),
    ...(lotName === null ? {} : { lotName }),
    results: house.results.flatMap((result) => {
      const place = placeAfter(result.place, rule);
      return place === null ? [] : [{ ...result, place }];
    }),
  };
  if (JSON.stringify(after) === JSON.stringify(house)) return [];
  const before = workbookStanding(workbook);
  return [{ type: 'standing', before, after: { ...before, house: after } }];
}

/** An example that has lost every result would hold whatever is figured, so it goes with the last of them. */
function exampleAfter(example: WorkedExample, rule: PlaceRule): readonly WorkedExample[] {
  const given = byPlaceAfter(example.given, rule);
  const gives = byPlaceAfter(example.gives, rule);
  if (given === example.given && gives === example.gives) return [example];
  if (gives !== example.gives && Object.keys(gives).length === 0) return [];
  return [{ ...example, given, gives }];
}

/** What is kept by place, at the places where its cells have gone; what stood at a cell that is gone is left out. The very
 *  same object where nothing has moved. */
export function byPlaceAfter<Kept>(
  kept: { readonly [place: string]: Kept },
  rule: PlaceRule,
): { readonly [place: string]: Kept } {
  const before = Object.entries(kept);
  const after = before.flatMap(([place, value]): readonly (readonly [string, Kept])[] => {
    const moved = placeAfter(place, rule);
    return moved === null ? [] : [[moved, value]];
  });
  const isSame = after.length === before.length && after.every(([place], at) => place === before[at]?.[0]);
  return isSame ? kept : Object.fromEntries(after);
}

/** One written place after cells have moved; null where its cell is gone. */
export function placeAfter(written: string, rule: PlaceRule): string | null {
  const place = readKeptPlace(written);
  if (!place) return written;
  const moved = rule(place);
  if (moved === place) return written;
  return moved && writeKeptPlace(moved);
}

export function isSameSheet(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
