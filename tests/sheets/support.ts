import type { CellValue } from '../../src/base/value.ts';
import { isFault } from '../../src/base/value.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { figureWorkbook } from '../../src/engine/figure-workbook.ts';
import { fill } from '../../src/templates/fill.ts';
import { placeIn } from '../../src/templates/place.ts';
import { cellAt } from '../../src/workbook/cells.ts';
import type { Workbook, WorkedExample } from '../../src/workbook/document.ts';
import { shownValue, standingOf } from '../../src/workbook/standing.ts';
import type { Values } from '../../src/workbook/values.ts';

/** A template as somebody has filled it in, with its figures. */
export interface Filled {
  /** What stands at a place such as `Taps!G2`. */
  readonly at: (place: string) => CellValue;
  /** The same as a number; anything else fails. */
  readonly numberAt: (place: string) => number;
  /** How many cells stop on each sheet, those without a stop left out. */
  readonly stops: Readonly<Record<string, number>>;
  /** How many cells show a fault. */
  readonly faults: readonly string[];
}

export async function filledIn(template: Workbook, answers: WorkedExample['given']): Promise<Filled> {
  const filled = fill(template, answers);
  if (!filled.ok) throw new Error(`There is no given at ${filled.fault.place}.`);
  const workbook = filled.value;
  const values = await figureWorkbook(workbook, createCalculator({ functions: tradeFunctions }));
  const at = (written: string) => read(workbook, values, written);
  const stops = workbook.sheets.map((sheet) => [sheet.name, standingOf(sheet, values).stops] as const);
  return {
    at,
    numberAt: (place) => {
      const value = at(place);
      if (typeof value !== 'number') throw new Error(`${place} holds ${JSON.stringify(value)}, no number.`);
      return value;
    },
    stops: Object.fromEntries(stops.filter(([, count]) => count > 0)),
    faults: [...values].flatMap(([sheet, cells]) =>
      [...cells.values()].flatMap((value) => (isFault(value) ? [`${sheet}: ${JSON.stringify(value)}`] : [])),
    ),
  };
}

/** What is to be bought, by what it is. */
export function orderOf(template: Workbook, filled: Filled): ReadonlyMap<string, number> {
  const named = template.names.order;
  const sheet = template.sheets.find((one) => one.id === named?.sheet);
  if (!named || !sheet) throw new Error('This template orders nothing.');
  const order = new Map<string, number>();
  for (let row = named.range.from.row + 1; row <= named.range.to.row; row += 1) {
    const item = filled.at(`${sheet.name}!A${row + 1}`);
    const many = filled.at(`${sheet.name}!B${row + 1}`);
    if (typeof item === 'string' && item !== '' && typeof many === 'number') order.set(item, many);
  }
  return order;
}

function read(workbook: Workbook, values: Values, written: string): CellValue {
  const place = placeIn(workbook, written);
  if (!place) throw new Error(`There is no place ${written}.`);
  return shownValue(place.sheet, place.address, cellAt(place.sheet, place.address), values);
}
