import { type CellBlock, type CellValue, sameValue } from '../base/value.ts';
import { isBlock } from '../catalogue/argument.ts';
import type { AnyTradeFunction } from '../catalogue/define.ts';
import { builtins } from '../formula/builtins.ts';
import type { Calculator, CellChange, Place } from './calculator.ts';
import type { EngineContent } from './formula-engine.ts';
import { guardedPlugins } from './guarded-plugins.ts';
import { isReading, type KeptBook, keepBook } from './kept-book.ts';
import { insideFunction } from './own-plugin.ts';
import { placeName } from './place-name.ts';
import { attempt, buildSoundly, engineContent, type SoundEngine } from './sound-engine.ts';
import { valueTeller } from './tell-value.ts';
import { toldValues } from './told-values.ts';
import { gaveUpFault } from './wording.ts';

/** A calculator in this very thread. It keeps the book itself, since an engine that throws is left half-changed: it is
 *  then built anew, without the formula that is to blame. */
export function createCalculator({ functions }: { functions: readonly AnyTradeFunction[] }): Calculator {
  const functionNames = [...functions, ...builtins].map((one) => one.name);
  const inside = functions.map(insideFunction);
  const guarded = guardedPlugins();
  let open: (SoundEngine & { readonly book: KeptBook }) | null = null;
  let told = toldValues();

  function opened(): SoundEngine & { readonly book: KeptBook } {
    if (!open) throw new Error('The calculator must be told to open a book first.');
    return open;
  }

  /** Where formulas bring the engine down, those edited last are to blame, or those that were set aside before. */
  function rebuild(book: KeptBook, edited: Iterable<string> = []): void {
    const old = open;
    open = null;
    attempt(() => old?.engine.close());
    const suspects = new Set([...(old?.book === book ? old.setAside : []), ...edited]);
    open = { book, ...buildSoundly(book, inside, guarded, suspects) };
  }

  function everyFormula(): readonly Place[] {
    return opened()
      .book.formulas()
      .map((one) => one.place);
  }

  /** The values of these cells, as far as they hold formulas and their values are new. */
  function news(places: Iterable<Place>): readonly CellChange[] {
    const { engine, book } = opened();
    const tell = valueTeller(book, engine);
    const changes: CellChange[] = [];
    for (const place of places) {
      if (!isReading(book.at(place))) continue;
      const value = tell(engine.valueAt(place), place);
      const before = told.get(place);
      if (before !== undefined && sameValue(before, value)) continue;
      told.set(place, value);
      const { sheet, row, column } = place; // spread out, each object would be of a slow kind
      changes.push({ sheet, row, column, value });
    }
    return changes;
  }

  return {
    open: async (given) => {
      told = toldValues();
      rebuild(keepBook(given, functionNames));
      return news(everyFormula());
    },

    apply: async (edits) => {
      const { book, engine, setAside } = opened();
      const edited = new Map<string, Place>();
      for (const place of edits.map(book.placeIn)) edited.set(placeName(place), place);
      for (const { content, ...place } of edits) book.put(place, content);
      for (const place of edited.values()) {
        if (!isReading(book.at(place))) told.forget(place);
      }
      const contents = contentsAt(book, edited.values());
      const newlyRead = contentsAt(book, book.takeNewlyRead());
      // A formula set aside may work again after any edit.
      const changed =
        setAside.size > 0 ? undefined : attempt(() => engine.write([...newlyRead, ...contents]));
      if (changed && !contents.some((place) => engine.isSpilling(place))) {
        for (const place of changed) edited.set(placeName(place), place);
        return news(edited.values());
      }
      rebuild(book, edited.keys());
      return news(everyFormula());
    },

    evaluate: async (sheet, expressions) => {
      const own = opened().book.placeIn({ sheet, row: 0, column: 0 }).sheet;
      return expressions.map((expression): CellValue | CellBlock => {
        const { book, engine } = opened();
        const reading = book.read(expression, own);
        if (reading.type === 'refused') return reading.fault;
        const value = attempt(() => {
          const newlyRead = contentsAt(book, book.takeNewlyRead());
          if (newlyRead.length > 0) engine.write(newlyRead);
          return engine.evaluate(own, reading.written);
        });
        if (value === undefined) {
          rebuild(book);
          return gaveUpFault;
        }
        const tell = valueTeller(book, engine);
        return isBlock(value) ? value.map((row) => row.map((one) => tell(one))) : tell(value);
      });
    },

    dependents: async (place) => {
      const { book } = opened();
      return book.readersOf(book.placeIn(place));
    },

    close: async () => {
      attempt(() => open?.engine.close());
      open = null;
      told = toldValues();
    },
  };
}

function contentsAt(
  book: KeptBook,
  places: Iterable<Place>,
): (Place & { readonly content: EngineContent })[] {
  return Array.from(places, (place) => ({ ...place, content: engineContent(book.at(place)) }));
}
