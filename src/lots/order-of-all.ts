import type { LotOutcome } from './figure-lots.ts';
import type { LotTable } from './lot-table.ts';
import { type LeftOut, type LotLeftOut, notFigured, sumOf } from './totals.ts';

/** One thing to buy for all lots together. */
export interface LotsOrderLine {
  readonly item: string;
  readonly unit: string;
  readonly quantity: number;
  /** What each lot takes of it, in the order of the table. */
  readonly lots: readonly { readonly lot: string; readonly quantity: number }[];
  /** Lots that have a line for it without a number. */
  readonly leftOut: readonly LotLeftOut[];
}

export interface LotsOrder {
  readonly lines: readonly LotsOrderLine[];
  readonly counted: number;
  /** Lots of which nothing is ordered. */
  readonly leftOut: readonly LotLeftOut[];
  /** Lots that are counted though a check of theirs says stop: their lines may be short. */
  readonly stopped: readonly string[];
}

/** One order list for all lots: lines go together by what and of what. What a lot takes is in whole rolls and sheets of its
 *  own already, since lots are made and cut apart; those are added up, and nothing is shared between lots (decision 9). */
export function orderOfAll(table: LotTable, outcomes: readonly (LotOutcome | null)[]): LotsOrder {
  const found = new Map<string, { item: string; unit: string; lots: Took[]; leftOut: LotLeftOut[] }>();
  const leftOut: LotLeftOut[] = [];
  const stopped: string[] = [];
  for (const [at, { name: lot }] of table.rows.entries()) {
    const outcome = outcomes[at] ?? null;
    const why = notFigured(outcome);
    if (why || outcome?.type !== 'figured') {
      leftOut.push({ lot, why: why ?? { code: 'not_figured_yet' } });
      continue;
    }
    if (outcome.figures.concerns.some(({ kind }) => kind === 'stop')) stopped.push(lot);
    for (const { item, unit, quantity, fault } of outcome.figures.order) {
      const key = `${item}\n${unit}`;
      const line = found.get(key) ?? { item, unit, lots: [], leftOut: [] };
      found.set(key, line);
      if (typeof quantity === 'number') line.lots.push({ lot, quantity });
      else line.leftOut.push({ lot, why: whyNot(fault) });
    }
  }
  return {
    lines: [...found.values()]
      .map(({ lots, ...line }) => ({
        ...line,
        lots: joined(lots),
        quantity: sumOf(lots.map((one) => one.quantity)),
      }))
      .toSorted((one, other) => byWords(one.item, other.item) || byWords(one.unit, other.unit)),
    counted: table.rows.length - leftOut.length,
    leftOut,
    stopped,
  };
}

interface Took {
  readonly lot: string;
  readonly quantity: number;
}

function whyNot(fault: { readonly sentence: string } | null): LeftOut {
  return fault ? { code: 'no_figure', sentence: fault.sentence } : { code: 'not_a_number' };
}

/** A lot may have two lines of the same thing. */
function joined(lots: readonly Took[]): readonly Took[] {
  const byLot = new Map<string, number[]>();
  for (const { lot, quantity } of lots) byLot.set(lot, [...(byLot.get(lot) ?? []), quantity]);
  return [...byLot].map(([lot, quantities]) => ({ lot, quantity: sumOf(quantities) }));
}

function byWords(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
