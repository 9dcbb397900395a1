import { tradeFunctions } from '../catalogue/list.ts';
import type { Calculator } from '../engine/calculator.ts';
import { createCalculator } from '../engine/create.ts';
import { figureWorkbook } from '../engine/figure-workbook.ts';
import type { Workbook } from '../workbook/document.ts';
import type { Values } from '../workbook/values.ts';

/** A workbook with every formula figured anew; what a file says of its own values is not trusted. */
export interface FiguredWorkbook {
  readonly workbook: Workbook;
  readonly values: Values;
  readonly calculator: Calculator;
}

export async function figured(workbook: Workbook): Promise<FiguredWorkbook> {
  const calculator = createCalculator({ functions: tradeFunctions });
  const values = await figureWorkbook(workbook, calculator);
  return { workbook, values, calculator };
}
