import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, type InchesOfWater, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { Shape } from '../section.ts';
import { gaugesOf, sheetOf } from './sheet.ts';

/** Which table tells the least sheet. Editions and places differ, so it is always somebody's choice. */
export const leastTables = ['dwelling code', 'older code', 'estimating handbook'] as const;
export type LeastTable = (typeof leastTables)[number];

/** The metals that the tables tell of. */
export type DuctMetal = 'galvanized' | 'aluminum';

export interface DuctInUse {
  readonly shape: Shape;
  /** The diameter of a round duct, the largest side of a rectangular one. */
  readonly size: Inches;
  readonly pressure: InchesOfWater;
  readonly metal: DuctMetal;
  /** Only the older table asks: a rectangular duct that is not enclosed in the building. */
  readonly isExposed: boolean;
}

export interface LeastSheet {
  /** The row that was taken: sizes up to and with this one; past every row of the table for the last open one. */
  readonly row: Inches | null;
  readonly rowIsUnder: boolean;
  /** As the table prints it, or the nominal sheet where it prints gauges. */
  readonly thickness: Inches;
  readonly gauge: number | null;
}

interface CodeRow {
  readonly upTo: number;
  readonly isUnder?: boolean;
  readonly half: Readonly<Record<DuctMetal, number>>;
  readonly one: Readonly<Record<DuctMetal, number>>;
}

const steps = {
  a: { galvanized: 0.013, aluminum: 0.018 },
  b: { galvanized: 0.016, aluminum: 0.023 },
  c: { galvanized: 0.019, aluminum: 0.027 },
  d: { galvanized: 0.024, aluminum: 0.034 },
} as const;

// Mechanical code table 603.4, single dwellings, read on a code site: 1/2 and 1 in. w.g.
const dwelling: Readonly<Record<Shape, readonly CodeRow[]>> = {
  round: [
    { upTo: 12, isUnder: true, half: steps.a, one: steps.a },
    { upTo: 14, half: steps.a, one: steps.b },
    { upTo: 17, half: steps.b, one: steps.c },
    { upTo: 18, half: steps.b, one: steps.d },
    { upTo: 20, half: steps.c, one: steps.d },
  ],
  rectangular: [
    { upTo: 8, half: steps.a, one: steps.a },
    { upTo: 10, half: steps.a, one: steps.b },
    { upTo: 12, half: steps.b, one: steps.c },
    { upTo: 16, half: steps.c, one: steps.c },
    { upTo: 18, half: steps.c, one: steps.d },
    { upTo: 20, half: steps.d, one: steps.d },
  ],
};
/** In. w.g.: the higher column of the table. */
const mostPressure = 1;

// Minnesota Rules 1346.0603 and Oklahoma 748:20-6-21, read: inches and gauges up to 14 in and over it.
const older = {
  enclosed: [
    { thickness: 0.013, gauge: { galvanized: 30, aluminum: 26 } },
    { thickness: 0.016, gauge: { galvanized: 28, aluminum: 24 } },
  ],
  exposed: [
    { thickness: 0.016, gauge: { galvanized: 28, aluminum: 24 } },
    { thickness: 0.019, gauge: { galvanized: 26, aluminum: 22 } },
  ],
} as const;

// Mechanical estimating handbook of 2007, p. 129, rectangular galvanized, low pressure.
const handbook = [
  { upTo: 12, gauge: 26 },
  { upTo: 30, gauge: 24 },
  { upTo: 54, gauge: 22 },
  { upTo: 84, gauge: 20 },
  { upTo: null, gauge: 18 },
] as const;

/** The least sheet that a table allows for a duct. A size or pressure between two rows or columns takes the larger one.
 *  In inches and in. w.g. Faults: `past_the_table`, `not_in_the_table`. Sources: beside each table. */
export function leastSheet(table: LeastTable, duct: DuctInUse): Outcome<LeastSheet, TradeFault> {
  switch (table) {
    case 'dwelling code':
      return byDwellingCode(duct);
    case 'older code':
      return done(byOlderCode(duct));
    case 'estimating handbook':
      return byHandbook(duct);
  }
}

/** The lightest galvanized gauge that meets a least thickness. Codes round the minimum of a gauge to three decimals, so
 *  the same is done before comparing; unrounded, a gauge would fail its own row. */
export function lightestGalvanized(least: Inches): number | null {
  const meeting = gaugesOf('galvanized').filter((gauge) => {
    const sheet = sheetOf('galvanized', gauge, 'minimum');
    return sheet.ok && Math.round(sheet.value.thickness * 1000) >= Math.round(least * 1000);
  });
  return meeting.length === 0 ? null : Math.max(...meeting);
}

function byDwellingCode({ shape, size, pressure, metal }: DuctInUse): Outcome<LeastSheet, TradeFault> {
  const table = 'dwelling code';
  if (pressure > mostPressure) {
    return failed({ code: 'past_the_table', table, what: 'pressure', got: pressure, most: mostPressure });
  }
  const rows = dwelling[shape];
  const row = rows.find(({ upTo, isUnder }) => (isUnder ? size < upTo : size <= upTo));
  const last = rows.at(-1);
  if (!row) {
    return failed({ code: 'past_the_table', table, what: 'size', got: size, most: last?.upTo ?? 0 });
  }
  const thickness = inches((pressure <= 0.5 ? row.half : row.one)[metal]);
  return done({
    row: inches(row.upTo),
    rowIsUnder: row.isUnder === true,
    thickness,
    gauge: metal === 'galvanized' ? lightestGalvanized(thickness) : null,
  });
}

function byOlderCode({ shape, size, metal, isExposed }: DuctInUse): LeastSheet {
  const rows = older[shape === 'rectangular' && isExposed ? 'exposed' : 'enclosed'];
  const isSmall = size <= 14;
  const row = rows[isSmall ? 0 : 1];
  return {
    row: isSmall ? inches(14) : null,
    rowIsUnder: false,
    thickness: inches(row.thickness),
    gauge: row.gauge[metal],
  };
}

function byHandbook({ shape, size, metal }: DuctInUse): Outcome<LeastSheet, TradeFault> {
  if (shape === 'round') {
    return failed({ code: 'not_in_the_table', table: 'estimating handbook', what: 'round duct' });
  }
  if (metal !== 'galvanized') {
    return failed({ code: 'not_in_the_table', table: 'estimating handbook', what: metal });
  }
  const row = handbook.find(({ upTo }) => upTo === null || size <= upTo) ?? handbook[4];
  const sheet = sheetOf('galvanized', row.gauge, 'nominal');
  if (!sheet.ok) return sheet;
  return done({
    row: row.upTo === null ? null : inches(row.upTo),
    rowIsUnder: false,
    thickness: sheet.value.thickness,
    gauge: row.gauge,
  });
}
