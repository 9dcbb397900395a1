import { type CellBlock, type CellValue, isFault } from '../base/value.ts';
import { isBlock } from '../catalogue/argument.ts';
import type { AnyTradeFunction } from '../catalogue/define.ts';
import { builtins } from '../formula/builtins.ts';
import type { Calculator, CellChange } from './calculator.ts';
import { buildEngine, type EngineContent, type FormulaEngine } from './formula-engine.ts';
import { guardedPlugins } from './guarded-plugins.ts';
import { type FormulaCell, type KeptBook, type KeptCell, keepBook } from './kept-book.ts';
import { insideFunction } from './own-plugin.ts';
import { placeName } from './place-name.ts';
import { valueTeller } from './tell-value.ts';
import { gaveUpFault } from './wording.ts';

/** A calculator in this very thread. It keeps the book itself: when the engine throws, which leaves it half-changed, the
 *  engine is built anew without the formula that is to blame. */
export function createCalculator({ functions }: { functions: readonly AnyTradeFunction[] }): Calculator {
  const functionNames = [...functions, ...builtins].map((one) => one.name);
  const inside = functions.map(insideFunction);
  const guarded = guardedPlugins();
  /** Formulas that made the engine throw, by the name of their place. */
  const setAside = new Set<string>();
  /** The value of each formula cell as told last, by the name of its place. */
  let told = new Map<string, CellValue>();
  let book: KeptBook | null = null;
  let engine: FormulaEngine | null = null;

  function opened(): { readonly book: KeptBook; readonly engine: FormulaEngine } {
    if (!book || !engine) throw new Error('The calculator must be told to open a book first.');
    return { book, engine };
  }

  function build(kept: KeptBook, chosen: ReadonlySet<string> | null = null): FormulaEngine {
    return buildEngine(
      {
        sheets: kept.sheetNames.map((name) => ({
          name,
          cells: kept.cellsOf(name).map(({ cell, ...address }) => {
            const place = placeName({ sheet: name, ...address });
            const isLeftOut = cell.type === 'formula' && chosen !== null && !chosen.has(place);
            return { ...address, content: isLeftOut ? null : engineContent(cell, setAside.has(place)) };
          }),
        })),
        names: kept.names,
      },
      inside,
      guarded,
    );
  }

  /** Builds the engine with everything, or with all formulas but those that make it throw. `suspects` are blamed first. */
  function rebuild(kept: KeptBook, suspects: ReadonlySet<string> = new Set()): FormulaEngine {
    engine?.close();
    engine = null;
    setAside.clear();
    for (;;) {
      const built = attempt(() => build(kept));
      if (!built) {
        setAside.add(culprit(kept, suspects));
        continue;
      }
      const spilling = kept.formulas().filter(({ place }) => built.isSpilling(place));
      if (spilling.length === 0) {
        engine = built;
        return built;
      }
      for (const { reading } of spilling) kept.refuseSpill(reading.text);
      built.close();
    }
  }

  /** The first formula with which, added to those before it, the engine throws. */
  function culprit(kept: KeptBook, suspects: ReadonlySet<string>): string {
    const places = kept
      .formulas()
      .map(({ place }) => placeName(place))
      .filter((place) => !setAside.has(place));
    const ordered = [
      ...places.filter((place) => !suspects.has(place)),
      ...places.filter((place) => suspects.has(place)),
    ];
    let sound = 0;
    let broken = ordered.length;
    while (broken - sound > 1) {
      const middle = Math.floor((sound + broken) / 2);
      const built = attempt(() => build(kept, new Set(ordered.slice(0, middle))));
      built?.close();
      if (built) sound = middle;
      else broken = middle;
    }
    const found = ordered[broken - 1];
    if (found === undefined) throw new Error('The engine cannot hold this book even without its formulas.');
    return found;
  }

  /** Tells the values of these formula cells, as far as they are new. */
  function news(cells: readonly FormulaCell[]): readonly CellChange[] {
    const { engine, book } = opened();
    const tell = valueTeller(book, engine);
    const changes: CellChange[] = [];
    for (const { place } of cells) {
      const name = placeName(place);
      const value = tell(engine.valueAt(place), place);
      if (told.has(name) && isSame(told.get(name) ?? null, value)) continue;
      told.set(name, value);
      changes.push({ ...place, value });
    }
    return changes;
  }

  return {
    open: async (given) => {
      book = keepBook(given, functionNames);
      told = new Map();
      rebuild(book);
      return news(book.formulas());
    },

    apply: async (edits) => {
      const { book, engine } = opened();
      const edited = new Map(
        edits.map(({ content, ...place }) => {
          const exact = book.placeIn(place);
          return [placeName(exact), { place: exact, content }];
        }),
      );
      for (const [name, { place, content }] of edited) {
        book.put(place, content);
        if (book.at(place)?.type !== 'formula') told.delete(name);
      }
      const changed =
        setAside.size > 0
          ? null
          : attempt(() =>
              engine.write(
                Array.from(edited.values(), ({ place }) => ({
                  ...place,
                  content: engineContent(book.at(place)),
                })),
              ),
            );
      const touched = new Map<string, FormulaCell>();
      for (const place of [...Array.from(edited.values(), (one) => one.place), ...(changed ?? [])]) {
        const cell = book.at(place);
        if (cell?.type === 'formula') touched.set(placeName(place), { place, reading: cell.reading });
      }
      const cells = [...touched.values()];
      if (changed && !cells.some(({ place }) => engine.isSpilling(place))) return news(cells);
      rebuild(book, new Set(edited.keys()));
      return news(book.formulas());
    },

    evaluate: async (sheet, expressions) => {
      const { book } = opened();
      const own = book.placeIn({ sheet, row: 0, column: 0 }).sheet;
      return expressions.map((expression): CellValue | CellBlock => {
        const reading = book.read(expression, own);
        if (reading.type === 'refused') return reading.fault;
        const now = opened();
        const value = attempt(() => now.engine.evaluate(own, reading.written));
        if (value === undefined) {
          rebuild(now.book);
          return gaveUpFault;
        }
        const tell = valueTeller(now.book, now.engine);
        return isBlock(value) ? value.map((row) => row.map((one) => tell(one))) : tell(value);
      });
    },

    dependents: async (place) => {
      const { book } = opened();
      return book.readersOf(book.placeIn(place));
    },

    close: async () => {
      engine?.close();
      engine = null;
      book = null;
      told = new Map();
    },
  };
}

function engineContent(cell: KeptCell | undefined, isSetAside = false): EngineContent {
  if (!cell) return null;
  if (cell.type === 'plain') return cell.content;
  if (cell.reading.type === 'refused') return cell.reading.fault;
  return isSetAside ? gaveUpFault : { formula: cell.reading.written };
}

function isSame(one: CellValue, other: CellValue): boolean {
  if (!isFault(one) || !isFault(other)) return one === other;
  return one.fault === other.fault && one.sentence === other.sentence && one.bornAt === other.bornAt;
}

/** The outcome, or undefined when the engine throws: it is then half-changed and must not be used again. */
function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
