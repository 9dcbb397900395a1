import { tradeFunctions } from '../catalogue/list.ts';
import type { Calculator } from '../engine/calculator.ts';
import { createCalculator } from '../engine/create.ts';
import { figureWorkbook } from '../engine/figure-workbook.ts';
import { isFormula, type Sheet, type Workbook } from '../workbook/document.ts';
import { shownValue } from '../workbook/standing.ts';
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

/** The sheet as if every text that a formula comes to had been typed, so that rows are named by what they show. */
export function withFiguredTexts(sheet: Sheet, values: Values): Sheet {
  return {
    ...sheet,
    rows: sheet.rows.map((row, at) =>
      row.map((cell, column) => {
        if (!cell || !isFormula(cell.content)) return cell;
        const value = shownValue(sheet, { row: at, column }, cell, values);
        return typeof value === 'string' ? { ...cell, content: value } : cell;
      }),
    ),
  };
}
