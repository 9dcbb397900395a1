import { readAddress, writeAddress } from '../../src/base/address.ts';
import type { CellFault, CellValue } from '../../src/base/value.ts';
import { isFault } from '../../src/base/value.ts';
import type { Calculator, CalculatorBook, CellChange, CellEdit, Place } from '../../src/engine/calculator.ts';
import { createCalculator } from '../../src/engine/create.ts';
import type { Content } from '../../src/workbook/document.ts';
import { trialFunctions } from './trial-functions.ts';

/** A cell as tests write it: a text that begins with `=` is a formula. */
export type Written = Exclude<Content, object> | null;

export function content(written: Written): Content {
  return typeof written === 'string' && written.startsWith('=') ? { formula: written.slice(1) } : written;
}

export function book(
  sheets: { readonly [name: string]: readonly (readonly Written[])[] },
  names: { readonly [name: string]: string } = {},
): CalculatorBook {
  return {
    sheets: Object.entries(sheets).map(([name, rows]) => ({
      name,
      rows: rows.map((row) => row.map(content)),
    })),
    names,
  };
}

export function place(name: string): Place {
  const [sheet = '', address = ''] = name.split('!');
  const found = readAddress(address);
  if (!found) throw new Error(`${name} is no place`);
  return { sheet, ...found };
}

export function edit(name: string, written: Written): CellEdit {
  return { ...place(name), content: content(written) };
}

/** What was told, by `Sheet!A1`. */
export function told(changes: readonly CellChange[]): { readonly [place: string]: CellValue } {
  return Object.fromEntries(changes.map((one) => [nameOf(one), one.value]));
}

export function nameOf(one: Place): string {
  return `${one.sheet}!${writeAddress(one)}`;
}

export async function openBook(given: CalculatorBook): Promise<{
  readonly calculator: Calculator;
  readonly first: { readonly [place: string]: CellValue };
}> {
  const calculator = createCalculator({ functions: trialFunctions });
  return { calculator, first: told(await calculator.open(given)) };
}

export function faultIn(value: CellValue | undefined): CellFault {
  if (value === undefined || !isFault(value)) throw new Error(`${JSON.stringify(value)} is no fault`);
  return value;
}
