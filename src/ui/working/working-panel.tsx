import { Suspense, useEffect, useLayoutEffect, useRef } from 'react';
import { type CellAddress, writeAddress } from '../../base/address.ts';
import { isFault } from '../../base/value.ts';
import type { Explanation } from '../../session/explanation.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import type { DressWish } from '../dress/cell-dress.tsx';
import { fullText } from '../dress/question-draft.ts';
import { later } from '../later.tsx';
import { CellFigure } from './cell-figure.tsx';
import { CellLinks } from './cell-links.tsx';
import { Decisions } from './decisions.tsx';
import { FormulaBox } from './formula-box.tsx';
import { GivenQuestion } from './given-question.tsx';
import { LockNote } from './lock-note.tsx';
import { type SelectedCells, SelectionFigures } from './selection-figures.tsx';
import { useNews } from './use-news.ts';
import { WorkedCalls } from './worked-calls.tsx';
import './working.css';

const CellDress = later(async () => (await import('../dress/cell-dress.tsx')).CellDress);

/** The right side of the screen: how the selected cell came to its value, from what, and what uses it. */
export function WorkingPanel({
  session,
  state,
  explanation,
  selection,
  isInView,
  dressWish,
  onDressed,
  onGo,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly explanation: Explanation | null;
  /** Whether the sheet of the cell stands before the person; what they do not see they do not dress. */
  readonly isInView: boolean;
  readonly dressWish: DressWish | null;
  /** The part that was asked for has the focus. */
  readonly onDressed: () => void;
  /** Null while a single cell is selected. */
  readonly selection: SelectedCells | null;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const panel = useRef<HTMLElement>(null);
  const cellKey = explanation ? `${explanation.sheetId} ${writeAddress(explanation.address)}` : '';
  const sheet = explanation ? sheetWithId(state.workbook, explanation.sheetId) : undefined;
  const news = useNews(cellKey, explanation);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another cell is read from its top; the same one keeps its place
  useEffect(() => {
    if (panel.current) panel.current.scrollTop = 0;
  }, [cellKey]);

  return (
    <section className="working" ref={panel} aria-label="Working">
      <p className="visually-hidden" role="status">
        {news}
      </p>
      {selection ? <SelectionFigures {...selection} /> : null}
      {explanation ? (
        <Working key={cellKey} session={session} state={state} explanation={explanation} onGo={onGo} />
      ) : (
        <p className="working-quiet">Choose a cell to see how it is worked out.</p>
      )}
      {sheet && explanation && isInView ? (
        <Suspense fallback={dressWish ? <OnItsWay /> : null}>
          <CellDress
            session={session}
            sheet={sheet}
            wish={dressWish}
            onGranted={onDressed}
            range={selection?.range ?? { from: explanation.address, to: explanation.address }}
          />
        </Suspense>
      ) : null}
    </section>
  );
}

/** Takes the focus until the part that was asked for is fetched, so that nothing typed meanwhile lands in the cell. */
function OnItsWay() {
  const words = useRef<HTMLParagraphElement>(null);
  useLayoutEffect(() => words.current?.focus(), []);
  return (
    <p ref={words} tabIndex={-1} className="working-quiet">
      One moment …
    </p>
  );
}

function Working({
  session,
  state,
  explanation,
  onGo,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly explanation: Explanation;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const { sheetId, address, label, role, question, note, value } = explanation;
  const sheet = sheetWithId(state.workbook, sheetId);
  const cell = sheet ? cellAt(sheet, address) : null;

  function takeUsual(): void {
    if (question?.usual === undefined) return;
    const typed = fullText(question.usual, cell?.unit, cell?.format);
    session.run({ type: 'enter', sheet: sheetId, address, typed });
  }

  return (
    <>
      <header className="working-head">
        <h2 className="working-place">
          Working · {writeAddress(address)}
          {label ? <span className="working-label">{label}</span> : null}
        </h2>
        {role === 'empty' || role === 'text' ? null : <span className="working-role">{role}</span>}
      </header>
      <CellFigure explanation={explanation} workbook={state.workbook} onGo={onGo} />
      {question ? (
        <GivenQuestion
          question={question}
          unit={explanation.unit}
          format={cell?.format}
          onTakeUsual={question.usual === undefined || question.usual === cell?.content ? null : takeUsual}
        />
      ) : null}
      {cell?.locked ? <LockNote session={session} state={state} /> : null}
      {note ? <p className="working-note">{note}</p> : null}
      {role === 'heading' ? null : <FormulaBox session={session} state={state} explanation={explanation} />}
      {explanation.sum ? (
        <p className="working-sum">
          <span className="working-sum-sign">= </span>
          {explanation.sum}
        </p>
      ) : null}
      <Decisions decisions={explanation.decisions} />
      <WorkedCalls
        calls={explanation.calls}
        shown={explanation.shown}
        value={value}
        told={isFault(value) ? value.sentence : null}
      />
      <CellLinks heading="Comes from" links={explanation.comesFrom} onGo={onGo} />
      <CellLinks heading="Used by" links={explanation.usedBy} onGo={onGo} />
    </>
  );
}
