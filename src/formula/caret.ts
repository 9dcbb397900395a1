/** A call that is open where the caret stands. */
export interface OpenCall {
  /** In capitals. */
  readonly name: string;
  /** Where its bracket stands. */
  readonly bracket: number;
  /** How many commas of its own stand before the caret. */
  readonly place: number;
}

/** What a caret stands in, while a formula is being written and may be broken in any way. */
export interface AtCaret {
  /** A text or a quoted sheet name that has begun: where its quote stands. */
  readonly quote: { readonly type: 'text' | 'sheet'; readonly from: number } | null;
  /** From the outside in; plain brackets are passed over. */
  readonly calls: readonly OpenCall[];
}

const token = /"(?:[^"]|"")*"?|'(?:[^']|'')*'?|[A-Za-z_$\u00c0-\u02af][\w.$\u00c0-\u02af]*|[(),{}]/g;

export function atCaret(text: string, caret: number): AtCaret {
  const before = text.slice(0, caret);
  const open: { name: string | null; bracket: number; place: number }[] = [];
  let word: string | null = null;
  let wordEnd = 0;
  for (const match of before.matchAll(token)) {
    const [piece] = match;
    const sign = piece.charAt(0);
    if (sign === '"' || sign === "'") {
      if (!isClosed(piece, sign)) {
        return { quote: { type: sign === '"' ? 'text' : 'sheet', from: match.index }, calls: callsIn(open) };
      }
    } else if (sign === '(' || sign === '{') {
      const isCall = sign === '(' && before.slice(wordEnd, match.index).trim() === '';
      open.push({ name: isCall ? word : null, bracket: match.index, place: 0 });
    } else if (sign === ')' || sign === '}') {
      open.pop();
    } else if (sign === ',') {
      const innermost = open.at(-1);
      if (innermost !== undefined) innermost.place += 1;
    }
    word = /[\w\u00c0-\u02af$]/.test(sign) ? piece.toUpperCase() : null;
    wordEnd = match.index + piece.length;
  }
  return { quote: null, calls: callsIn(open) };
}

/** A quote closes unless it is the second of a doubled one. */
function isClosed(piece: string, quote: string): boolean {
  const quotes = piece.split(quote).length - 1;
  return quotes % 2 === 0;
}

function callsIn(
  open: readonly { name: string | null; bracket: number; place: number }[],
): readonly OpenCall[] {
  return open.flatMap(({ name, bracket, place }) => (name === null ? [] : [{ name, bracket, place }]));
}
