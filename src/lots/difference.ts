import { assertNever } from '../base/outcome.ts';
import type { Workbook } from '../workbook/document.ts';
import type { Lot, LotTable } from './lot-table.ts';

/** One reversible change of a lot table: lots or types from a place on, replaced by others. */
export type LotChange =
  | { readonly type: 'title'; readonly before: string; readonly after: string }
  | {
      readonly type: 'rows';
      readonly at: number;
      readonly before: readonly Lot[];
      readonly after: readonly Lot[];
    }
  | {
      readonly type: 'types';
      readonly at: number;
      readonly before: readonly Workbook[];
      readonly after: readonly Workbook[];
    };

export type LotDifference = readonly LotChange[];

export function applyLotDifference(table: LotTable, difference: LotDifference): LotTable {
  return difference.reduce(applyChange, table);
}

function applyChange(table: LotTable, change: LotChange): LotTable {
  switch (change.type) {
    case 'title':
      return { ...table, title: change.after };
    case 'rows':
      return { ...table, rows: spliced(table.rows, change) };
    case 'types':
      return { ...table, types: spliced(table.types, change) };
    default:
      return assertNever(change);
  }
}

export function invertLotDifference(difference: LotDifference): LotDifference {
  return difference
    .toReversed()
    .map((change) => ({ ...change, before: change.after, after: change.before }) as LotChange); // the same kind, turned round
}

/** What leads from one table to the other, as short as it can be. */
export function lotDifference(before: LotTable, after: LotTable): LotDifference {
  return [
    ...(before.title === after.title
      ? []
      : [{ type: 'title', before: before.title, after: after.title } as const]),
    ...splice(before.types, after.types).map((change) => ({ type: 'types', ...change }) as const),
    ...splice(before.rows, after.rows).map((change) => ({ type: 'rows', ...change }) as const),
  ];
}

interface Splice<One> {
  readonly at: number;
  readonly before: readonly One[];
  readonly after: readonly One[];
}

function spliced<One>(list: readonly One[], { at, before, after }: Splice<One>): readonly One[] {
  return list.toSpliced(at, before.length, ...after);
}

/** At most one: from the first that is another to the last. */
function splice<One>(before: readonly One[], after: readonly One[]): readonly Splice<One>[] {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && before[at] === after[at]) at += 1;
  let kept = 0;
  while (kept < shorter - at && before.at(-1 - kept) === after.at(-1 - kept)) kept += 1;
  if (at === before.length && at === after.length) return [];
  return [
    { at, before: before.slice(at, before.length - kept), after: after.slice(at, after.length - kept) },
  ];
}
