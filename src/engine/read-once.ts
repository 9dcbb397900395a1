import { HyperFormula, type SimpleCellAddress } from 'hyperformula';
import type { Kind } from './filled-down.ts';

/** Lets the engine read one formula of each kind, while a book is built, and take what came of it for all others: it would
 *  take each of a hundred thousand apart into its tokens only to find that it knows them. */
export interface ReadOnce {
  /** What to give the engine in place of the formula and its `=`. */
  readonly mark: (kind: Kind) => string;
  /** Builds an engine whose formulas were marked so. */
  readonly within: <T>(build: () => T) => T;
}

/** The engine's own reader, as far as it concerns us; what it gives is nobody else's to look into. */
interface EngineReader {
  parse(text: string, at: SimpleCellAddress): unknown;
}

/** No formula that passed our check begins so. */
const sign = '=\u0001';

/** Answers for marked formulas; there is one only while an engine is built. */
let answer: ((reader: EngineReader, text: string, at: SimpleCellAddress) => unknown) | null = null;
let isReady = false;

export function readOnce(): ReadOnce {
  const kinds: Kind[] = [];
  const places = new Map<Kind, number>();
  const known: unknown[] = [];
  return {
    mark: (kind) => {
      let place = places.get(kind);
      if (place === undefined) {
        place = kinds.push(kind) - 1;
        places.set(kind, place);
      }
      return sign + place;
    },
    within: (build) => {
      if (kinds.length === 0) return build();
      makeReady();
      answer = (reader, text, { sheet }) => {
        const place = Number(text.slice(sign.length));
        const kind = kinds[place];
        if (!kind) throw new Error('A formula came to the engine with a mark that nobody made.');
        known[place] ??= reader.parse(`=${kind.written}`, { sheet, row: kind.row, col: kind.column });
        return known[place];
      };
      try {
        return build();
      } finally {
        answer = null;
      }
    },
  };
}

/** The engine has no way of its own to be told what a formula says, so its reader is taught to ask us first. */
function makeReady(): void {
  if (isReady) return;
  const engine = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3' });
  const reader: EngineReader = Object.getPrototypeOf(Reflect.get(engine, '_parser'));
  const read = reader.parse;
  reader.parse = function parse(this: EngineReader, text, at) {
    return answer && text.startsWith(sign) ? answer(this, text, at) : read.call(this, text, at);
  };
  engine.destroy();
  isReady = true;
}
