import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { type LeastSheet, type LeastTable, leastSheet, leastTables } from '../../trade/gauge/least.ts';
import { shapes } from '../../trade/section.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing } from '../drawing.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches, sayValue } from '../say.ts';
import type { SourceId } from '../sources.ts';
import type { Caution } from '../working.ts';

interface Least {
  readonly sheet: LeastSheet;
  readonly asked: number;
}

const sourceOf: Readonly<Record<LeastTable, SourceId>> = {
  'dwelling code': 'code-table-603-4',
  'older code': 'state-rule-1346-0603',
  'estimating handbook': 'estimating-handbook-2007',
};

const localCode: Caution = {
  level: 'care',
  sentence:
    'Editions differ, and states and cities change them. The local code and licensed practice decide which sheet a duct needs; ask before you order.',
};

const garage: Caution = {
  level: 'care',
  sentence:
    'A duct in a private garage, or through the wall to one, needs at least 26 ga steel and no opening into the garage where the older code table is law; other codes have rules of their own.',
  source: 'state-rule-1346-0603',
};

export const gaugeLeast = defineFunction({
  name: 'GAUGE.LEAST',
  says: 'The lightest gauge, or the least thickness, that a table allows for a duct.',
  words: [
    'gage',
    'minimum gauge',
    'which gauge',
    'what gauge do i need',
    'code thickness',
    'imc',
    'pressure class',
    'sheet thickness',
  ],
  gives: { label: 'Least sheet', unit: 'gauge', orUnits: ['in'] },
  unitOf: ({ what }) => (what === 'gauge' ? 'gauge' : 'in'),
  arguments: {
    shape: choice(shapes, { says: 'the shape of the duct' }),
    size: quantity('in', {
      says: 'the diameter of a round duct, or the largest side of a rectangular one',
      least: 2,
      most: 120,
      why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
    }),
    pressure: optional(
      quantity('inwg', {
        says: 'the static pressure that the duct is made for; between two columns of a table the higher one is taken',
        least: 0.01,
        most: 10,
        why: 'duct is made for at most 10 in. w.g.',
      }),
      1,
      'it is the higher column of the dwelling table, so nothing comes out too light',
    ),
    material: optional(
      choice(['galvanized', 'aluminum', 'galvanised', 'aluminium'], { says: 'the metal of the sheet' }),
      'galvanized',
      'most ducts are galvanized (common practice, no source)',
    ),
    table: optional(
      choice(leastTables, {
        says: 'the table: "dwelling code" is table 603.4 of the mechanical code of 2015 and later, "older code" the one before 2009 that some states keep, "estimating handbook" a series for low-pressure commercial duct',
      }),
      'dwelling code',
      'it is the newest table held here; ask which one is law where the duct will hang',
    ),
    what: optional(
      choice(['gauge', 'thickness'], { says: 'the gauge number, or the thickness in inches' }),
      'gauge',
      'sheet is ordered by its gauge',
    ),
    place: optional(
      choice(['enclosed', 'exposed'], {
        says: 'for a rectangular duct in the older code: enclosed in the building, or exposed',
      }),
      'exposed',
      'it is the heavier sheet, so nothing comes out too light',
    ),
  },
  formula: [
    String.raw`\text{dwelling code:}\quad t = \text{table}(\mathrm{shape}, \mathrm{size}, \mathrm{pressure}, \mathrm{material}) \quad \text{(first row that reaches the size, column 0.5 or 1)}`,
    String.raw`\text{dwelling code:}\quad \text{gauge} = \text{the largest number whose minimum thickness, to three decimals, is} \ge t`,
    String.raw`\text{older code:}\quad (t, \text{gauge}) = \text{table}(\mathrm{shape}, \mathrm{place}, \mathrm{size}, \mathrm{material}) \quad \text{(rows: size} \le 14 \text{, size} > 14 \text{)}`,
    String.raw`\text{estimating handbook:}\quad \text{gauge} = \text{table}(\mathrm{size}) \quad \text{(rows up to 12, 30, 54, 84, over 84)}, \quad t = \text{nominal thickness of it}`,
  ],
  work: ({ shape, size, pressure, material, table, what, place }): Outcome<Least, CallFault> => {
    const metal = material === 'galvanized' || material === 'galvanised' ? 'galvanized' : 'aluminum';
    const found = fromTrade(
      leastSheet(table, { shape, size, pressure, metal, isExposed: place === 'exposed' }),
    );
    if (!found.ok) return found;
    const sheet = found.value;
    const asked = what === 'gauge' ? sheet.gauge : sheet.thickness;
    return asked === null
      ? failed({ code: 'trade', fault: { code: 'no_least_gauge', metal, thickness: sheet.thickness } })
      : done({ sheet, asked });
  },
  result: ({ asked }) => asked,
  steps: ({ sheet, asked }, { table, what }) => {
    const source = sourceOf[table];
    const row = { label: 'Row of the table', sum: '', value: rowOf(sheet), unit: 'count', source } as const;
    const thickness = {
      label: table === 'estimating handbook' ? 'Nominal thickness of that gauge' : 'Least thickness',
      sum: '',
      value: sheet.thickness,
      unit: 'in',
      source: table === 'estimating handbook' ? 'galvanized-gauge-table' : source,
    } as const;
    if (what === 'thickness') return [row, thickness];
    const gauge = {
      label: 'Least gauge',
      sum:
        table === 'dwelling code'
          ? `lightest whose minimum, to three decimals, is ${figure(sheet.thickness, 4)} in or more`
          : '',
      value: asked,
      unit: 'gauge',
      source: table === 'dwelling code' ? 'galvanized-gauge-table' : source,
    } as const;
    return table === 'estimating handbook' ? [row, gauge] : [row, thickness, gauge];
  },
  drawing: ({ sheet }, { shape, size, table }) => leastDrawing(sheet, shape, size, table),
  cautions: (_, { table }) => [
    localCode,
    garage,
    ...(table === 'estimating handbook'
      ? [
          {
            level: 'look',
            sentence:
              'This series is for low pressure, and supposes the joints and stiffeners that go with it. The contractors’ duct standard decides; type its row from your own copy where the job names it.',
            source: 'estimating-handbook-2007',
          } as const,
        ]
      : []),
    ...(table === 'older code'
      ? [
          {
            level: 'look',
            sentence: 'The older table does not ask for the pressure, so it is for low-pressure duct only.',
            source: 'state-rule-1346-0603',
          } as const,
        ]
      : []),
  ],
  sources: ['code-table-603-4'],
  examples: [
    {
      says: 'an 8 in round pipe in a dwelling at 1/2 in. w.g.',
      given: { shape: 'round', size: 8, pressure: 0.5 },
      gives: 30,
      source: 'code-table-603-4',
    },
    {
      says: 'the least thickness of a 20 in aluminum duct at 1/2 in. w.g.',
      given: { shape: 'rectangular', size: 20, pressure: 0.5, material: 'aluminum', what: 'thickness' },
      gives: 0.034,
      source: 'code-table-603-4',
    },
    {
      says: 'a commercial duct with a side of 28 in, by the handbook',
      given: { shape: 'rectangular', size: 28, table: 'estimating handbook' },
      gives: 24,
      source: 'estimating-handbook-2007',
    },
    {
      says: 'an exposed 16 in duct where the older code is law',
      given: { shape: 'rectangular', size: 16, table: 'older code', place: 'exposed' },
      gives: 26,
      source: 'state-rule-1346-0603',
    },
  ],
});

function rowOf({ row, rowIsUnder }: LeastSheet): string {
  if (row === null) return 'over the last size';
  return rowIsUnder ? `under ${sayInches(row)}` : `up to ${sayInches(row)}`;
}

/** The section with its size, and what the sheet must be. */
function leastDrawing(
  sheet: LeastSheet,
  shape: 'round' | 'rectangular',
  size: Inches,
  table: LeastTable,
): Drawing {
  const says = sheet.gauge === null ? 'least' : `${sheet.gauge} ga,`;
  const texts = [`${says} ${figure(sheet.thickness, 4)} in`, table, `row ${rowOf(sheet)}`];
  return {
    title: `Least sheet by the ${table}`,
    describes: `A ${shape} duct, ${sayValue(size, 'in')} across: ${texts[0]} by the ${table}, ${texts[2]}.`,
    height: 170,
    marks: [
      shape === 'round'
        ? { type: 'circle', center: { x: 86, y: 100 }, radius: 50, role: 'metal' }
        : {
            type: 'outline',
            points: [
              { x: 36, y: 66 },
              { x: 136, y: 66 },
              { x: 136, y: 134 },
              { x: 36, y: 134 },
            ],
            closed: true,
            role: 'metal',
          },
      {
        type: 'measure',
        from: { x: 36, y: shape === 'round' ? 38 : 50 },
        to: { x: 136, y: shape === 'round' ? 38 : 50 },
        text: sayInches(inches(size)),
      },
      ...texts.map(
        (text, index) =>
          ({ type: 'label', at: { x: 158, y: 82 + 22 * index }, text, anchor: 'start' }) as const,
      ),
    ],
  };
}
