import {
  acceptCompletion,
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
} from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { bracketMatching, LanguageSupport, LRLanguage, syntaxHighlighting } from '@codemirror/language';
import { Compartment, EditorState } from '@codemirror/state';
import { EditorView, keymap } from '@codemirror/view';
import { useEffect, useId, useRef, useState } from 'react';
import { formulaLanguage } from '../../formula/highlight.ts';
import { type SignatureHelp, signatureAt } from '../../formula/signature-help.ts';
import type { Workbook } from '../../workbook/document.ts';
import { formulaClasses } from './formula-classes.ts';
import { completionSource, formulaFunctions } from './formula-help.ts';
import { SignatureNote } from './signature-note.tsx';

const language = new LanguageSupport(LRLanguage.define({ name: 'formula', parser: formulaLanguage }));

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
  workbook,
  text,
  takesFocus,
  onChange,
  onCommit,
  onGiveUp,
  refusalId,
  isRefused,
}: {
  readonly workbook: () => Workbook;
  /** What stands there at first. */
  readonly text: string;
  readonly takesFocus: boolean;
  readonly onChange: (text: string) => void;
  readonly onCommit: (text: string) => void;
  readonly onGiveUp: () => void;
  /** The element that says why the formula was refused. */
  readonly refusalId: string;
  readonly isRefused: boolean;
}) {
  const id = useId();
  const place = useRef<HTMLDivElement>(null);
  const view = useRef<EditorView | null>(null);
  const [attributes] = useState(() => new Compartment());
  const [help, setHelp] = useState<SignatureHelp | null>(null);
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
          autocompletion({
            override: [completionSource(workbook)],
            icons: false,
            optionClass: () => 'formula-option',
          }),
          keymap.of([
            { key: 'Tab', run: acceptCompletion },
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
          language,
          syntaxHighlighting(formulaClasses),
          bracketMatching(),
          closeBrackets(),
          history(),
          EditorView.lineWrapping,
          keymap.of([...closeBracketsKeymap, ...historyKeymap, ...defaultKeymap]),
          EditorView.updateListener.of(({ state, docChanged, selectionSet }) => {
            if (docChanged) handlers.current.onChange(state.doc.toString());
            if (docChanged || selectionSet) setHelp(helpIn(state));
          }),
          attributes.of([]),
        ],
      }),
    });
    view.current = own;
    setHelp(helpIn(own.state));
    if (takesFocus) own.focus();
    return () => own.destroy();
  }, []);

  useEffect(() => {
    view.current?.dispatch({
      effects: attributes.reconfigure(
        EditorView.contentAttributes.of({
          'aria-label': 'Formula',
          'aria-describedby': `${refusalId} ${id}-keys`,
          'aria-invalid': String(isRefused),
        }),
      ),
    });
  }, [attributes, refusalId, id, isRefused]);

  return (
    <>
      <div className="formula-box formula-editor">
        <span className="formula-sign" aria-hidden="true">
          =
        </span>
        <div className="formula-editor-text" ref={place} />
      </div>
      <div className="signature-note" role="status" hidden={help === null}>
        {help ? <SignatureNote help={help} /> : null}
      </div>
      <div className="formula-keys" id={`${id}-keys`}>
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

function helpIn(state: EditorState): SignatureHelp | null {
  return signatureAt(state.doc.toString(), state.selection.main.head, formulaFunctions);
}
