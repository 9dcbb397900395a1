import type { CellComparison, ComparedKind } from './comparison.ts';

/** Differences that belong together, in the order in which somebody wants to read them. */
export interface ComparisonPart {
  readonly kind: ComparedKind;
  /** `What was given` */
  readonly says: string;
  readonly cells: readonly CellComparison[];
}

const parts = [
  ['given', 'What was given'],
  ['allowance', 'Allowances'],
  ['check', 'Checks'],
  ['figured', 'What was figured'],
  ['words', 'Words and headings'],
] as const satisfies readonly (readonly [ComparedKind, string])[];

/** The parts that have any differences. */
export function comparisonParts(cells: readonly CellComparison[]): readonly ComparisonPart[] {
  return parts.flatMap(([kind, says]) => {
    const own = cells.filter((one) => one.kind === kind);
    return own.length === 0 ? [] : [{ kind, says, cells: own }];
  });
}

/** How much more or less, as its cell shows figures; empty where the two are not both numbers. */
export function sayBy({ by, before, after }: CellComparison): string {
  if (by === null || by === 0 || !before || !after) return '';
  const [was, is] = [before.value, after.value];
  if (typeof was !== 'number' || typeof is !== 'number' || was === 0) return by > 0 ? 'more' : 'less';
  const share = Math.abs(by / was) * 100;
  const digits = share >= 10 ? share.toFixed(0) : share >= 0.1 ? share.toFixed(1) : 'under 0.1';
  return `${digits} % ${by > 0 ? 'more' : 'less'}`;
}

/** One side as text: nothing, a value, or that there is no figure. */
export function saySide(side: CellComparison['before']): string {
  if (side === null) return 'nothing';
  return side.shown.type === 'blank' ? 'blank' : side.shown.text;
}

/** Whether a formula came to the same but was written otherwise. */
export function isRewritten({ before, after }: CellComparison): boolean {
  return (
    before !== null &&
    after !== null &&
    before.formula !== after.formula &&
    saySide(before) === saySide(after)
  );
}
