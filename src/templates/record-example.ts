import { writeAddress } from '../base/address.ts';
import { done, failed, type Outcome } from '../base/outcome.ts';
import { isFault } from '../base/value.ts';
import { cellAt, cellsOf } from '../workbook/cells.ts';
import { isFormula, type Workbook, type WorkedExample } from '../workbook/document.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import { shownValue } from '../workbook/standing.ts';
import { placeIn } from './place.ts';

/** A result as its author picks it. */
export interface PickedResult {
  /** `Wrap!C4` */
  readonly place: string;
  readonly tolerance?: number;
}

export type RecordFault =
  | { readonly code: 'no_result' }
  | { readonly code: 'no_such_cell'; readonly place: string }
  /** What was typed comes out whatever the template does. */
  | { readonly code: 'result_is_typed'; readonly place: string }
  | { readonly code: 'result_is_blank'; readonly place: string }
  | { readonly code: 'result_has_no_figure'; readonly place: string; readonly sentence: string }
  | { readonly code: 'result_is_yes_or_no'; readonly place: string };

/** A worked example from what stands in a workbook now: every given that is filled in, and the picked results. */
export function recordExample(
  { workbook, values }: KeptWorkbook,
  {
    name,
    source,
    results,
  }: { readonly name: string; readonly source: string; readonly results: readonly PickedResult[] },
): Outcome<WorkedExample, RecordFault> {
  if (results.length === 0) return failed({ code: 'no_result' });
  const gives: Record<string, WorkedExample['gives'][string]> = {};
  for (const { place: written, tolerance } of results) {
    const place = placeIn(workbook, written);
    const cell = place && cellAt(place.sheet, place.address);
    if (!place || !cell) return failed({ code: 'no_such_cell', place: written });
    if (!isFormula(cell.content)) return failed({ code: 'result_is_typed', place: written });
    const value = shownValue(place.sheet, place.address, cell, values);
    if (isFault(value))
      return failed({ code: 'result_has_no_figure', place: written, sentence: value.sentence });
    if (value === null || value === '') return failed({ code: 'result_is_blank', place: written });
    if (typeof value === 'boolean') return failed({ code: 'result_is_yes_or_no', place: written });
    gives[written] = tolerance !== undefined && typeof value === 'number' ? { value, tolerance } : { value };
  }
  return done({ name, source, given: givensOf(workbook), gives });
}

/** The givens that are filled in, by place. A formula that answers one stays in the template, and answers it there. */
export function givensOf(workbook: Workbook): WorkedExample['given'] {
  const given: Record<string, number | string | boolean> = {};
  for (const sheet of workbook.sheets) {
    for (const { address, cell } of cellsOf(sheet)) {
      const { role, content } = cell;
      if (role !== 'given' || content === null || isFormula(content)) continue;
      given[`${sheet.name}!${writeAddress(address)}`] = content;
    }
  }
  return given;
}

/** The same example as the workbook gives it now: its results, and its places, stay the ones that were picked. */
export function recordedAnew(
  kept: KeptWorkbook,
  example: WorkedExample,
): Outcome<WorkedExample, RecordFault> {
  const results = Object.entries(example.gives).map(([place, { tolerance }]) => ({
    place,
    ...(tolerance === undefined ? {} : { tolerance }),
  }));
  return recordExample(kept, { name: example.name, source: example.source, results });
}
