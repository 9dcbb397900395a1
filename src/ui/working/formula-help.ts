import {
  type Completion,
  type CompletionContext,
  type CompletionResult,
  type CompletionSource,
  insertBracket,
  pickedCompletion,
} from '@codemirror/autocomplete';
import type { EditorView } from '@codemirror/view';
import type { Workbook } from '../../workbook/document.ts';
import { aboutOption, offersAt } from '../formula/known-words.ts';

/** Offers what the word at the caret could mean, once something of it is typed or when asked with Ctrl+Space. */
export function completionSource(workbook: () => Workbook): CompletionSource {
  return ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const found = offersAt(workbook(), state.doc.toString(), pos, explicit);
    if (!found) return null;
    return {
      from: found.from,
      to: found.to,
      filter: false,
      options: found.options.map((option) => ({
        label: option.label,
        apply: option.text.endsWith('(') ? openCall : option.text,
        type: option.type,
        detail: aboutOption(option),
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
