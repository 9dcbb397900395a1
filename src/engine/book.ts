import { cornerText, sheetPrefix } from '../formula/reference-text.ts';
import type { NamedRange, Workbook } from '../workbook/document.ts';
import type { CalculatorBook } from './calculator.ts';

/** A workbook as the calculator takes it: contents by sheet name, and names as absolute ranges. */
export function bookOf(workbook: Workbook): CalculatorBook {
  const sheetNames = new Map(workbook.sheets.map((sheet) => [sheet.id, sheet.name]));
  return {
    sheets: workbook.sheets.map((sheet) => ({
      name: sheet.name,
      rows: sheet.rows.map((row) => row.map((cell) => cell?.content ?? null)),
    })),
    names: Object.fromEntries(
      Object.entries(workbook.names).map(([name, range]) => [name, absoluteRange(range, sheetNames)]),
    ),
  };
}

/** `Allowances!$A$5:$J$9`. A name whose sheet is gone leads to a sheet that no workbook can have. */
function absoluteRange(
  { sheet, range: { from, to } }: NamedRange,
  sheetNames: ReadonlyMap<string, string>,
): string {
  const [first, last] = [from, to].map((corner) =>
    cornerText({ ...corner, rowFixed: true, columnFixed: true }),
  );
  return `${sheetPrefix(sheetNames.get(sheet) ?? '')}${first === last ? first : `${first}:${last}`}`;
}
