import {
  type Completion,
  type CompletionContext,
  type CompletionResult,
  type CompletionSource,
  insertBracket,
  pickedCompletion,
} from '@codemirror/autocomplete';
import type { EditorView } from '@codemirror/view';
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
      options: found.options.map(({ type, label, text, says }) => ({
        label,
        apply: text.endsWith('(') ? openCall : text,
        type,
        detail: says || kinds[type],
      })),
    };
  };
}

/** Puts a function in as if its bracket had been typed, so that the closing one stands there too and can be typed over. */
function openCall(view: EditorView, option: Completion, from: number, to: number): void {
  view.dispatch({
    changes: { from, to, insert: option.label },
    selection: { anchor: from + option.label.length },
    annotations: pickedCompletion.of(option),
    userEvent: 'input.complete',
  });
  view.dispatch(insertBracket(view.state, '(') ?? view.state.replaceSelection('('));
}

/** More about an argument than its signature holds: what it is, and why it may be left out. */
export function aboutArgument(name: string, argument: string): { says: string; usually: string } {
  const spec = findFunction(name)?.arguments[argument];
  return { says: spec?.says ?? '', usually: spec?.usual?.why ?? '' };
}
