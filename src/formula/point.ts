import { atCaret } from './caret.ts';
import { cornerText } from './reference-text.ts';
import { referencesIn } from './references.ts';

/** A stretch of a text to be replaced, and by what. */
export interface Replacement {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** Whether a reference may be put in where the caret stands: after an operator, a comma or a bracket, or at the very
 *  beginning, and before nothing that it would run into. */
export function canPointAt(text: string, caret: number): boolean {
  if (atCaret(text, caret).quote !== null) return false;
  return (
    /(^|[-+*/^&=<>(,:])\s*$/.test(text.slice(0, caret)) && /^\s*([-+*/^&=<>),%]|$)/.test(text.slice(caret))
  );
}

/** The reference at the caret with the next of its four ways to be held: both, its row, its column, neither. Null where
 *  the caret touches none. */
export function heldNext(text: string, caret: number): Replacement | null {
  const reference = referencesIn(text).find(
    (one) => one.type !== 'name' && one.from <= caret && caret <= one.to,
  );
  if (reference === undefined || reference.type === 'name') return null;
  const written = text.slice(reference.from, reference.to);
  const prefix = /^(?:'(?:[^']|'')*'|[^'!]*)!\s*/.exec(written)?.[0] ?? '';
  const first = reference.type === 'cell' ? reference : reference.start;
  const ways = [
    { columnFixed: false, rowFixed: false },
    { columnFixed: true, rowFixed: true },
    { columnFixed: false, rowFixed: true },
    { columnFixed: true, rowFixed: false },
  ];
  const now = ways.findIndex(
    (way) => way.columnFixed === first.columnFixed && way.rowFixed === first.rowFixed,
  );
  const next = ways[(now + 1) % ways.length];
  const corners = reference.type === 'cell' ? [reference] : [reference.start, reference.end];
  const insert = prefix + corners.map((corner) => cornerText({ ...corner, ...next })).join(':');
  return { from: reference.from, to: reference.to, insert };
}
