import { type CellAddress, isInRange } from '../base/address.ts';
import { type Content, isFormula } from '../workbook/document.ts';
import { placeKey, placeOfKey } from '../workbook/values.ts';
import type { CalculatorBook, Place } from './calculator.ts';
import { usableNames } from './names.ts';
import { addressesIn, cellCount, type Reach } from './reach.ts';
import { type FormulaReader, formulaReader, type ReadFormula } from './read-formula.ts';

/** A cell as the calculator remembers it; a formula comes with what was read in it. */
export type KeptCell =
  | { readonly type: 'plain'; readonly content: Content }
  | { readonly type: 'formula'; readonly reading: ReadFormula };

/** The calculator's own copy of a book, from which the engine can be built again at any time. */
export interface KeptBook {
  readonly sheetNames: readonly string[];
  /** The place with its sheet's name as the book writes it. Throws when the book has no such sheet. */
  placeIn(place: Place): Place;
  at(place: Place): KeptCell | undefined;
  put(place: Place, content: Content): void;
  /** Every cell that holds something, sheet by sheet and row by row. */
  cellsOf(sheet: string): readonly (CellAddress & { readonly cell: KeptCell })[];
  formulas(): readonly FormulaCell[];
  formulasIn(reach: Reach): readonly FormulaCell[];
  /** The formula cells that read this cell directly. */
  readersOf(place: Place): readonly Place[];
  /** Reads an expression as if it stood in that sheet. */
  read(expression: string, sheet: string): ReadFormula;
  refuseSpill(text: string): void;
}

export interface FormulaCell {
  readonly place: Place;
  readonly reading: ReadFormula;
}

export function keepBook(book: CalculatorBook, functions: readonly string[]): KeptBook {
  const sheetNames = book.sheets.map((sheet) => sheet.name);
  const sheets = new Map(book.sheets.map(({ name }) => [name.toLowerCase(), newSheet(name)]));
  if (sheets.size < sheetNames.length) throw new Error('Two sheets of the book have the same name.');
  const names = usableNames(book.names, new Set(sheets.keys()));
  const reader: FormulaReader = formulaReader({ functions, names, sheets: sheetNames });

  function sheetOf(name: string): KeptSheet {
    const sheet = sheets.get(name.toLowerCase());
    if (!sheet) throw new Error(`The book has no sheet ${name}.`);
    return sheet;
  }

  function keep(sheet: KeptSheet, key: number, content: Content): void {
    if ((content === null) === sheet.cells.has(key)) sheet.order = null;
    if (content === null) sheet.cells.delete(key);
    else if (!isFormula(content)) sheet.cells.set(key, { type: 'plain', content });
    else {
      const reading = reader.read(content.formula, sheet.name.toLowerCase());
      sheet.cells.set(key, { type: 'formula', reading });
    }
  }

  function formulasOf(sheet: KeptSheet): readonly FormulaCell[] {
    const found: FormulaCell[] = [];
    for (const [key, cell] of inOrder(sheet)) {
      if (cell.type !== 'formula') continue;
      found.push({ place: { sheet: sheet.name, ...placeOfKey(key) }, reading: cell.reading });
    }
    return found;
  }

  for (const { name, rows } of book.sheets) {
    const sheet = sheetOf(name);
    for (const [row, contents] of rows.entries()) {
      for (const [column, content] of contents.entries()) keep(sheet, placeKey({ row, column }), content);
    }
  }

  function formulas(): readonly FormulaCell[] {
    return [...sheets.values()].flatMap(formulasOf);
  }

  return {
    sheetNames,
    placeIn: ({ sheet, row, column }) => ({ sheet: sheetOf(sheet).name, row, column }),
    at: (place) => sheetOf(place.sheet).cells.get(placeKey(place)),
    put: (place, content) => keep(sheetOf(place.sheet), placeKey(place), content),
    cellsOf: (name) => Array.from(inOrder(sheetOf(name)), ([key, cell]) => ({ ...placeOfKey(key), cell })),
    formulas,
    readersOf: (place) => {
      const sheet = place.sheet.toLowerCase();
      const isRead = (reach: Reach) => reach.sheet === sheet && isInRange(place, reach.range);
      return formulas()
        .filter(({ reading }) => reading.type === 'sound' && reading.reaches.some(isRead))
        .map((cell) => cell.place);
    },
    read: (expression, sheet) => reader.readFreely(expression, sheet.toLowerCase()),
    formulasIn: (reach) => {
      const sheet = sheets.get(reach.sheet);
      if (!sheet) return [];
      if (cellCount(reach) > sheet.cells.size) {
        return formulasOf(sheet).filter(({ place }) => isInRange(place, reach.range));
      }
      const found: FormulaCell[] = [];
      for (const address of addressesIn(reach)) {
        const cell = sheet.cells.get(placeKey(address));
        if (cell?.type === 'formula')
          found.push({ place: { sheet: sheet.name, ...address }, reading: cell.reading });
      }
      return found;
    },
    refuseSpill: (text) => {
      reader.refuseSpill(text);
      for (const sheet of sheets.values()) {
        for (const [key, cell] of sheet.cells) {
          if (cell.type === 'formula' && cell.reading.text === text) keep(sheet, key, { formula: text });
        }
      }
    },
  };
}

interface KeptSheet {
  readonly name: string;
  readonly cells: Map<number, KeptCell>;
  /** The keys in order, until a cell comes or goes. */
  order: readonly number[] | null;
}

function newSheet(name: string): KeptSheet {
  return { name, cells: new Map(), order: null };
}

function* inOrder(sheet: KeptSheet): Generator<readonly [number, KeptCell]> {
  sheet.order ??= [...sheet.cells.keys()].sort((one, other) => one - other);
  for (const key of sheet.order) {
    const cell = sheet.cells.get(key);
    if (cell) yield [key, cell];
  }
}
