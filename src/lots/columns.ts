import { type CellAddress, sameAddress } from '../base/address.ts';
import type { Unit } from '../base/unit.ts';
import { placeIn } from '../templates/place.ts';
import { cellAt } from '../workbook/cells.ts';
import type { Cell, HouseOption, Sheet, Workbook } from '../workbook/document.ts';
import { headingOver, labelOf, rowName } from '../workbook/label.ts';
import { namedBlock } from '../workbook/order.ts';
import { noValues } from '../workbook/values.ts';
import { isSameName, typeName } from './lot-table.ts';

/** A given of a house type that a lot may fill in otherwise. */
export interface VaryingGiven {
  /** What it is called: the words beside it, or else its question. */
  readonly label: string;
  readonly place: string;
  readonly sheet: Sheet;
  readonly address: CellAddress;
  readonly cell: Cell;
}

/** The givens that vary, each under another label. Places that are no givens any more are passed over. */
export function varyingGivens(type: Workbook): readonly VaryingGiven[] {
  const known = varying.get(type);
  if (known) return known;
  const found = (type.house?.varies ?? []).flatMap((written): VaryingGiven[] => {
    const place = placeIn(type, written);
    const cell = place && cellAt(place.sheet, place.address);
    if (!place || cell?.role !== 'given') return [];
    const label = ownLabel(place.sheet, place.address) || cell.question?.asks || written;
    return [{ label, place: written, ...place, cell }];
  });
  const longer = apart(found, ({ sheet, address, label }) =>
    [label, headingOver(sheet, address)].filter(Boolean).join(', '),
  );
  const named = apart(longer, ({ label, place }) => `${label} (${place})`);
  varying.set(type, named);
  return named;
}

/** In a form the words beside a given say what it is. In a table of lines they name the line, and the heading is needed. */
function ownLabel(sheet: Sheet, address: CellAddress): string {
  const words = rowName(sheet, address, noValues);
  const isLine = sheet.rows[address.row]?.some((cell) => cell?.content === words && cell.role === 'given');
  return isLine || words === '' ? labelOf(sheet, address) : words;
}

/** The same givens; those that share a label get another one. */
function apart(
  givens: readonly VaryingGiven[],
  otherLabel: (given: VaryingGiven) => string,
): readonly VaryingGiven[] {
  return givens.map((one) => {
    const isShared = givens.some((other) => other !== one && isSameName(other.label, one.label));
    return isShared ? { ...one, label: otherLabel(one) } : one;
  });
}

const varying = new WeakMap<Workbook, readonly VaryingGiven[]>();

/** A figure that a lot table shows, with how its cell measures and shows it. */
export interface ResultColumn {
  readonly name: string;
  readonly cell: Pick<Cell, 'unit' | 'format'>;
  /** Whether its sum over several houses means something. */
  readonly adds: boolean;
}

/** The columns of a lot table. What several types call the same stands in one column. */
export interface LotColumns {
  readonly options: readonly string[];
  readonly givens: readonly string[];
  readonly results: readonly ResultColumn[];
}

export function lotColumns(types: readonly Workbook[]): LotColumns {
  const options: string[] = [];
  const givens: string[] = [];
  const results: ResultColumn[] = [];
  for (const type of types) {
    for (const { name } of type.house?.options ?? []) addName(options, name);
    for (const { label } of varyingGivens(type)) addName(givens, label);
    for (const { name, cell, adds } of resultsOf(type)) {
      const isThere = results.some((one) => isSameResult(one, { name, cell, adds }));
      if (!isThere) results.push({ name, cell, adds });
    }
  }
  return { options, givens, results };
}

function addName(names: string[], name: string): void {
  if (!names.some((one) => isSameName(one, name))) names.push(name);
}

/** Figures of the same name belong together only where they measure the same. */
export function isSameResult(one: ResultColumn, other: ResultColumn): boolean {
  return isSameName(one.name, other.name) && one.cell.unit === other.cell.unit;
}

/** Kinds of figures whose sum over houses means something. */
const additive: ReadonlySet<Unit | undefined> = new Set<Unit | undefined>([
  undefined,
  'in',
  'ft',
  'sqft',
  'gal',
  'floz',
  'lb',
  'cfm',
  'btuh',
  'count',
  'money',
]);

/** Hours have no unit of their own: they are plain numbers that the workbook names. */
const hoursName = 'labor_hours';

/** What a house type shows of each lot; a place that holds no cell any more is shown as nothing. */
export function resultsOf(type: Workbook): readonly (ResultColumn & { readonly place: string })[] {
  const known = shown.get(type);
  if (known) return known;
  const hours = namedBlock(type, hoursName);
  const found = (type.house?.results ?? []).map(({ name, place: written }) => {
    const place = placeIn(type, written);
    const cell = place && cellAt(place.sheet, place.address);
    const { unit, format } = cell ?? {};
    const isHours =
      hours?.sheet === place?.sheet.id &&
      place !== null &&
      sameAddress(hours?.range.from ?? noPlace, place.address);
    return {
      name,
      place: written,
      cell: { ...(unit ? { unit } : {}), ...(format ? { format } : {}) },
      adds: additive.has(unit) || isHours,
    };
  });
  shown.set(type, found);
  return found;
}

const shown = new WeakMap<Workbook, readonly (ResultColumn & { readonly place: string })[]>();
const noPlace = { row: -1, column: -1 };

export function optionNamed(type: Workbook, name: string): HouseOption | undefined {
  return type.house?.options.find((option) => isSameName(option.name, name));
}

export function givenLabelled(type: Workbook, label: string): VaryingGiven | undefined {
  return varyingGivens(type).find((given) => isSameName(given.label, label));
}

/** `Single-storey house, revision 3` */
export function typeWords(type: Workbook): string {
  return `${typeName(type)}${type.template ? `, revision ${type.template.revision}` : ''}`;
}
