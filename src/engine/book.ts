import { writeAddress } from '../base/address.ts';
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
  const corners = [from, to].map((corner) => writeAddress(corner).replace(/^([A-Z]+)/, '$$$1$$'));
  const [first, last] = corners;
  return `${quotedSheet(sheetNames.get(sheet) ?? '')}!${first === last ? first : `${first}:${last}`}`;
}

/** A sheet's name as formulas write it: quoted unless it is a plain word. */
export function quotedSheet(name: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;
}
