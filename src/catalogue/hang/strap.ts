import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Pounds } from '../../base/quantity.ts';
import { weakestFor } from '../../trade/hang/size.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { type Row, table } from '../table.ts';
import type { Step } from '../working.ts';
import { attachment, codeDecides, fromMemory } from './cautions.ts';
import { exampleStraps, strapColumns } from './hangers.ts';

type Strap = Row<typeof strapColumns> & { readonly name: string };

interface Chosen {
  readonly strap: Strap;
  readonly asked: number | string;
}

const units = { name: 'count', width: 'in', gauge: 'gauge', load: 'lb' } as const;

export const loadArgument = quantity('lb', {
  says: 'the load on one strap or rod; HANG.LOAD gives it',
  least: 0,
  most: 20_000,
  why: 'no hanger of sheet-metal duct carries ten tons',
});

/** The weakest strap, rod or wire of a table that still carries a load. Faults: `too_heavy`, `no_hanger_figure`. */
export const hangStrap = defineFunction({
  name: 'HANG.STRAP',
  says: 'The lightest strap, rod or wire of your table that carries a load.',
  words: ['strap by weight', 'strap for a load', 'will the strap hold', 'strap strength', 'rod for a load'],
  gives: { label: 'Strap', unit: 'count', orUnits: ['in', 'gauge', 'lb'] },
  unitOf: ({ what }) => units[what],
  arguments: {
    load: loadArgument,
    straps: table(strapColumns, { says: 'the table of straps, rods and wires with what each may carry' }),
    what: optional(
      choice(['name', 'width', 'gauge', 'load'], {
        says: 'the name of the row, or what stands in it: the width, the gauge or the load it may carry',
      }),
      'name',
      'the name is what one asks for at the counter',
    ),
  },
  formula: [String.raw`\text{strap} = \text{row with the least } \text{load}_{\text{row}} \ge \text{load}`],
  work: ({ load, straps, what }): Outcome<Chosen, CallFault> => {
    const rows: Strap[] = [];
    for (const name of straps.keys) {
      const row = straps.find(name);
      if (!row.ok) return row;
      rows.push({ ...row.value, name });
    }
    const strap = fromTrade(weakestFor(rows, load));
    if (!strap.ok) return strap;
    const asked = strap.value[what];
    return asked === null
      ? failed({ code: 'trade', fault: { code: 'no_hanger_figure', row: strap.value.name, column: what } })
      : done({ strap: strap.value, asked });
  },
  result: ({ asked }) => asked,
  steps: ({ strap, asked }, { load, what }): readonly Step[] => [
    { label: 'Load', sum: '', value: load, unit: 'lb' },
    {
      label: 'May carry',
      sum: `least in the table from ${figure(load, 2)} lb up`,
      value: strap.load,
      unit: 'lb',
      source: 'hanger-table',
    },
    { label: 'Strap', sum: spare(load, strap.load), value: asked, unit: units[what], source: 'hanger-table' },
  ],
  cautions: () => [codeDecides, fromMemory, attachment],
  sources: ['hanger-table'],
  examples: [
    {
      says: 'a strap for 300 lb, as remembered',
      given: { load: 300, straps: exampleStraps },
      gives: '1 in of 20 ga',
      source: 'hanger-table',
    },
    {
      says: 'the gauge of a strap for 60 lb, as remembered',
      given: { load: 60, straps: exampleStraps, what: 'gauge' },
      gives: 22,
      source: 'hanger-table',
    },
  ],
});

function spare(load: Pounds, most: Pounds): string {
  return `${figure(most - load, 2)} lb to spare`;
}
