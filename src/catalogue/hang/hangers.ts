import { done, type Outcome } from '../../base/outcome.ts';
import type { HangerRow } from '../../trade/hang/size.ts';
import type { CallFault } from '../fault.ts';
import { numberColumn, optionalNumberColumn, type Row, type Table } from '../table.ts';

const reach = (says: string, most: number) => optionalNumberColumn('in', { says, least: 2, most });
const pieces = (says: string) => optionalNumberColumn('count', { says, least: 1, most: 4 });

/** The columns of the `hangers` table: what each row is good for, and what it is made of. */
export const hangerColumns = {
  round_to: reach('the largest round duct; blank where the row is for rectangular duct', 120),
  half_perimeter_to: reach('the most half way round a rectangular duct; blank where it is for round', 240),
  spacing: numberColumn('in', { says: 'the widest spacing between hangers', least: 12, most: 300 }),
  straps: pieces('how many straps'),
  width: optionalNumberColumn('in', { says: 'width of the strap', least: 0.25, most: 6 }),
  gauge: optionalNumberColumn('gauge', { says: 'gauge of the strap', least: 8, most: 30 }),
  rods: pieces('how many rods, where rods are used instead'),
  rod: optionalNumberColumn('in', { says: 'diameter of the rod', least: 0.125, most: 2 }),
  wires: pieces('how many wires, where wire is used instead'),
  wire: optionalNumberColumn('gauge', { says: 'gauge of the wire', least: 4, most: 20 }),
};

export type HangerTable = Table<typeof hangerColumns>;
export type SizedHanger = HangerRow & Row<typeof hangerColumns>;

/** Every row of the table, by its name. */
export function hangersIn(table: HangerTable): Outcome<readonly SizedHanger[], CallFault> {
  const rows: SizedHanger[] = [];
  for (const name of table.keys) {
    const row = table.find(name);
    if (!row.ok) return row;
    const { round_to, half_perimeter_to, spacing } = row.value;
    rows.push({
      ...row.value,
      name,
      roundTo: round_to,
      halfPerimeterTo: half_perimeter_to,
      spacingTo: spacing,
    });
  }
  return done(rows);
}

/** Half way round, then the strap at 10, 8, 5 and 4 ft: remembered from the duct standard, not verified. Only 22 ga to
 *  72 in and 20 ga to 96 in at 5 ft are also told by a strap article. */
const remembered = [
  [30, [1, 22], [1, 22], [1, 22], [1, 22]],
  [72, [1, 18], [1, 20], [1, 22], [1, 22]],
  [96, [1, 16], [1, 18], [1, 20], [1, 22]],
  [120, [1.5, 16], [1, 16], [1, 18], [1, 20]],
  [168, [1.5, 16], [1.5, 16], [1, 16], [1, 18]],
  [192, null, [1.5, 16], [1, 16], [1, 16]],
] as const;

const rectangular = remembered.flatMap(([half, ...straps]) =>
  straps.flatMap((strap, index) => {
    const feet = [10, 8, 5, 4][index] ?? 4;
    return strap === null
      ? []
      : [
          [
            `half ${half} at ${feet} ft`,
            null,
            half,
            12 * feet,
            2,
            strap[0],
            strap[1],
            null,
            null,
            null,
            null,
          ],
        ];
  }),
);

/** The table as examples and tests need it, and as a workbook may begin with it: remembered, not verified. */
export const exampleHangers: readonly (readonly (string | number | null)[])[] = [
  [
    'hanger',
    'round to',
    'half perimeter to',
    'spacing',
    'straps',
    'width',
    'gauge',
    'rods',
    'rod',
    'wires',
    'wire',
  ],
  ['round to 10', 10, null, 144, 1, 1, 22, 1, 0.25, 1, 12],
  ['round to 18', 18, null, 144, 1, 1, 22, 1, 0.25, 2, 12],
  ['round to 24', 24, null, 144, 1, 1, 22, 1, 0.25, 2, 10],
  ['round to 36', 36, null, 144, 1, 1, 20, 1, 0.375, 2, 8],
  ['round to 50', 50, null, 144, 2, 1, 20, 2, 0.375, null, null],
  ['round to 60', 60, null, 144, 2, 1, 18, 2, 0.375, null, null],
  ['round to 84', 84, null, 144, 2, 1, 16, 2, 0.375, null, null],
  ...rectangular,
];

/** The columns of the `straps` table: what one strap, rod or wire may carry. */
export const strapColumns = {
  load: numberColumn('lb', { says: 'the most that one may carry', least: 1, most: 20_000 }),
  width: optionalNumberColumn('in', { says: 'width of a strap, or diameter of a rod', least: 0.1, most: 6 }),
  gauge: optionalNumberColumn('gauge', { says: 'gauge of a strap or a wire', least: 4, most: 30 }),
};

/** Strap loads as remembered from the duct standard, not verified. */
export const exampleStraps: readonly (readonly (string | number | null)[])[] = [
  ['strap', 'load', 'width', 'gauge'],
  ['1 in of 22 ga', 260, 1, 22],
  ['1 in of 20 ga', 320, 1, 20],
  ['1 in of 18 ga', 420, 1, 18],
  ['1 in of 16 ga', 700, 1, 16],
  ['1 1/2 in of 16 ga', 1100, 1.5, 16],
];
