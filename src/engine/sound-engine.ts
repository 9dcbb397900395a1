import type { FunctionPluginDefinition } from 'hyperformula';
import { buildEngine, type EngineContent, type FormulaEngine } from './formula-engine.ts';
import { isReading, type KeptBook, type KeptCell } from './kept-book.ts';
import type { InsideFunction } from './own-plugin.ts';
import { placeName } from './place-name.ts';
import { gaveUpFault } from './wording.ts';

/** An engine that has taken in a whole book. */
export interface SoundEngine {
  readonly engine: FormulaEngine;
  /** Formulas that made it throw and have a fault in their place, by the names of their cells. */
  readonly setAside: ReadonlySet<string>;
}

/** Builds the engine with every formula but those that make it throw or that would fill more than their own cell. Where
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
    const contentAt = (sheet: string, row: number, column: number, cell: KeptCell): EngineContent => {
      if (isPlain || !isReading(cell)) return engineContent(cell);
      const place = placeName({ sheet, row, column });
      if (setAside.has(place)) return gaveUpFault;
      return chosen === undefined || chosen.has(place) ? engineContent(cell) : null;
    };
    const sheets = book.sheetNames.map((name) => ({
      name,
      rows: book
        .rowsOf(name)
        .map((cells, row) => cells.map((cell, column) => contentAt(name, row, column, cell))),
    }));
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

/** The outcome, or undefined when the engine throws: it is then half-changed and must not be used again. */
export function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
