import { done, failed, type Outcome } from '../base/outcome.ts';
import { cellAt, withCell } from '../workbook/cells.ts';
import type { Workbook, WorkedExample } from '../workbook/document.ts';
import { placeIn } from './place.ts';

/** The given cells of a workbook that an answer has no cell for. */
export interface NoSuchGiven {
  readonly code: 'no_such_given';
  readonly place: string;
}

/** The same workbook with its givens filled in, by places such as `Pieces!B4`. Only givens can be filled. */
export function fill(workbook: Workbook, answers: WorkedExample['given']): Outcome<Workbook, NoSuchGiven> {
  let filled = workbook;
  for (const [written, answer] of Object.entries(answers)) {
    const place = placeIn(filled, written);
    const cell = place ? cellAt(place.sheet, place.address) : null;
    if (!place || cell?.role !== 'given') return failed({ code: 'no_such_given', place: written });
    const { typed: _, ...asked } = cell;
    const sheet = withCell(place.sheet, place.address, { ...asked, content: answer });
    filled = { ...filled, sheets: filled.sheets.map((one) => (one.id === sheet.id ? sheet : one)) };
  }
  return done(filled);
}
