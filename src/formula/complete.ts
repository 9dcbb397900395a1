import { atCaret } from './caret.ts';
import { sheetPrefix } from './reference-text.ts';
import type { Signature } from './signature.ts';

/** What could be meant by the word at the caret, the likeliest first. */
export interface Completion {
  /** The stretch of text that an option replaces. */
  readonly from: number;
  readonly to: number;
  readonly options: readonly CompletionOption[];
}

export interface CompletionOption {
  readonly type: 'function' | 'name' | 'sheet';
  readonly label: string;
  /** What to put in; the caret goes behind it. */
  readonly text: string;
  /** What a function gives; empty for names and sheets. */
  readonly says: string;
}

export interface Completable {
  readonly functions: readonly Signature[];
  readonly names: readonly string[];
  readonly sheets: readonly string[];
}

/** Null where no word can stand: inside a text, behind a value, or behind `Sheet!`. With nothing typed yet,
 *  all that can stand there. */
export function completeAt(text: string, caret: number, known: Completable): Completion | null {
  const { quote } = atCaret(text, caret);
  if (quote?.type === 'text') return null;
  if (quote?.type === 'sheet') return sheetsFor(text, caret, quote.from, known);
  const typed = /[\w.\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af]*$/.exec(text.slice(0, caret))?.[0] ?? '';
  const from = caret - typed.length;
  const rest = /^[\w.\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af]*/.exec(text.slice(caret))?.[0] ?? '';
  const to = caret + rest.length;
  if (!canBeginWord(text.slice(0, from), typed)) return null;
  const isCalled = text.slice(to).trimStart().startsWith('(');
  const options = [
    ...known.names.map((name) => option('name', name, name)),
    ...known.functions.map(({ name, arguments: given, says }) =>
      option('function', name, isCalled ? name : `${name}(${given.length === 0 ? ')' : ''}`, says),
    ),
    ...known.sheets.map((sheet) => option('sheet', sheet, sheetPrefix(sheet))),
  ];
  return found(from, to, typed, options);
}

function option(type: CompletionOption['type'], label: string, text: string, says = ''): CompletionOption {
  return { type, label, text, says };
}

function sheetsFor(text: string, caret: number, from: number, known: Completable): Completion | null {
  const typed = text.slice(from + 1, caret).replaceAll("''", "'");
  const rest = /^(?:[^'!(),]*'!?)?/.exec(text.slice(caret))?.[0] ?? '';
  return found(
    from,
    caret + rest.length,
    typed,
    known.sheets.map((sheet) => option('sheet', sheet, sheetPrefix(sheet))),
  );
}

function canBeginWord(before: string, typed: string): boolean {
  if (/^[0-9.]/.test(typed) || /[$!#'"]$/.test(before)) return false;
  return /(^|[-+*/^&=<>(,{:])\s*$/.test(before) && !before.trimEnd().endsWith(':');
}

function found(
  from: number,
  to: number,
  typed: string,
  options: readonly CompletionOption[],
): Completion | null {
  const ranked = options
    .map((one) => ({ one, rank: rankOf(one.label, typed) }))
    .filter(({ rank }) => rank < unfit)
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ one }) => one);
  return ranked.length === 0 ? null : { from, to, options: ranked };
}

const unfit = 3;

/** Begins with what was typed, has a part that begins so (`STRETCHOUT` in `WRAP.STRETCHOUT`), holds it, or none. */
function rankOf(label: string, typed: string): number {
  const whole = label.toUpperCase();
  const wanted = typed.toUpperCase();
  if (whole.startsWith(wanted)) return 0;
  if (whole.split(/[._ ]/).some((part) => part.startsWith(wanted))) return 1;
  return wanted.length > 1 && whole.includes(wanted) ? 2 : unfit;
}
