import { isFault } from '../base/value.ts';
import { isSameResult, lotColumns, type ResultColumn, resultsOf } from './columns.ts';
import type { LotOutcome } from './figure-lots.ts';
import { type Lot, type LotTable, typeNamed } from './lot-table.ts';

/** Why a lot is not in a total. */
export type LeftOut =
  | { readonly code: 'not_figured_yet' }
  | { readonly code: 'refused' }
  | { readonly code: 'disagrees'; readonly place: string }
  /** Its house type has no such result. */
  | { readonly code: 'no_such_result'; readonly type: string }
  | { readonly code: 'no_figure'; readonly sentence: string }
  | { readonly code: 'not_a_number' };

export interface LotLeftOut {
  readonly lot: string;
  readonly why: LeftOut;
}

/** One result over all lots. What cannot be added up, such as a temperature, has its least and its most. */
export interface LotTotal {
  readonly column: ResultColumn;
  readonly sum: number | null;
  readonly least: number | null;
  readonly most: number | null;
  readonly counted: number;
  readonly leftOut: readonly LotLeftOut[];
}

export function lotTotals(table: LotTable, outcomes: readonly (LotOutcome | null)[]): readonly LotTotal[] {
  return lotColumns(table.types).results.map((column) => totalOf(table, outcomes, column));
}

function totalOf(table: LotTable, outcomes: readonly (LotOutcome | null)[], column: ResultColumn): LotTotal {
  const numbers: number[] = [];
  const leftOut: LotLeftOut[] = [];
  const indexes = new Map(
    table.types.map((type) => [type, resultsOf(type).findIndex((one) => isSameResult(one, column))]),
  );
  for (const [at, lot] of table.rows.entries()) {
    const type = typeNamed(table, lot.type);
    const found = numberOf(lot, outcomes[at] ?? null, (type && indexes.get(type)) ?? -1);
    if (typeof found === 'number') numbers.push(found);
    else leftOut.push({ lot: lot.name, why: found });
  }
  const sorted = inOrder(numbers);
  const isAdded = numbers.length > 0 && column.adds;
  return {
    column,
    sum: isAdded ? sumOf(numbers) : null,
    least: sorted[0] ?? null,
    most: sorted.at(-1) ?? null,
    counted: numbers.length,
    leftOut: leftOut.filter(({ why }) => isMissing(why, column, numbers.length)),
  };
}

/** A column of words has no total that anything could be missing from, nor does a range miss a type without such a figure. */
function isMissing(why: LeftOut, { adds }: ResultColumn, counted: number): boolean {
  if (why.code === 'not_a_number') return counted > 0;
  return why.code !== 'no_such_result' || adds;
}

/** Lots that are left out for the same reason, together. */
export function leftOutTogether(
  leftOut: readonly LotLeftOut[],
): readonly { readonly lots: readonly string[]; readonly why: LeftOut }[] {
  const groups = new Map<string, { lots: string[]; why: LeftOut }>();
  for (const { lot, why } of leftOut) {
    const key = JSON.stringify(why);
    const group = groups.get(key) ?? { lots: [], why };
    groups.set(key, group);
    group.lots.push(lot);
  }
  return [...groups.values()];
}

/** Added up from the least on, so that the order of the lots makes no difference, not even in the last digit. */
export function sumOf(numbers: readonly number[]): number {
  return inOrder(numbers).reduce((sum, one) => sum + one, 0);
}

function inOrder(numbers: readonly number[]): readonly number[] {
  return numbers.toSorted((one, other) => one - other);
}

function numberOf(lot: Lot, outcome: LotOutcome | null, index: number): number | LeftOut {
  const why = notFigured(outcome);
  if (why) return why;
  if (index < 0) return { code: 'no_such_result', type: lot.type };
  const value = outcome?.type === 'figured' ? (outcome.figures.results[index] ?? null) : null;
  if (isFault(value)) return { code: 'no_figure', sentence: value.sentence };
  return typeof value === 'number' ? value : { code: 'not_a_number' };
}

/** Why nothing of a lot can be used; null where it is figured. */
export function notFigured(outcome: LotOutcome | null): LeftOut | null {
  if (!outcome) return { code: 'not_figured_yet' };
  if (outcome.type === 'refused') return { code: 'refused' };
  return outcome.type === 'disagrees' ? { code: 'disagrees', place: outcome.place } : null;
}
