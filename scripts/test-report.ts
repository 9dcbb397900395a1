import { readFile } from 'node:fs/promises';
import { z } from 'zod';

/** The part of vitest's JSON report that we read. */
const reportSchema = z.object({
  testResults: z.array(
    z.object({
      name: z.string(),
      status: z.enum(['passed', 'failed']),
      assertionResults: z.array(z.object({ fullName: z.string(), status: z.string() })),
    }),
  ),
});

export type TestReport = z.infer<typeof reportSchema>;

/** Null when vitest ended before it wrote one. */
export async function readReport(path: string): Promise<TestReport | null> {
  const text = await readFile(path, 'utf8').catch(() => null);
  return text === null ? null : reportSchema.parse(JSON.parse(text));
}

export interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** A file that failed outside its tests (it does not load, a hook threw) counts as one failed test. */
export function count(report: TestReport): Counts {
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const failed = tests.filter((test) => test.status === 'failed').length;
  const broken = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  return { passed, failed: failed + broken, skipped: tests.length - passed - failed };
}

/** Why a run that vitest calls good is not; asking for a part of the tests leaves the rest out on purpose. */
export function faults(report: TestReport, run: { readonly whole: boolean }): readonly string[] {
  if (!run.whole) return [];
  const skipped = report.testResults.flatMap((file) =>
    file.assertionResults
      .filter((test) => test.status !== 'passed' && test.status !== 'failed')
      .map((test) => `${test.fullName} (${file.name})`),
  );
  const inBrowser = report.testResults
    .filter((file) => file.name.replaceAll('\\', '/').includes('/tests/browser/'))
    .flatMap((file) => file.assertionResults);
  return [
    ...(skipped.length === 0
      ? []
      : [`No test may be skipped or left to do. Finish or delete: ${skipped.join('; ')}.`]),
    ...(inBrowser.length === 0 ? ['No test ran in a browser, so the page was not tested.'] : []),
  ];
}
