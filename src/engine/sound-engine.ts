import type { FunctionPluginDefinition } from 'hyperformula';
import { FilledFormula } from './filled-down.ts';
import { buildEngine, type EngineContent, type FormulaEngine } from './formula-engine.ts';
import { isReading, type KeptBook, type KeptCell } from './kept-book.ts';
import type { InsideFunction } from './own-plugin.ts';
import { placeName } from './place-name.ts';
import type { ReadFormula } from './read-formula.ts';
import { gaveUpFault } from './wording.ts';

/** An engine that has taken in a whole book. */
export interface SoundEngine {
  readonly engine: FormulaEngine;
  /** Formulas that made it throw and have a fault in their place, by the names of their cells. */
  readonly setAside: ReadonlySet<string>;
}

/** Builds the engine with what the formulas of a book read and every formula but those that make it throw or that would fill more than their own cell. Where
 *  several may be to blame, one of the `suspects` is. */
export function buildSoundly(
  book: KeptBook,
  functions: readonly InsideFunction[],
  builtins: readonly FunctionPluginDefinition[],
  suspects: ReadonlySet<string>,
): SoundEngine {
  const setAside = new Set<string>();

  /** With all formulas that are not set aside, or with some of them. */
  function build(chosen?: ReadonlySet<string>): FormulaEngine {
    const isPlain = setAside.size === 0 && chosen === undefined;
    const formulaAt = (sheet: string, row: number, column: number, reading: ReadFormula): EngineContent => {
      if (isPlain) return formulaContent(reading, row, column);
      const place = placeName({ sheet, row, column });
      if (setAside.has(place)) return gaveUpFault;
      return chosen === undefined || chosen.has(place) ? formulaContent(reading, row, column) : null;
    };
    const rowOf = (sheet: string, isRead: readonly boolean[], cells: readonly KeptCell[], row: number) => {
      const held: EngineContent[] = [];
      // By number, since half a million pairs of number and cell would take their time.
      for (let column = 0; column < cells.length; column += 1) {
        const cell = cells[column] ?? null;
        const isFormula = isReading(cell);
        if (!isFormula && (cell === null || !isRead[column])) continue;
        while (held.length < column) held.push(null);
        held.push(isFormula ? formulaAt(sheet, row, column, cell) : cell);
      }
      return held;
    };
    const sheets = book.sheetNames.map((name) => {
      const rows = book.rowsOf(name);
      const widest = rows.reduce((most, cells) => Math.max(most, cells.length), 0);
      const isRead = Array.from({ length: widest }, (_, column) => book.isRead(name, column));
      return { name, rows: rows.map((cells, row) => rowOf(name, isRead, cells, row)) };
    });
    book.takeNewlyRead();
    return buildEngine(sheets, functions, builtins);
  }

  /** The first formula with which, added to those before it, the engine throws. */
  function culprit(): string {
    const places = book.formulas().map(({ place }) => placeName(place));
    const open = places.filter((place) => !setAside.has(place));
    const ordered = [
      ...open.filter((place) => !suspects.has(place)),
      ...open.filter((place) => suspects.has(place)),
    ];
    let sound = 0;
    let broken = ordered.length;
    while (broken - sound > 1) {
      const middle = Math.floor((sound + broken) / 2);
      const chosen = new Set(ordered.slice(0, middle));
      const built = attempt(() => build(chosen));
      attempt(() => built?.close());
      if (built) sound = middle;
      else broken = middle;
    }
    const found = ordered[broken - 1];
    if (found === undefined) throw new Error('The engine throws though no formula is left to blame.');
    return found;
  }

  for (;;) {
    const engine = attempt(() => build());
    if (!engine) {
      if (setAside.size === 0) build(new Set()).close(); // throws where no formula is to blame
      setAside.add(culprit());
      continue;
    }
    if (!engine.hasSpilling()) return { engine, setAside };
    const spilling = book.formulas().filter(({ place }) => engine.isSpilling(place));
    if (spilling.length === 0) return { engine, setAside };
    for (const { reading } of spilling) book.refuseSpill(reading.text);
    engine.close();
  }
}

export function engineContent(cell: KeptCell): EngineContent {
  if (!isReading(cell)) return cell;
  return cell.type === 'refused' ? cell.fault : { formula: cell.written };
}

/** With its kind, so that the engine need not read what it has read before. */
function formulaContent(reading: ReadFormula, row: number, column: number): EngineContent {
  if (!(reading instanceof FilledFormula)) return engineContent(reading);
  return { formula: reading.written, kind: reading.kindAt(row, column) };
}

/** The outcome, or undefined when the engine throws: it is then half-changed and must not be used again. */
export function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
