import { done, failed, type Outcome } from '../../base/outcome.ts';
import {
  type Fahrenheit,
  type Inches,
  type ThermalResistance,
  thermalResistance,
} from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

/** The documents whose least R is held here: who says it, and for which buildings. */
export const neededCodes = [
  'IECC 2009 homes',
  'IECC 2015 homes',
  'IRC 2018 homes',
  'IRC 2018 buried duct',
  'Washington 2021 homes',
  'Minnesota homes',
  'Wisconsin homes',
  'Ontario homes',
  'federal guidance homes',
  'weatherization 2020',
  'IECC 2015 commercial',
  'Washington 2015 commercial',
] as const;
export type NeededCode = (typeof neededCodes)[number];

export const ductPlaces = [
  'attic',
  'crawl space',
  'basement',
  'garage',
  'outdoors',
  'wall or roof',
  'slab or ground',
  'attic insulation',
  'inside',
] as const;
export type DuctPlace = (typeof ductPlaces)[number];

export const ductDuties = ['supply', 'return'] as const;
export type DuctDuty = (typeof ductDuties)[number];

/** What a code asks about a duct. `size` is the diameter or the larger side. */
export interface DuctInPlace {
  readonly place: DuctPlace;
  readonly size: Inches;
  readonly duty: DuctDuty;
  /** Climate zone of the energy code, 1 to 8; only commercial tables ask. */
  readonly zone: number | null;
  /** Between the air in the duct and its surroundings; only some tables ask. */
  readonly difference: Fahrenheit | null;
}

export interface NeededR {
  readonly code: NeededCode;
  /** The row of the document, in short. */
  readonly row: string;
  /** 0 where the document asks for none. */
  readonly r: ThermalResistance;
  /** What the row asks for besides R. */
  readonly also: string | null;
}

/** Every condition that is set must hold; the first row that fits is taken. Limits of size and difference: from (included)
 *  and under for size, over and up to (included) for the difference; zones both included. */
interface NeededRow {
  readonly says: string;
  readonly places: readonly DuctPlace[];
  readonly r: number;
  readonly duty?: DuctDuty;
  readonly sizeFrom?: number;
  readonly sizeUnder?: number;
  readonly zones?: readonly [number, number];
  readonly over?: number;
  readonly upTo?: number;
  readonly also?: string;
}

const around: readonly DuctPlace[] = ['crawl space', 'basement', 'garage'];
const unheated: readonly DuctPlace[] = ['attic', ...around];
const smallDuct = 3;

// Commercial rows are the same in the model text and in the state text; zones 1 to 4 and 5 to 8.
const commercialOutdoors: readonly NeededRow[] = [
  { says: 'outside the building, zones 1 to 4', places: ['outdoors'], zones: [1, 4], r: 8 },
  { says: 'outside the building, zones 5 to 8', places: ['outdoors'], zones: [5, 8], r: 12 },
];

/** Each document as it was read or quoted; nothing is filled in between them. */
const tables: Readonly<Record<NeededCode, readonly NeededRow[]>> = {
  // A state energy-code site, in a remark.
  'IECC 2009 homes': [
    { says: 'supply duct in an attic', places: ['attic'], duty: 'supply', r: 8 },
    { says: 'return duct in an attic', places: ['attic'], duty: 'return', r: 6 },
  ],
  // R403.3.1, as a state energy-code site prints it.
  'IECC 2015 homes': [
    { says: 'in an attic, 3 in and larger', places: ['attic'], sizeFrom: smallDuct, r: 8 },
    { says: 'in an attic, smaller than 3 in', places: ['attic'], sizeUnder: smallDuct, r: 6 },
    { says: 'elsewhere in the building, 3 in and larger', places: around, sizeFrom: smallDuct, r: 6 },
    { says: 'elsewhere in the building, smaller than 3 in', places: around, sizeUnder: smallDuct, r: 4.2 },
    { says: 'wholly inside the thermal envelope', places: ['inside'], r: 0 },
  ],
  // A state energy-code site sums the 2018 code up so; the text of 2015 has R 8 for both.
  'IRC 2018 homes': [
    { says: 'supply duct in an attic', places: ['attic'], duty: 'supply', r: 8 },
    { says: 'return duct in an attic', places: ['attic'], duty: 'return', r: 6 },
  ],
  // N1103.3.6 as a city adopted it. Where it is hot and humid, the supply needs 13.
  'IRC 2018 buried duct': [
    {
      says: 'buried in attic insulation',
      places: ['attic insulation'],
      r: 8,
      also: 'The duct and the ceiling insulation over and under it must add up to R 19 at least. Where it is hot and humid, a supply duct needs R 13.',
    },
  ],
  // WAC 51-11R-40320, R403.3.1 on the 2021 IECC.
  'Washington 2021 homes': [
    {
      says: 'outside conditioned space, 3 in and larger',
      places: [...unheated, 'outdoors'],
      sizeFrom: smallDuct,
      r: 8,
    },
    {
      says: 'outside conditioned space, smaller than 3 in',
      places: [...unheated, 'outdoors'],
      sizeUnder: smallDuct,
      r: 6,
    },
    { says: 'in a slab or in the ground', places: ['slab or ground'], r: 10 },
  ],
  // Minn. Rules 1322.1103: named places first, then by the difference.
  'Minnesota homes': [
    {
      says: 'in an attic, garage or vented crawl space',
      places: ['attic', 'garage', 'crawl space'],
      r: 8,
      also: 'A vapor retarder is asked for as well.',
    },
    {
      says: 'outside the building',
      places: ['outdoors'],
      r: 8,
      also: 'A vapor retarder and a weather cover are asked for as well.',
    },
    { says: 'unconditioned, difference up to 15 °F', places: ['basement'], upTo: 15, r: 0 },
    {
      says: 'unconditioned, difference over 15 up to 40 °F',
      places: ['basement'],
      over: 15,
      upTo: 40,
      r: 3.3,
    },
    { says: 'unconditioned, difference over 40 °F', places: ['basement'], over: 40, r: 5 },
  ],
  // SPS 322.42.
  'Wisconsin homes': [
    {
      says: 'heating duct outside the envelope, or cooling supply in an attic',
      places: [...unheated, 'outdoors'],
      r: 8,
      also: 'The row is for heating ducts outside the thermal envelope, and for cooling supply ducts in an attic.',
    },
  ],
  // Building code 9.33.6.7.(8): 2.1 m2·K/W.
  'Ontario homes': [{ says: 'next to unheated space, 2.1 m²·K/W', places: unheated, r: 2.1 / 0.17611 }],
  'federal guidance homes': [
    { says: 'supply duct in unconditioned space', places: unheated, duty: 'supply', r: 8 },
    { says: 'other duct in unconditioned space', places: unheated, duty: 'return', r: 6 },
  ],
  // Standard work specification 5.0107.1c.
  'weatherization 2020': [
    { says: 'outside the thermal boundary', places: unheated, r: 8 },
    { says: 'outdoors', places: ['outdoors'], r: 12 },
  ],
  // C403.2.9, as a maker article prints it.
  'IECC 2015 commercial': [
    { says: 'in unconditioned space, all zones', places: unheated, r: 6 },
    ...commercialOutdoors,
    { says: 'in an assembly of the envelope, zones 1 to 4', places: ['wall or roof'], zones: [1, 4], r: 8 },
    { says: 'in an assembly of the envelope, zones 5 to 8', places: ['wall or roof'], zones: [5, 8], r: 12 },
  ],
  // WAC 51-11C-40327, C403.2.8.2: the state has zones 4 and 5 only.
  'Washington 2015 commercial': [
    { says: 'in unconditioned space', places: unheated, r: 6 },
    { says: 'outdoors, zone 4', places: ['outdoors'], zones: [4, 4], r: 8 },
    { says: 'outdoors, zone 5', places: ['outdoors'], zones: [5, 5], r: 12 },
  ],
};

/** Least R (flat, installed, h·ft²·°F/Btu) that a document asks for around a duct in a place. Faults: `no_code_row`, and
 *  `needs_for_table` where the row goes by a figure that was not given. Sources: beside each table. */
export function neededR(code: NeededCode, duct: DuctInPlace): Outcome<NeededR, TradeFault> {
  const rows = tables[code];
  const here = rows.filter((row) => row.places.includes(duct.place));
  if (duct.zone === null && here.some((row) => row.zones)) {
    return failed({ code: 'needs_for_table', table: code, what: 'zone' });
  }
  if (duct.difference === null && here.some((row) => row.over !== undefined || row.upTo !== undefined)) {
    return failed({ code: 'needs_for_table', table: code, what: 'difference' });
  }
  const row = here.find((one) => fits(one, duct));
  if (!row) {
    const what = here.some((one) => one.zones) ? `zone ${duct.zone}` : placeWords[duct.place];
    return failed({ code: 'no_code_row', table: code, what, rows: rows.map((one) => one.says) });
  }
  return done({ code, row: row.says, r: thermalResistance(row.r), also: row.also ?? null });
}

function fits(row: NeededRow, { size, duty, zone, difference }: DuctInPlace): boolean {
  const isWithin = (value: number | null, least: number, most: number) =>
    value !== null && value >= least && value <= most;
  return (
    (row.duty === undefined || row.duty === duty) &&
    size >= (row.sizeFrom ?? 0) &&
    size < (row.sizeUnder ?? Number.POSITIVE_INFINITY) &&
    (row.zones === undefined || isWithin(zone, row.zones[0], row.zones[1])) &&
    (row.over === undefined || (difference ?? 0) > row.over) &&
    (row.upTo === undefined || (difference ?? 0) <= row.upTo)
  );
}

const placeWords: Readonly<Record<DuctPlace, string>> = {
  attic: 'a duct in an attic',
  'crawl space': 'a duct in a crawl space',
  basement: 'a duct in a basement',
  garage: 'a duct in a garage',
  outdoors: 'a duct outdoors',
  'wall or roof': 'a duct in a wall or roof',
  'slab or ground': 'a duct in a slab or in the ground',
  'attic insulation': 'a duct buried in attic insulation',
  inside: 'a duct inside the thermal envelope',
};
