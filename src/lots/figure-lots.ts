import { writeAddress } from '../base/address.ts';
import type { CellValue } from '../base/value.ts';
import { bookOf } from '../engine/book.ts';
import type { Calculator, CellChange, CellEdit } from '../engine/calculator.ts';
import { figureWorkbook } from '../engine/figure-workbook.ts';
import { placeIn, valueAtPlace } from '../templates/place.ts';
import { cellAt } from '../workbook/cells.ts';
import { namedSide } from '../workbook/comparison.ts';
import type { Content, Workbook } from '../workbook/document.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import { type OrderLine, orderLines } from '../workbook/order.ts';
import { placeKey, placeOfKey } from '../workbook/place-key.ts';
import { type Concern, standingOf } from '../workbook/standing.ts';
import type { Values } from '../workbook/values.ts';
import { resultsOf } from './columns.ts';
import { type Givens, type LotFault, lotGivens, lotWorkbook } from './lot-givens.ts';
import { type Lot, type LotTable, typeNamed } from './lot-table.ts';

/** What came of one lot. */
export type LotOutcome =
  | { readonly type: 'figured'; readonly figures: LotFigures }
  /** It cannot be figured as it stands. */
  | { readonly type: 'refused'; readonly faults: readonly LotFault[] }
  /** Figured from scratch, this cell came to something else. None of the lot's figures may be used. */
  | { readonly type: 'disagrees'; readonly place: string };

export interface LotFigures {
  /** One for each result of the house type, in order. */
  readonly results: readonly CellValue[];
  readonly order: readonly OrderLine[];
  readonly concerns: readonly LotConcern[];
  /** Of the cell named `price`; null where the type has none, or no figure stands there. */
  readonly price: number | null;
}

/** What wants a person's attention in one lot. */
export interface LotConcern extends Pick<Concern, 'kind' | 'sentence'> {
  /** `Wrap!F4` */
  readonly place: string;
}

export interface FigureLotsParts {
  /** A calculator that nobody else has; each house type gets one of its own. */
  readonly calculator: () => Calculator;
  /** Told after each lot. Where it gives a promise, that is waited for: the way to let a stop come through. */
  readonly onLot?: (at: number, outcome: LotOutcome) => void | Promise<void>;
  /** Asked before each lot. */
  readonly stop?: () => boolean;
  /** Places of the lots to figure; all where it is left out. */
  readonly only?: readonly number[];
}

/** How many lots of a type stand between two that are figured from scratch as well. */
const everyNth = 50;

/** Figures the lots of a table, each as if it stood alone. A house type is opened once; from one lot to the next only the
 *  givens that differ are written. Every fiftieth lot of a type, and its last one, is figured from scratch besides, and must
 *  agree in every cell exactly. Null for lots that a stop has left out. */
export async function figureLots(
  table: LotTable,
  { calculator, onLot, stop, only = table.rows.map((_, at) => at) }: FigureLotsParts,
): Promise<readonly (LotOutcome | null)[]> {
  const outcomes = table.rows.map((): LotOutcome | null => null);
  const figurers = new Map<Workbook, TypeFigurer>();
  const lastOf = new Map(only.map((at) => [typeOf(table, at), at]));
  try {
    for (const at of only) {
      if (stop?.()) break;
      const lot = table.rows[at];
      if (!lot) continue;
      const type = typeOf(table, at);
      const figurer = type && (figurers.get(type) ?? typeFigurer(type, calculator));
      if (type && figurer) figurers.set(type, figurer);
      const outcome: LotOutcome = figurer
        ? await figurer.figure(lot, lastOf.get(type) === at)
        : { type: 'refused', faults: [{ code: 'type_gone', type: lot.type }] };
      outcomes[at] = outcome;
      await onLot?.(at, outcome);
    }
  } finally {
    for (const figurer of figurers.values()) await figurer.close();
  }
  return outcomes;
}

function typeOf(table: LotTable, at: number): Workbook | undefined {
  const lot = table.rows[at];
  return lot && typeNamed(table, lot.type);
}

/** Figures the lots of one house type, one after another. */
interface TypeFigurer {
  figure(lot: Lot, isLast: boolean): Promise<LotOutcome>;
  close(): Promise<void>;
}

function typeFigurer(type: Workbook, makeCalculator: () => Calculator): TypeFigurer {
  const calculator = makeCalculator();
  const twins = new Map<string, LotOutcome>();
  const values = new Map<string, Map<number, CellValue>>();
  let isOpen = false;
  let filled: Givens = {};
  let count = 0;

  /** The same values at every turn, changed in place: nobody keeps them, and copying them for each lot takes long. */
  async function valuesWith(givens: Givens): Promise<Values> {
    if (!isOpen) keep(values, await calculator.open(bookOf(type)));
    isOpen = true;
    const edits = editsBetween(type, filled, givens);
    filled = givens;
    if (edits.length > 0) keep(values, await calculator.apply(edits));
    return values;
  }

  return {
    figure: async (lot, isLast) => {
      const workbook = lotWorkbook(type, lot);
      if (!workbook.ok) return { type: 'refused', faults: workbook.fault };
      count += 1;
      const isProved = isLast || count % everyNth === 0;
      const givens = lotGivens(type, lot);
      const key = JSON.stringify(Object.entries(givens).sort());
      const twin = isProved ? undefined : twins.get(key);
      if (twin) return twin;
      const kept = { workbook: workbook.value, values: await valuesWith(givens) };
      const other = isProved ? await disagreement(kept, makeCalculator()) : null;
      if (other !== null) return { type: 'disagrees', place: other };
      const outcome: LotOutcome = { type: 'figured', figures: figuresOf(type, kept) };
      twins.set(key, outcome);
      return outcome;
    },
    close: () => calculator.close(),
  };
}

function keep(values: Map<string, Map<number, CellValue>>, changes: readonly CellChange[]): void {
  for (const { sheet, value, ...address } of changes) {
    const own = values.get(sheet) ?? new Map<number, CellValue>();
    values.set(sheet, own);
    if (value === null) own.delete(placeKey(address));
    else own.set(placeKey(address), value);
  }
}

/** What leads from the givens of one lot to those of the next; what that one does not fill is as the type has it again. */
function editsBetween(type: Workbook, before: Givens, after: Givens): readonly CellEdit[] {
  const places = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...places].flatMap((written): CellEdit[] => {
    const place = placeIn(type, written);
    if (!place) return [];
    const own: Content = cellAt(place.sheet, place.address)?.content ?? null;
    const [was, is] = [before[written] ?? own, after[written] ?? own];
    return was === is ? [] : [{ sheet: place.sheet.name, ...place.address, content: is }];
  });
}

/** The first cell that comes to something else when the same workbook is figured from nothing; null where none does. */
async function disagreement(
  { workbook, values }: KeptWorkbook,
  calculator: Calculator,
): Promise<string | null> {
  const fresh = await figureWorkbook(workbook, calculator);
  await calculator.close();
  for (const { name } of workbook.sheets) {
    const [own, other] = [values.get(name), fresh.get(name)];
    for (const key of new Set([...(own?.keys() ?? []), ...(other?.keys() ?? [])])) {
      if (!isSame(own?.get(key) ?? null, other?.get(key) ?? null)) {
        return `${name}!${writeAddress(placeOfKey(key))}`;
      }
    }
  }
  return null;
}

function isSame(one: CellValue, other: CellValue): boolean {
  if (typeof one !== 'object' || typeof other !== 'object') return Object.is(one, other);
  return JSON.stringify(one) === JSON.stringify(other);
}

/** What a lot table shows of a figured workbook. */
export function figuresOf(type: Workbook, kept: KeptWorkbook): LotFigures {
  const { workbook, values } = kept;
  return {
    results: resultsOf(type).map(({ place }) => valueAtPlace(kept, place)),
    order: orderLines(kept),
    concerns: workbook.sheets.flatMap((sheet) =>
      standingOf(sheet, values).concerns.map(({ kind, sentence, address }) => ({
        kind,
        sentence,
        place: `${sheet.name}!${writeAddress(address)}`,
      })),
    ),
    price: priceOf(kept),
  };
}

function priceOf(kept: KeptWorkbook): number | null {
  const value = namedSide(kept, 'price')?.value;
  return typeof value === 'number' ? value : null;
}
