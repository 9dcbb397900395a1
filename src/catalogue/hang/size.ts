import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { type HangerMake, usualMake } from '../../trade/hang/length.ts';
import { hangerRow, hangerSize } from '../../trade/hang/size.ts';
import type { DuctSection } from '../../trade/section.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayFeet, sayInches, sayValue } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import { table } from '../table.ts';
import type { Step } from '../working.ts';
import { spacingArgument } from './arguments.ts';
import { attachment, codeDecides, fromMemory, overhead } from './cautions.ts';
import { hangerDrawing } from './hanger-drawing.ts';
import { exampleHangers, hangerColumns, hangersIn, type SizedHanger } from './hangers.ts';

const parts = ['gauge', 'width', 'straps', 'rod', 'rods', 'wire', 'wires'] as const;
type Part = (typeof parts)[number];

interface Sized {
  readonly section: DuctSection;
  readonly size: Inches;
  readonly row: SizedHanger;
  readonly asked: number;
}

/** The strap, rod or wire of a duct by a table of sizes. Faults: `no_hanger_row`, `no_hanger_figure`. Source: the table. */
export const hangSize = defineFunction({
  name: 'HANG.SIZE',
  says: 'The strap, rod or wire for a duct at a spacing, from your own table of hangers.',
  words: [
    'strap size',
    'rod size',
    'hanger size',
    'strap gauge',
    'which strap',
    'hanger wire',
    'threaded rod',
  ],
  gives: { label: 'Hanger', unit: 'gauge', orUnits: ['in', 'count'] },
  unitOf: ({ what }) => unitOfPart(what),
  arguments: {
    ...sectionArguments,
    spacing: spacingArgument,
    hangers: table(hangerColumns, { says: 'the table of hangers by size, headings included' }),
    what: optional(
      choice(parts, {
        says: 'the gauge, the width or the number of straps; or the diameter or number of rods; or the gauge or number of wires',
      }),
      'gauge',
      'strap is bought by its gauge',
    ),
  },
  formula: [
    String.raw`\text{size} = \text{diameter (round)}, \quad \text{size} = \text{width} + \text{depth} \text{ (rectangular: half way round)}`,
    String.raw`\text{row} = \text{closest row with } \text{spacing}_{\text{row}} \ge \text{spacing} \text{ and } \text{size}_{\text{row}} \ge \text{size}`,
  ],
  work: (given): Outcome<Sized, CallFault> => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const rows = hangersIn(given.hangers);
    if (!rows.ok) return rows;
    const row = fromTrade(hangerRow(rows.value, section.value, given.spacing));
    if (!row.ok) return row;
    const asked = row.value[given.what];
    return asked === null
      ? failed({
          code: 'trade',
          fault: { code: 'no_hanger_figure', row: row.value.name, column: given.what },
        })
      : done({ section: section.value, size: hangerSize(section.value), row: row.value, asked });
  },
  result: ({ asked }) => asked,
  steps: ({ section, size, row, asked }, { what, spacing }): readonly Step[] => [
    section.shape === 'round'
      ? { label: 'Diameter', sum: '', value: size, unit: 'in' }
      : {
          label: 'Half way round',
          sum: `${figure(section.width, 4)} + ${figure(section.depth, 4)}`,
          value: size,
          unit: 'in',
          source: 'geometry',
        },
    {
      label: 'Row of the table',
      sum: `reaches ${sayValue(size, 'in')} at ${sayValue(spacing, 'in')}`,
      value: row.name,
      unit: 'count',
      source: 'hanger-table',
    },
    { label: labels[what], sum: '', value: asked, unit: unitOfPart(what), source: 'hanger-table' },
  ],
  drawing: ({ section, row, asked }, { what, spacing }) =>
    hangerDrawing({
      title: `Hanger of a ${saySection(section)} duct`,
      describes: `${labels[what]} of a ${saySection(section)} duct hung every ${sayFeet(spacing)}: ${sayPart(what, asked)}, from the row ${short(row.name)}.`,
      section,
      make: makeWith(section, what),
      isWrapped: false,
      notes: [labels[what], sayPart(what, asked), `every ${sayFeet(spacing)}`],
    }),
  cautions: () => [codeDecides, fromMemory, overhead, attachment],
  sources: ['hanger-table'],
  examples: [
    {
      says: 'strap of a duct 144 in round, hung every 5 ft',
      given: { shape: 'rectangular', width: 48, depth: 24, spacing: 60, hangers: exampleHangers },
      gives: 22,
      source: 'strap-article',
    },
    {
      says: 'strap of a duct 192 in round, hung every 5 ft',
      given: { shape: 'rectangular', width: 60, depth: 36, spacing: 60, hangers: exampleHangers },
      gives: 20,
      source: 'strap-article',
    },
    {
      says: 'rod of a 30 in pipe hung every 10 ft, as remembered',
      given: { shape: 'round', width: 30, spacing: 120, hangers: exampleHangers, what: 'rod' },
      gives: 0.375,
      source: 'hanger-table',
    },
  ],
});

const labels: Readonly<Record<Part, string>> = {
  gauge: 'Gauge of the strap',
  width: 'Width of the strap',
  straps: 'Straps',
  rod: 'Rod',
  rods: 'Rods',
  wire: 'Gauge of the wire',
  wires: 'Wires',
};

/** Rods hold a band round a pipe, or a bar under a rectangular duct. */
function makeWith(section: DuctSection, part: Part): HangerMake {
  if (part !== 'rod' && part !== 'rods') return usualMake(section);
  return section.shape === 'round' ? 'full round' : 'trapeze';
}

function unitOfPart(part: Part): 'gauge' | 'in' | 'count' {
  if (part === 'gauge' || part === 'wire') return 'gauge';
  return part === 'width' || part === 'rod' ? 'in' : 'count';
}

function sayPart(part: Part, value: number): string {
  return unitOfPart(part) === 'in' ? sayInches(inches(value)) : sayValue(value, unitOfPart(part));
}

/** A name that fits into a sentence. */
function short(name: string): string {
  return name.length > 40 ? `${name.slice(0, 39)}…` : name;
}
