import { findFunction, tradeFunctions } from '../../catalogue/list.ts';
import { builtins } from '../../formula/builtins.ts';
import type { Completable, CompletionOption } from '../../formula/complete.ts';
import { type Completion, completeAt } from '../../formula/complete.ts';
import { type Signature, signaturesFrom } from '../../formula/signature.ts';
import type { Workbook } from '../../workbook/document.ts';

/** Every function that a formula may call. */
export const formulaFunctions: readonly Signature[] = [...signaturesFrom(tradeFunctions), ...builtins];

const kinds = { function: '', name: 'a name of this workbook', sheet: 'a sheet' } as const satisfies Record<
  CompletionOption['type'],
  string
>;

/** What an option is, where it does not say so itself. */
export function aboutOption({ says, type }: CompletionOption): string {
  return says || kinds[type];
}

function knownWords({ names, sheets }: Workbook): Completable {
  return {
    functions: formulaFunctions,
    names: Object.keys(names),
    sheets: sheets.map((sheet) => sheet.name),
  };
}

/** What the word at the caret could mean, once something of it is typed or when it is asked for. */
export function offersAt(
  workbook: Workbook,
  text: string,
  caret: number,
  isAsked: boolean,
): Completion | null {
  const found = completeAt(text, caret, knownWords(workbook));
  if (!found || (found.from === caret && !isAsked)) return null;
  const typed = text.slice(found.from, caret).toLowerCase();
  // A name that stands there in full is meant: Enter must not make a longer one of it.
  const isWhole = found.options.some((one) => one.type === 'name' && one.label.toLowerCase() === typed);
  return isWhole && !isAsked ? null : found;
}

/** More about an argument than its signature holds: what it is, and why it may be left out. */
export function aboutArgument(name: string, argument: string): { says: string; usually: string } {
  const spec = findFunction(name)?.arguments[argument];
  return { says: spec?.says ?? '', usually: spec?.usual?.why ?? '' };
}
