import { type KeyboardEvent, useDeferredValue, useEffect, useId, useMemo, useRef, useState } from 'react';
import { type CellAddress, type CellRange, writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import type { NamedRange } from '../../workbook/document.ts';
import { labelOf } from '../../workbook/label.ts';
import { readPlace, writePlace } from '../../workbook/place.ts';
import { type Found, findCells, piecesOf, type Quest, withReplaced } from './find-cells.ts';
import './find.css';

/** How the panel was asked for; every time anew, so that the field takes the focus again. */
export interface FindWish {
  readonly wants: 'find' | 'replace' | 'place';
  readonly time: number;
}

const mostShown = 200;

/** Looks for words and formulas in all sheets, puts others in their place, and goes to a name or an address. */
export function FindPanel({
  session,
  state,
  wish,
  sheetId,
  onGo,
  onClose,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly wish: FindWish;
  /** The sheet on which a bare address lies. */
  readonly sheetId: string;
  readonly onGo: (sheetId: string, range: CellRange) => void;
  readonly onClose: () => void;
}) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const [quest, setQuest] = useState<Quest>({
    text: '',
    where: 'values',
    isCaseKept: false,
    isWholeCell: false,
  });
  const [by, setBy] = useState('');
  const [at, setAt] = useState<number | null>(null);
  const [news, setNews] = useState('');
  const [refusal, setRefusal] = useState('');
  const { workbook, values } = state;
  const asked = useDeferredValue(quest);
  const found = useMemo(() => findCells(workbook, values, asked), [workbook, values, asked]);
  const place = readPlace(workbook, sheetId, quest.text);
  const current = at === null ? undefined : found[at];
  const retypable = found.filter((one) => one.typed !== null);

  useEffect(() => {
    if (wish.time === 0) return;
    field.current?.focus();
    field.current?.select();
  }, [wish]);

  useEffect(() => {
    if (at !== null) list.current?.children[at]?.scrollIntoView({ block: 'nearest' });
  }, [at]);

  function change(next: Partial<Quest>): void {
    setQuest({ ...quest, ...next });
    setAt(null);
    setNews('');
    setRefusal('');
  }

  function step(by: 1 | -1): void {
    if (found.length === 0) return;
    show(at === null ? (by === 1 ? 0 : found.length - 1) : (at + by + found.length) % found.length);
  }

  function show(index: number): void {
    const one = found[index];
    if (!one) return;
    setAt(index);
    setNews('');
    onGo(one.sheetId, { from: one.address, to: one.address });
  }

  /** Whoever goes to a place wants to be there: what is typed next belongs to the cell. */
  function goTo({ sheet, range }: NamedRange): void {
    onGo(sheet, range);
    onClose();
  }

  function replace(some: readonly Found[]): void {
    const entries = some.flatMap(({ sheetId: sheet, address, typed }) =>
      typed === null ? [] : [{ sheet, address, typed: withReplaced(typed, quest, by) }],
    );
    const outcome = session.run({ type: 'retype', entries });
    setRefusal(outcome.ok ? '' : outcome.fault);
    if (!outcome.ok) return;
    const count = entries.length === 1 ? '1 cell was' : `${entries.length} cells were`;
    setNews(`${count} typed anew.`);
    // The next one moves up into the place of the one that no longer holds what is looked for.
    if (some.length > 1) setAt(null);
    // The button that was pressed may have nothing left to do, and would drop the focus.
    if (some.length === retypable.length) field.current?.focus();
  }

  function onKeyDown(event: KeyboardEvent<HTMLElement>): void {
    if (event.key === 'Escape') {
      event.preventDefault();
      onClose();
    } else if (event.key === 'Enter' && event.target === field.current) {
      event.preventDefault();
      if (place && (wish.wants === 'place' || found.length === 0)) goTo(place);
      else step(event.shiftKey ? -1 : 1);
    }
  }

  return (
    <search className="find" aria-label="Find and replace" onKeyDown={onKeyDown}>
      <div className="find-line">
        <label htmlFor={`${id}-text`}>Find, or go to</label>
        <input
          ref={field}
          id={`${id}-text`}
          type="search"
          value={quest.text}
          autoComplete="off"
          spellCheck={false}
          placeholder="words, a name, or a place such as B4"
          onChange={(event) => change({ text: event.target.value })}
        />
        <label>
          in{' '}
          <select
            value={quest.where}
            onChange={(event) => change({ where: event.target.value === 'formulas' ? 'formulas' : 'values' })}
          >
            <option value="values">what cells show</option>
            <option value="formulas">formulas</option>
          </select>
        </label>
        <button type="button" disabled={found.length === 0} onClick={() => step(-1)}>
          Back
        </button>
        <button type="button" disabled={found.length === 0} onClick={() => step(1)}>
          On
        </button>
        <button type="button" className="find-close" onClick={onClose}>
          Close <kbd>Esc</kbd>
        </button>
      </div>
      <div className="find-line">
        <label>
          <input
            type="checkbox"
            checked={quest.isCaseKept}
            onChange={(event) => change({ isCaseKept: event.target.checked })}
          />{' '}
          capitals count
        </label>
        <label>
          <input
            type="checkbox"
            checked={quest.isWholeCell}
            onChange={(event) => change({ isWholeCell: event.target.checked })}
          />{' '}
          the whole cell
        </label>
        {state.isReadOnly ? null : (
          <>
            <label htmlFor={`${id}-by`}>Put in its place</label>
            <input
              id={`${id}-by`}
              value={by}
              autoComplete="off"
              spellCheck={false}
              onChange={(event) => setBy(event.target.value)}
            />
            <button
              type="button"
              disabled={current === undefined || current.typed === null}
              onClick={() => current && replace([current])}
            >
              In this cell
            </button>
            <button type="button" disabled={retypable.length === 0} onClick={() => replace(retypable)}>
              In all {retypable.length > 0 ? retypable.length : ''}
            </button>
          </>
        )}
      </div>
      <p className="find-count" role="status">
        {[news, quest.text === '' ? '' : countWords(found.length, at, place !== null)]
          .filter(Boolean)
          .join(' ')}
      </p>
      <p className="find-refusal" role="alert">
        {refusal}
      </p>
      {place ? (
        <button type="button" className="find-place" onClick={() => goTo(place)}>
          Go to {writePlace(workbook, place)}
        </button>
      ) : null}
      {found.length > 0 ? (
        <ul className="find-list" ref={list} aria-label="Cells found">
          {found.slice(0, mostShown).map((one, index) => (
            <li key={`${one.sheetId} ${writeAddress(one.address)}`}>
              <FoundRow
                one={one}
                state={state}
                quest={asked}
                isCurrent={index === at}
                onChoose={() => show(index)}
              />
            </li>
          ))}
          {found.length > mostShown ? <li>And {found.length - mostShown} more: step on to them.</li> : null}
        </ul>
      ) : null}
    </search>
  );
}

function FoundRow({
  one,
  state,
  quest,
  isCurrent,
  onChoose,
}: {
  readonly one: Found;
  readonly state: SessionState;
  readonly quest: Quest;
  readonly isCurrent: boolean;
  readonly onChoose: () => void;
}) {
  const sheet = sheetWithId(state.workbook, one.sheetId);
  return (
    <button
      type="button"
      className="find-one"
      aria-current={isCurrent ? 'true' : undefined}
      onClick={onChoose}
    >
      <span className="find-where">{placeWords(sheet?.name ?? '', one.address)}</span>{' '}
      <span className="find-label">{sheet ? labelOf(sheet, one.address, state.values) : ''}</span>{' '}
      <span className={quest.where === 'formulas' ? 'find-text find-formula' : 'find-text'}>
        {piecesOf(one.text, quest).map((piece, index) =>
          // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a text have nothing but their order
          index % 2 === 1 ? <mark key={index}>{piece}</mark> : piece,
        )}
      </span>
    </button>
  );
}

function placeWords(sheet: string, address: CellAddress): string {
  return `${sheet}!${writeAddress(address)}`;
}

/** A place is shown by its own button; that no cell holds its letters would read as if it were not there. */
function countWords(count: number, at: number | null, isPlace: boolean): string {
  if (count === 0) return isPlace ? '' : 'No cell holds that, and it is no name or place in this workbook.';
  const cells = count === 1 ? '1 cell' : `${count} cells`;
  return at === null ? `${cells} found` : `${Math.min(at, count - 1) + 1} of ${cells}`;
}
