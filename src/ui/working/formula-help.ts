import type { CompletionContext, CompletionResult, CompletionSource } from '@codemirror/autocomplete';
import { findFunction, tradeFunctions } from '../../catalogue/list.ts';
import { builtins } from '../../formula/builtins.ts';
import { type CompletionOption, completeAt } from '../../formula/complete.ts';
import { type Signature, signaturesFrom } from '../../formula/signature.ts';
import type { Workbook } from '../../workbook/document.ts';

/** Every function that a formula may call. */
export const formulaFunctions: readonly Signature[] = [...signaturesFrom(tradeFunctions), ...builtins];

const kinds = { function: '', name: 'a name of this workbook', sheet: 'a sheet' } as const satisfies Record<
  CompletionOption['type'],
  string
>;

/** Offers what the word at the caret could mean, once something of it is typed or when asked with Ctrl+Space. */
export function completionSource(workbook: () => Workbook): CompletionSource {
  return ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const { names, sheets } = workbook();
    const known = {
      functions: formulaFunctions,
      names: Object.keys(names),
      sheets: sheets.map((sheet) => sheet.name),
    };
    const text = state.doc.toString();
    const found = completeAt(text, pos, known);
    if (!found || (found.from === pos && !explicit)) return null;
    const typed = text.slice(found.from, pos).toLowerCase();
    // A name that stands there in full is meant: Enter must not make a longer one of it.
    if (!explicit && found.options.some((one) => one.type === 'name' && one.label.toLowerCase() === typed)) {
      return null;
    }
    return {
      from: found.from,
      to: found.to,
      filter: false,
      options: found.options.map(({ type, label, text: apply, says }) => ({
        label,
        apply,
        type,
        detail: says || kinds[type],
      })),
    };
  };
}

/** More about an argument than its signature holds: what it is, and why it may be left out. */
export function aboutArgument(name: string, argument: string): { says: string; usually: string } {
  const spec = findFunction(name)?.arguments[argument];
  return { says: spec?.says ?? '', usually: spec?.usual?.why ?? '' };
}
