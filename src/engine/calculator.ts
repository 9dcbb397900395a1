import type { CellAddress } from '../base/address.ts';
import type { CellBlock, CellValue } from '../base/value.ts';
import type { Content } from '../workbook/document.ts';

/** A cell of the whole workbook, its sheet by name. */
export interface Place extends CellAddress {
  readonly sheet: string;
}

export interface CalculatorBook {
  readonly sheets: readonly { readonly name: string; readonly rows: readonly (readonly Content[])[] }[];
  /** Absolute ranges by name: `wraps` → `Allowances!$A$5:$J$9`. */
  readonly names: { readonly [name: string]: string };
}

export interface CellEdit extends Place {
  readonly content: Content;
}

/** A formula cell whose value is new. */
export interface CellChange extends Place {
  readonly value: CellValue;
}

/** Derives values from a workbook. It may be thrown away and rebuilt at any time; it never throws for a bad formula:
 *  such a cell gets a fault as its value. Lengths are inches, as in the document. */
export interface Calculator {
  /** Builds everything anew; gives the value of every formula cell. */
  open(book: CalculatorBook): Promise<readonly CellChange[]>;
  /** Takes edits together, as one; gives only the formula cells whose value changed. */
  apply(edits: readonly CellEdit[]): Promise<readonly CellChange[]>;
  /** Values of expressions (no `=`), each as if it stood in that sheet; a range gives a block. Changes nothing. */
  evaluate(sheet: string, expressions: readonly string[]): Promise<readonly (CellValue | CellBlock)[]>;
  /** The cells whose formulas read this cell directly (also through a range or a name). */
  dependents(place: Place): Promise<readonly Place[]>;
  close(): Promise<void>;
}
