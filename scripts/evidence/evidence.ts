import type { AnyTradeFunction } from '../../src/catalogue/define.ts';
import { sources } from '../../src/catalogue/sources.ts';
import type { TestReport } from '../test-report.ts';

/** What a figure may rest on, best first. */
export const kinds = ['published', 'quoted', 'exact', 'common practice', 'from memory'] as const;
export type Kind = (typeof kinds)[number];

/** One figure that a test holds ours against. */
export interface EvidenceTest {
  readonly name: string;
  /** The file of published rows that it stands in. */
  readonly group: string;
  readonly kind: Kind;
  readonly holds: boolean;
}

/** The tests of published rows, told by their names: `RV-02: ... - source [status]`. */
export function evidenceIn(report: TestReport): readonly EvidenceTest[] {
  return report.testResults.flatMap((file) =>
    file.assertionResults.flatMap(({ fullName, status }): readonly EvidenceTest[] => {
      const parts = /figures of (\S+)-checks\.csv .*\[([^\]]*)\]$/.exec(fullName);
      const [, group, said] = parts ?? [];
      if (group === undefined || said === undefined) return [];
      return [{ name: fullName, group, kind: kindOf(said), holds: status === 'passed' }];
    }),
  );
}

/** The weakest link names the whole: a figure worked from a remembered one is from memory. A status in other words is a
 *  bug of its row, never taken for a good one. */
export function kindOf(status: string): Kind {
  if (/from memory/.test(status)) return 'from memory';
  if (/common practice|custom/.test(status)) return 'common practice';
  if (/quoted|third-party/.test(status)) return 'quoted';
  if (/worked|computed|exact|run here|derived|proven/.test(status)) return 'exact';
  if (/read at source/.test(status)) return 'published';
  throw new Error(`“${status}” does not say what the figure rests on.`);
}

/** Sources that steps and specs cite, but that no example of any function reaches. */
export function untestedFigures(specs: readonly AnyTradeFunction[]): readonly string[] {
  const reached = new Set<string>();
  for (const spec of specs) {
    for (const { given } of spec.examples) {
      const outcome = spec.call(Object.keys(spec.arguments).map((name) => given[name] ?? null));
      if (!outcome.ok) continue;
      for (const id of outcome.value.sources()) reached.add(id);
      for (const { source } of outcome.value.cautions()) if (source) reached.add(source);
    }
  }
  return Object.entries(sources)
    .filter(([id]) => !reached.has(id))
    .map(([id, { title, place }]) => `${id}: ${title}, ${place}`);
}
