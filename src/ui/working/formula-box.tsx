import { lazy, Suspense, useEffect, useId, useRef, useState } from 'react';
import type { Explanation } from '../../session/explanation.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { isFormula } from '../../workbook/document.ts';
import { FormulaReading } from './formula-reading.tsx';
import './formula.css';

const loadEditor = () =>
  import('./formula-editor.tsx').then(({ FormulaEditor }) => ({ default: FormulaEditor }));
/** A chunk of its own: most cells are only read. */
const FormulaEditor = lazy(loadEditor);

/** The formula of the cell: to read first, to write in as soon as one asks for it. */
export function FormulaBox({
  session,
  state,
  explanation: { sheetId, address },
  draft,
  onDraft,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly explanation: Explanation;
  /** What was written here before and is not in the cell yet. */
  readonly draft: string | null;
  readonly onDraft: (draft: string | null) => void;
}) {
  const id = useId();
  const [isOpen, setOpen] = useState(draft !== null);
  const [refusal, setRefusal] = useState<string | null>(null);
  // A draft that waited here does not take the focus from whoever walks past in the sheet.
  const [isAskedFor, setAskedFor] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(isOpen);
  const sheet = sheetWithId(state.workbook, sheetId);
  const content = sheet ? (cellAt(sheet, address)?.content ?? null) : null;
  const formula = isFormula(content) ? content.formula : null;

  // Whoever leaves the editor stands where the formula is read.
  useEffect(() => {
    if (wasOpen.current && !isOpen && document.activeElement === document.body) opener.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);

  if (state.isReadOnly) {
    return formula === null ? null : (
      <div className="formula-box">
        <FormulaReading formula={formula} />
      </div>
    );
  }

  function close(): void {
    onDraft(null);
    setRefusal(null);
    setOpen(false);
  }

  function commit(text: string): void {
    const typed = text.trimStart().startsWith('=') ? text.trim() : `=${text.trim()}`;
    const outcome = session.run({ type: 'enter', sheet: sheetId, address, typed });
    if (outcome.ok) close();
    else setRefusal(outcome.fault);
  }

  if (!isOpen || !sheet) {
    return (
      <>
        <button
          type="button"
          ref={opener}
          className={formula === null ? 'formula-offer' : 'formula-box formula-open'}
          aria-describedby={formula === null ? undefined : `${id}-what`}
          onClick={() => {
            setAskedFor(true);
            setOpen(true);
          }}
          onFocus={loadEditor}
          onPointerEnter={loadEditor}
        >
          {formula === null ? 'Write a formula here' : <FormulaReading formula={formula} />}
        </button>
        <span id={`${id}-what`} hidden>
          Press to change the formula.
        </span>
      </>
    );
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset belongs to a form, and nothing is sent from here
    <div
      role="group"
      aria-label="Formula"
      className="formula-writing"
      onBlur={(event) => {
        // No other element took the focus: the window lost it, or the page is being drawn anew.
        if (event.relatedTarget === null || event.currentTarget.contains(event.relatedTarget)) return;
        if (draft === null && refusal === null) close();
      }}
    >
      <Suspense
        fallback={<div className="formula-box">{formula ? <FormulaReading formula={formula} /> : ' '}</div>}
      >
        <FormulaEditor
          session={session}
          sheet={sheet}
          address={address}
          text={draft ?? formula ?? ''}
          takesFocus={isAskedFor}
          onChange={(text) => {
            onDraft(text === (formula ?? '') ? null : text);
            setRefusal(null);
          }}
          onCommit={commit}
          onGiveUp={close}
          refusalId={`${id}-refusal`}
          isRefused={refusal !== null}
        />
      </Suspense>
      {draft !== null && !isAskedFor ? (
        <p className="working-detail">This was written here before, and is not in the cell yet.</p>
      ) : null}
      <div id={`${id}-refusal`} role="alert">
        {refusal === null ? null : <p className="formula-refusal">{refusal}</p>}
      </div>
    </div>
  );
}
