import { closeBrackets, closeBracketsKeymap } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { bracketMatching, LanguageSupport, LRLanguage, syntaxHighlighting } from '@codemirror/language';
import { Compartment, EditorState } from '@codemirror/state';
import { drawSelection, EditorView, keymap } from '@codemirror/view';
import { useEffect, useRef, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { formulaClasses, formulaParser } from './formula-colours.ts';

const formulaLanguage = new LanguageSupport(LRLanguage.define({ name: 'formula', parser: formulaParser }));

/** A formula is one line, however wide: a pasted line break becomes a space. */
const oneLine = EditorState.transactionFilter.of((transaction) => {
  if (!transaction.docChanged || transaction.newDoc.lines === 1) return transaction;
  const text = transaction.newDoc.toString().replaceAll(/\s*\n\s*/g, ' ');
  return [
    transaction,
    {
      changes: { from: 0, to: transaction.newDoc.length, insert: text },
      selection: { anchor: text.length },
      sequential: true,
    },
  ];
});

/** The formula as a text to write in, with help while one writes. Enter puts it into the cell, Escape gives it up. */
export function FormulaEditor({
  text,
  onChange,
  onCommit,
  onGiveUp,
  refusalId,
  isRefused,
}: {
  readonly session: Session;
  readonly sheetId: string;
  /** What stands there at first. */
  readonly text: string;
  readonly onChange: (text: string) => void;
  readonly onCommit: (text: string) => void;
  readonly onGiveUp: () => void;
  /** The element that says why the formula was refused. */
  readonly refusalId: string;
  readonly isRefused: boolean;
}) {
  const place = useRef<HTMLDivElement>(null);
  const view = useRef<EditorView | null>(null);
  const [attributes] = useState(() => new Compartment());
  const handlers = useRef({ onChange, onCommit, onGiveUp });
  handlers.current = { onChange, onCommit, onGiveUp };

  // biome-ignore lint/correctness/useExhaustiveDependencies: made once; from then on the text is the editor's own
  useEffect(() => {
    if (!place.current) return;
    const own = new EditorView({
      parent: place.current,
      state: EditorState.create({
        doc: text,
        selection: { anchor: text.length },
        extensions: [
          keymap.of([
            {
              key: 'Enter',
              run: (editor) => {
                handlers.current.onCommit(editor.state.doc.toString());
                return true;
              },
            },
            {
              key: 'Escape',
              run: () => {
                handlers.current.onGiveUp();
                return true;
              },
            },
          ]),
          oneLine,
          formulaLanguage,
          syntaxHighlighting(formulaClasses),
          bracketMatching(),
          closeBrackets(),
          history(),
          drawSelection(),
          EditorView.lineWrapping,
          keymap.of([...closeBracketsKeymap, ...historyKeymap, ...defaultKeymap]),
          EditorView.updateListener.of((update) => {
            if (update.docChanged) handlers.current.onChange(update.state.doc.toString());
          }),
          attributes.of([]),
        ],
      }),
    });
    view.current = own;
    own.focus();
    return () => own.destroy();
  }, []);

  useEffect(() => {
    view.current?.dispatch({
      effects: attributes.reconfigure(
        EditorView.contentAttributes.of({
          'aria-label': 'Formula',
          'aria-describedby': refusalId,
          'aria-invalid': String(isRefused),
        }),
      ),
    });
  }, [attributes, refusalId, isRefused]);

  return (
    <>
      <div className="formula-box formula-editor">
        <span className="formula-sign" aria-hidden="true">
          =
        </span>
        <div className="formula-editor-text" ref={place} />
      </div>
      <div className="formula-keys">
        <button
          type="button"
          onClick={() => handlers.current.onCommit(view.current?.state.doc.toString() ?? '')}
        >
          Put it in <kbd>Enter</kbd>
        </button>
        <button type="button" onClick={() => handlers.current.onGiveUp()}>
          Leave as it was <kbd>Esc</kbd>
        </button>
      </div>
    </>
  );
}
