import { type CellAddress, isInRange } from '../base/address.ts';
import type { Plain } from '../base/value.ts';
import { type Content, isFormula } from '../workbook/document.ts';
import type { CalculatorBook, Place } from './calculator.ts';
import { FilledFormula, type Written } from './filled-down.ts';
import { usableNames } from './names.ts';
import { addressesIn, cellCount, type Reach } from './reach.ts';
import { type FormulaReader, formulaReader, type ReadFormula } from './read-formula.ts';

/** A cell as the calculator remembers it; a formula as what was read in it. */
export type KeptCell = Plain | ReadFormula;

export function isReading(cell: KeptCell): cell is ReadFormula {
  return typeof cell === 'object' && cell !== null;
}

/** The calculator's own copy of a book, from which the engine can be built again at any time. */
export interface KeptBook {
  readonly sheetNames: readonly string[];
  /** The place with its sheet's name as the book writes it. Throws when the book has no such sheet. */
  placeIn(place: Place): Place;
  at(place: Place): KeptCell;
  put(place: Place, content: Content): void;
  rowsOf(sheet: string): readonly (readonly KeptCell[])[];
  /** Whether some formula has come to read cells of this column. */
  isRead(sheet: string, column: number): boolean;
  /** What stands, beside formulas, in columns that have come to be read since this was asked last. */
  takeNewlyRead(): readonly Place[];
  /** Every formula, sheet by sheet and row by row. */
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

  function kept(content: Content, sheet: KeptSheet, above?: KeptCell): KeptCell {
    return isFormula(content) ? reader.read(content.formula, sheet.key, above) : content;
  }

  function formulasOf(sheet: KeptSheet): readonly FormulaCell[] {
    if (sheet.formulas) return sheet.formulas;
    const found: FormulaCell[] = [];
    for (let row = 0; row < sheet.rows.length; row += 1) {
      const cells = sheet.rows[row] ?? [];
      for (let column = 0; column < cells.length; column += 1) {
        const cell = cells[column] ?? null;
        if (isReading(cell)) found.push({ place: { sheet: sheet.name, row, column }, reading: cell });
      }
    }
    sheet.formulas = found;
    return found;
  }

  for (const { name, rows } of book.sheets) {
    const sheet = sheetOf(name);
    let above: readonly KeptCell[] = [];
    sheet.rows = rows.map((contents) => {
      const row = contents.map((content, column) => kept(content, sheet, above[column]));
      above = row;
      return row;
    });
  }

  function formulas(): readonly FormulaCell[] {
    return [...sheets.values()].flatMap(formulasOf);
  }

  return {
    sheetNames,
    placeIn: ({ sheet, row, column }) => ({ sheet: sheetOf(sheet).name, row, column }),
    at: (place) => cellAt(sheetOf(place.sheet), place),
    put: ({ sheet: name, row, column }, content) => {
      const sheet = sheetOf(name);
      const cell = kept(content, sheet);
      if (isReading(cell) || isReading(cellAt(sheet, { row, column }))) sheet.formulas = null;
      while (sheet.rows.length <= row) sheet.rows.push([]);
      const cells = sheet.rows[row] ?? [];
      while (cells.length < column) cells.push(null);
      cells[column] = cell;
    },
    rowsOf: (name) => sheetOf(name).rows,
    isRead: (name, column) => reader.columns.has(name.toLowerCase(), column),
    takeNewlyRead: () =>
      reader.columns.takeNew().flatMap(({ sheet: key, column }) => {
        const sheet = sheets.get(key);
        if (!sheet) return [];
        return sheet.rows.flatMap((cells, row) => {
          const cell = cells[column] ?? null;
          return cell === null || isReading(cell) ? [] : [{ sheet: sheet.name, row, column }];
        });
      }),
    formulas,
    readersOf: (place) => {
      const sheet = place.sheet.toLowerCase();
      const isRead = (reach: Reach) => reach.sheet === sheet && isInRange(place, reach.range);
      const reads = columnReader(sheet, place.column);
      return formulas()
        .filter(({ reading }) => reading.type === 'sound' && reads(reading) && reading.reaches.some(isRead))
        .map((cell) => cell.place);
    },
    read: (expression, sheet) => reader.readFreely(expression, sheet.toLowerCase()),
    formulasIn: (reach) => {
      const sheet = sheets.get(reach.sheet);
      if (!sheet) return [];
      const found = formulasOf(sheet);
      if (cellCount(reach) > found.length) return found.filter(({ place }) => isInRange(place, reach.range));
      return [...addressesIn(reach)].flatMap((address) => {
        const reading = cellAt(sheet, address);
        return isReading(reading) ? [{ place: { sheet: sheet.name, ...address }, reading }] : [];
      });
    },
    refuseSpill: (text) => {
      reader.refuseSpill(text);
      for (const sheet of sheets.values()) {
        sheet.formulas = null;
        sheet.rows = sheet.rows.map((cells) =>
          cells.map((cell) => (isReading(cell) && cell.text === text ? reader.read(text, sheet.key) : cell)),
        );
      }
    },
  };
}

/** Tells whether a formula can read a column at all; of those that were filled down it asks only once for all that are
 *  alike, since they read the same columns. */
function columnReader(sheet: string, column: number): (reading: Written) => boolean {
  const known = new Map<unknown, boolean>();
  return (reading) => {
    if (!(reading instanceof FilledFormula)) return true;
    const { pattern } = reading;
    const told =
      known.get(pattern) ??
      pattern.reaches.some(
        ({ sheet: own, range: { from, to } }) =>
          own === sheet && from.column <= column && column <= to.column,
      );
    known.set(pattern, told);
    return told;
  };
}

interface KeptSheet {
  readonly name: string;
  /** The name in small letters. */
  readonly key: string;
  rows: KeptCell[][];
  /** Its formulas in order, until one comes or goes. */
  formulas: readonly FormulaCell[] | null;
}

function newSheet(name: string): KeptSheet {
  return { name, key: name.toLowerCase(), rows: [], formulas: null };
}

function cellAt(sheet: KeptSheet, { row, column }: CellAddress): KeptCell {
  return sheet.rows[row]?.[column] ?? null;
}
