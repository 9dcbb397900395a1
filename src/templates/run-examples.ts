import type { Workbook, WorkedExample } from '../workbook/document.ts';
import type { Values } from '../workbook/values.ts';
import { type ExampleResult, runExample } from './example.ts';

export interface ExampleRun {
  readonly example: WorkedExample;
  readonly result: ExampleResult;
}

/** Runs all worked examples of a template, one after the other, since they share a calculator. Null where `isWanted` says
 *  meanwhile that nobody waits for it any more. */
export async function runExamples(
  template: Workbook,
  figure: (workbook: Workbook) => Promise<Values>,
  isWanted: () => boolean = () => true,
): Promise<readonly ExampleRun[] | null> {
  const runs: ExampleRun[] = [];
  for (const example of template.examples) {
    if (!isWanted()) return null;
    runs.push({ example, result: await runExample(template, example, figure) });
  }
  return isWanted() ? runs : null;
}

export function brokenExamples(runs: readonly ExampleRun[]): readonly string[] {
  return runs.flatMap(({ example, result }) => (result.type === 'holds' ? [] : [example.name]));
}
