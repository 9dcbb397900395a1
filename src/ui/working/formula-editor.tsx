import {
  acceptCompletion,
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
} from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { bracketMatching, LanguageSupport, LRLanguage, syntaxHighlighting } from '@codemirror/language';
import { Compartment, EditorState } from '@codemirror/state';
import { EditorView, type KeyBinding, keymap } from '@codemirror/view';
import { type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { formulaLanguage } from '../../formula/highlight.ts';
import { type SignatureHelp, signatureAt } from '../../formula/signature-help.ts';
import type { Session } from '../../session/session.ts';
import type { Sheet } from '../../workbook/document.ts';
import { formulaFunctions } from '../formula/known-words.ts';
import { createPointing, type Pointing } from '../formula/pointing.ts';
import { SignatureNote } from '../formula/signature-note.tsx';
import { TagList } from '../formula/tag-list.tsx';
import { taggedCells } from '../formula/tagged-cells.ts';
import { useOnDesk, useWritingDesk, type WritingDesk } from '../formula/writing-desk.ts';
import { lastPlace } from '../grid/selection.ts';
import { formulaClasses } from './formula-classes.ts';
import { completionSource } from './formula-help.ts';

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
  session,
  sheet,
  address,
  text,
  takesFocus,
  onChange,
  onCommit,
  onGiveUp,
  refusalId,
  isRefused,
}: {
  readonly session: Session;
  /** Where the formula is to stand. */
  readonly sheet: Sheet;
  readonly address: CellAddress;
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
  const [written, setWritten] = useState(text);
  const desk = useWritingDesk();
  // biome-ignore lint/correctness/useExhaustiveDependencies: made once; the sheet and the cell stay while one writes
  const pointing = useMemo(() => pointingIn(view, sheet, address, desk), []);
  useOnDesk({ sheetId: sheet.id, address, text: written, field: 'working', pointing });
  const tagged = useMemo(
    () => taggedCells(session.getState().workbook, sheet.id, written),
    [session, sheet.id, written],
  );
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
            // Tab takes what is offered, however soon it comes.
            interactionDelay: 0,
            override: [completionSource(() => session.getState().workbook)],
            icons: false,
            optionClass: () => 'formula-option',
          }),
          keymap.of([
            { key: 'Tab', run: acceptCompletion },
            ...pointingKeys(pointing),
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
            if (docChanged) {
              setWritten(state.doc.toString());
              handlers.current.onChange(state.doc.toString());
            }
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
      <TagList cells={tagged} state={session.getState()} />
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
        <button type="button" onMouseDown={(event) => event.preventDefault()} onClick={pointing.holdNext}>
          Hold with $ <kbd>F8</kbd>
        </button>
      </div>
    </>
  );
}

/** Cells that are pressed or walked to go into the editor's text. */
function pointingIn(
  view: RefObject<EditorView | null>,
  sheet: Sheet,
  address: CellAddress,
  desk: WritingDesk,
): Pointing {
  return createPointing(
    {
      read: () => ({
        text: view.current?.state.doc.toString() ?? '',
        caret: view.current?.state.selection.main.head ?? 0,
      }),
      replace: ({ from, to, insert }) => {
        view.current?.dispatch({
          changes: { from, to, insert },
          selection: { anchor: from + insert.length },
          scrollIntoView: true,
        });
        view.current?.focus();
      },
    },
    { sheet, address },
    lastPlace,
    desk.shown,
  );
}

function pointingKeys(pointing: Pointing): readonly KeyBinding[] {
  const arrow = (key: string, rows: number, columns: number): KeyBinding => ({
    key,
    run: ({ state }) => state.selection.main.empty && pointing.step(rows, columns, false),
    shift: ({ state }) => state.selection.main.empty && pointing.step(rows, columns, true),
  });
  return [
    arrow('ArrowUp', -1, 0),
    arrow('ArrowDown', 1, 0),
    arrow('ArrowLeft', 0, -1),
    arrow('ArrowRight', 0, 1),
    { key: 'F8', run: pointing.holdNext },
  ];
}

function helpIn(state: EditorState): SignatureHelp | null {
  return signatureAt(state.doc.toString(), state.selection.main.head, formulaFunctions);
}
