import { lazy, Suspense, useEffect, useId, useRef, useState } from 'react';
import type { Explanation } from '../../session/explanation.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { isFormula } from '../../workbook/document.ts';
import { locksHold } from '../../workbook/locked.ts';
import { useWaiting, waitingAt } from '../waiting/waiting-entries.ts';
import { FormulaReading } from './formula-reading.tsx';
import { WaitingBox } from './waiting-box.tsx';
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
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly explanation: Explanation;
}) {
  const id = useId();
  const { waiting, entries } = useWaiting(state.workbook.id);
  const waits = waitingAt(waiting, sheetId, address);
  const draft = waits && /^\s*=/.test(waits.typed) ? waits.typed.replace(/^\s*=/, '') : null;
  const refusal = draft === null ? null : (waits?.refusal ?? null);
  const [isOpen, setOpen] = useState(false);
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

  const isLocked = sheet !== undefined && cellAt(sheet, address)?.locked && locksHold(state.workbook);
  if (state.isReadOnly || isLocked) {
    return formula === null ? null : (
      <div className="formula-box">
        <FormulaReading formula={formula} />
      </div>
    );
  }

  function close(): void {
    entries.forget(state.workbook.id, sheetId, address);
    setOpen(false);
  }

  function keep(text: string, why: string | null): void {
    entries.keep({ workbook: state.workbook.id, sheetId, address, typed: `=${text}`, refusal: why });
  }

  function commit(text: string): void {
    const typed = text.trimStart().startsWith('=') ? text.trim() : `=${text.trim()}`;
    const outcome = session.run({ type: 'enter', sheet: sheetId, address, typed });
    if (outcome.ok) close();
    else keep(typed.slice(1), outcome.fault);
  }

  if (!isOpen || !sheet) {
    return (
      <>
        {waits ? (
          <WaitingBox
            entry={waits}
            {...(draft === null ? {} : { onWriteOn: () => setOpen(true) })}
            onGiveUp={() => entries.forget(state.workbook.id, sheetId, address)}
          />
        ) : null}
        <button
          type="button"
          ref={opener}
          className={formula === null ? 'formula-offer' : 'formula-box formula-open'}
          aria-describedby={formula === null ? undefined : `${id}-what`}
          onClick={() => setOpen(true)}
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
        if (draft === null) setOpen(false);
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
          takesFocus
          onChange={(text) => {
            if (text === (formula ?? '')) entries.forget(state.workbook.id, sheetId, address);
            else keep(text, null);
          }}
          onCommit={commit}
          onGiveUp={close}
          refusalId={`${id}-refusal`}
          isRefused={refusal !== null}
        />
      </Suspense>
      <div id={`${id}-refusal`} role="alert">
        {refusal === null ? null : <p className="formula-refusal">{refusal}</p>}
      </div>
    </div>
  );
}
