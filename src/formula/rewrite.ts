import type { Corner, Reference, Span } from './expression.ts';
import { cornerText, sheetPrefix } from './reference-text.ts';
import { referencesIn } from './references.ts';

/** What becomes of a reference: other corners or another sheet, another name, nothing left of it, or no change. */
export type Rewriting =
  | { readonly type: 'cells'; readonly sheet: string | null; readonly start: Corner; readonly end: Corner }
  | { readonly type: 'name'; readonly name: string }
  | { readonly type: 'gone' }
  | null;

/** The text with each reference put anew; every other character stays as typed. Also for texts that are no formula. */
export function rewritten(text: string, change: (reference: Reference) => Rewriting): string {
  let result = '';
  let done = 0;
  for (const reference of referencesIn(text)) {
    const rewriting = change(reference);
    if (rewriting === null) continue;
    result += text.slice(done, reference.from) + written(reference, rewriting, text);
    done = reference.to;
  }
  return result + text.slice(done);
}

function written(reference: Reference, rewriting: NonNullable<Rewriting>, text: string): string {
  if (rewriting.type === 'gone') return '#REF!';
  if (rewriting.type === 'name') return rewriting.name;
  const typed = partsAsTyped(reference, text);
  const prefix =
    reference.type !== 'name' && rewriting.sheet === reference.sheet
      ? typed.prefix
      : sheetPrefix(rewriting.sheet);
  const corner = (at: Corner): string => (typed.small ? cornerText(at).toLowerCase() : cornerText(at));
  return reference.type === 'cell'
    ? prefix + corner(rewriting.start)
    : prefix + corner(rewriting.start) + typed.colon + corner(rewriting.end);
}

/** How the user wrote a reference: its sheet, small letters, blanks around the colon. */
function partsAsTyped(span: Span, text: string) {
  const whole = text.slice(span.from, span.to);
  const prefix = /^(?:'(?:[^']|'')*'|[^'!]*)!\s*/.exec(whole)?.[0] ?? '';
  const address = whole.slice(prefix.length);
  return {
    prefix,
    small: address === address.toLowerCase(),
    colon: /\s*:\s*/.exec(address)?.[0] ?? ':',
  };
}
