import type { CellValue } from '../base/value.ts';
import type { Workbook, WorkedExample } from '../workbook/document.ts';
import type { Values } from '../workbook/values.ts';
import { fill } from './fill.ts';
import { valueAtPlace } from './place.ts';

/** What came of a worked example. */
export type ExampleResult =
  | { readonly type: 'holds' }
  | { readonly type: 'differs'; readonly differences: readonly ExampleDifference[] }
  /** The example fills in a cell that is no given of the template. */
  | { readonly type: 'lost'; readonly place: string };

/** A result that the template does not give. */
export interface ExampleDifference {
  readonly place: string;
  readonly expected: number | string;
  readonly got: CellValue;
  readonly tolerance: number;
}

/** What is left of exact figures after sums in binary fractions. */
const exactly = 1e-9;

/** Fills a worked example into its template and compares what comes out. `figure` works out every formula of a workbook
 *  and leaves the template itself alone. */
export async function runExample(
  template: Workbook,
  example: WorkedExample,
  figure: (workbook: Workbook) => Promise<Values>,
): Promise<ExampleResult> {
  const filled = fill(template, example.given);
  if (!filled.ok) return { type: 'lost', place: filled.fault.place };
  const values = await figure(filled.value);
  const differences = Object.entries(example.gives).flatMap(([place, { value, tolerance = exactly }]) => {
    const got = valueAtPlace({ workbook: filled.value, values }, place);
    return agrees(value, got, tolerance) ? [] : [{ place, expected: value, got, tolerance }];
  });
  return differences.length === 0 ? { type: 'holds' } : { type: 'differs', differences };
}

function agrees(expected: number | string, got: CellValue, tolerance: number): boolean {
  if (typeof expected === 'number') return typeof got === 'number' && Math.abs(got - expected) <= tolerance;
  return got === expected;
}
