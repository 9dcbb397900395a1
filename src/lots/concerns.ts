import type { LotConcern, LotOutcome } from './figure-lots.ts';
import type { LotTable } from './lot-table.ts';

/** The same concern at the same cell in several lots of a type, told once. */
export interface SharedConcern extends LotConcern {
  readonly lots: readonly string[];
}

const rank = { stop: 0, look: 1, fill: 2 } as const;

/** What wants attention in any lot: stops first, then looks, then what is still to fill in. */
export function concernsOfAll(
  table: LotTable,
  outcomes: readonly (LotOutcome | null)[],
): readonly SharedConcern[] {
  const found = new Map<string, LotConcern & { readonly lots: string[] }>();
  for (const [at, { name, type }] of table.rows.entries()) {
    const outcome = outcomes[at];
    for (const concern of outcome?.type === 'figured' ? outcome.figures.concerns : []) {
      const key = [type, concern.kind, concern.place, concern.sentence].join('\n');
      const known = found.get(key) ?? { ...concern, lots: [] };
      found.set(key, known);
      known.lots.push(name);
    }
  }
  return [...found.values()].toSorted((one, other) => rank[one.kind] - rank[other.kind]);
}
