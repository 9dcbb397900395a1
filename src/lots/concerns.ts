import type { LotConcern, LotOutcome } from './figure-lots.ts';
import type { LotTable } from './lot-table.ts';

/** The same concern in several cells or lots, told once. */
export interface SharedConcern extends Pick<LotConcern, 'kind' | 'sentence'> {
  /** `Wrap!F4` */
  readonly places: readonly string[];
  readonly lots: readonly string[];
}

const rank = { stop: 0, look: 1, fill: 2 } as const;

/** What wants attention in any lot: stops first, then looks, then what is still to fill in. */
export function concernsOfAll(
  table: LotTable,
  outcomes: readonly (LotOutcome | null)[],
): readonly SharedConcern[] {
  const found = new Map<string, SharedBefore>();
  for (const [at, { name }] of table.rows.entries()) {
    const outcome = outcomes[at];
    for (const { kind, sentence, place } of outcome?.type === 'figured' ? outcome.figures.concerns : []) {
      const key = `${kind} ${sentence}`;
      const known = found.get(key) ?? { kind, sentence, places: new Set(), lots: new Set() };
      found.set(key, known);
      known.places.add(place);
      known.lots.add(name);
    }
  }
  return [...found.values()]
    .map(({ places, lots, ...concern }) => ({ ...concern, places: [...places], lots: [...lots] }))
    .toSorted((one, other) => rank[one.kind] - rank[other.kind]);
}

interface SharedBefore extends Pick<LotConcern, 'kind' | 'sentence'> {
  readonly places: Set<string>;
  readonly lots: Set<string>;
}
