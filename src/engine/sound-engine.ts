import type { FunctionPluginDefinition } from 'hyperformula';
import { buildEngine, type EngineContent, type FormulaEngine } from './formula-engine.ts';
import type { KeptBook, KeptCell } from './kept-book.ts';
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

  function build(isIn: (place: string) => boolean): FormulaEngine {
    const sheets = book.sheetNames.map((name) => ({
      name,
      cells: book.cellsOf(name).map(({ cell, ...address }) => {
        if (cell.type !== 'formula') return { ...address, content: cell.content };
        const place = placeName({ sheet: name, ...address });
        if (setAside.has(place)) return { ...address, content: gaveUpFault };
        return { ...address, content: isIn(place) ? engineContent(cell) : null };
      }),
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
      const built = attempt(() => build((place) => chosen.has(place)));
      attempt(() => built?.close());
      if (built) sound = middle;
      else broken = middle;
    }
    const found = ordered[broken - 1];
    if (found === undefined) throw new Error('The engine throws though no formula is left to blame.');
    return found;
  }

  for (;;) {
    const engine = attempt(() => build(() => true));
    if (!engine) {
      if (setAside.size === 0) build(() => false).close(); // throws where no formula is to blame
      setAside.add(culprit());
      continue;
    }
    const spilling = book.formulas().filter(({ place }) => engine.isSpilling(place));
    if (spilling.length === 0) return { engine, setAside };
    for (const { reading } of spilling) book.refuseSpill(reading.text);
    engine.close();
  }
}

export function engineContent(cell: KeptCell | undefined): EngineContent {
  if (!cell) return null;
  if (cell.type === 'plain') return cell.content;
  return cell.reading.type === 'refused' ? cell.reading.fault : { formula: cell.reading.written };
}

/** The outcome, or undefined when the engine throws: it is then half-changed and must not be used again. */
export function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
