import { type CellValue, HyperFormula } from 'hyperformula';

export type Rows = (string | number | boolean | null)[][];

/** The engine with the settings that matter to formulas: nothing typed is taken for a date, no search signs. */
export function engineWith(sheets: { readonly [name: string]: Rows }): HyperFormula {
  return HyperFormula.buildFromSheets(
    { ...sheets },
    {
      licenseKey: 'gpl-v3',
      dateFormats: [],
      timeFormats: [],
      currencySymbol: [],
      useWildcards: false,
      useArrayArithmetic: false,
      undoLimit: 0,
    },
  );
}

/** A cell far from all others, for trying formulas. */
export const trial = { sheet: 0, row: 200, col: 30 };

/** What a formula comes to in the engine; an error as its sign, such as #VALUE!. */
export function figure(engine: HyperFormula, formula: string): string | number | boolean | null {
  engine.setCellContents(trial, [[`=${formula}`]]);
  return plain(engine.getCellValue(trial));
}

function plain(value: CellValue): string | number | boolean | null {
  return typeof value === 'object' && value !== null ? value.value : value;
}

/** Time for a law that asks the engine hundreds of times, in milliseconds: the machine may be busy. */
export const patience = 60_000;
