import type { Workbook } from '../workbook/document.ts';
import { noValues, type Values, withValues } from '../workbook/values.ts';
import { bookOf } from './book.ts';
import type { Calculator } from './calculator.ts';

/** The value of every formula of a workbook, worked out from nothing. The calculator holds that workbook afterwards. */
export async function figureWorkbook(workbook: Workbook, calculator: Calculator): Promise<Values> {
  return withValues(noValues, await calculator.open(bookOf(workbook)));
}
