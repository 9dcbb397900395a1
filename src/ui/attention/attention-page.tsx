import { useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { writeAddress } from '../../base/address.ts';
import type { SessionState } from '../../session/state.ts';
import { labelOf } from '../../workbook/label.ts';
import type { Concern } from '../../workbook/standing.ts';
import { useWaiting, type WaitingEntry, waitingSentence } from '../waiting/waiting-entries.ts';
import './attention.css';

const kinds = {
  waiting: { sign: '✎', says: 'Not taken', one: 'not taken' },
  stop: { sign: '✕', says: 'Stops', one: 'stop' },
  fill: { sign: '…', says: 'To fill', one: 'to fill' },
  look: { sign: '!', says: 'Looks', one: 'look' },
} as const satisfies Record<Want['kind'], { sign: string; says: string; one: string }>;

/** A concern of the sheet, or an entry that was not taken and waits in its cell. */
type Want = Omit<Concern, 'kind'> & { readonly kind: Concern['kind'] | 'waiting' };

const order = ['waiting', 'stop', 'fill', 'look'] as const;

/** What of all sheets wants a person's attention: what stops the work, what is to be filled in, what is worth a look.
 *  Each entry leads to its cell. */
export function AttentionPage({
  state,
  sheetId,
  onGo,
}: {
  readonly state: SessionState;
  /** The one sheet whose entries are asked for; null for all. */
  readonly sheetId: string | null;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const { workbook, standings, values } = state;
  const [onlySheet, setOnlySheet] = useState(sheetId);
  const [kept, setKept] = useState<readonly Want['kind'][]>(order);
  const { waiting } = useWaiting(workbook.id);
  const all = workbook.sheets.map((sheet) => ({
    sheet,
    concerns: [...waitingOn(waiting, sheet.id), ...(standings.get(sheet.id)?.concerns ?? [])],
  }));
  const wanted = all.filter(({ sheet }) => onlySheet === null || sheet.id === onlySheet);
  const count = (kind: Want['kind']) =>
    wanted.reduce((sum, { concerns }) => sum + concerns.filter((one) => one.kind === kind).length, 0);
  const shown = wanted
    .map(({ sheet, concerns }) => ({ sheet, concerns: concerns.filter((one) => kept.includes(one.kind)) }))
    .filter(({ concerns }) => concerns.length > 0);
  const total = shown.reduce((sum, { concerns }) => sum + concerns.length, 0);
  return (
    <section className="attention" aria-label="Needs attention">
      <div className="attention-choice">
        <label>
          Sheet{' '}
          <select value={onlySheet ?? ''} onChange={(event) => setOnlySheet(event.target.value || null)}>
            <option value="">all of them</option>
            {workbook.sheets.map((sheet) => (
              <option key={sheet.id} value={sheet.id}>
                {sheet.name}
              </option>
            ))}
          </select>
        </label>
        {order.map((kind) => (
          <label key={kind}>
            <input
              type="checkbox"
              checked={kept.includes(kind)}
              onChange={(event) =>
                setKept(event.target.checked ? [...kept, kind] : kept.filter((one) => one !== kind))
              }
            />{' '}
            {kinds[kind].says} ({count(kind)})
          </label>
        ))}
        <p role="status">{totalWords(total)}</p>
      </div>
      {shown.map(({ sheet, concerns }) => (
        <section key={sheet.id} aria-labelledby={`attention-${sheet.id}`}>
          <h2 id={`attention-${sheet.id}`}>{sheet.name}</h2>
          <ul>
            {order.flatMap((kind) =>
              concerns
                .filter((one) => one.kind === kind)
                .map(({ address, sentence }) => (
                  <li key={writeAddress(address)}>
                    <button
                      type="button"
                      className="attention-one"
                      data-kind={kind}
                      onClick={() => onGo(sheet.id, address)}
                    >
                      <span className="attention-kind">
                        <span aria-hidden="true">{kinds[kind].sign}</span> {kinds[kind].one}
                      </span>{' '}
                      <span className="attention-place">{writeAddress(address)}</span>{' '}
                      <span className="attention-label">{labelOf(sheet, address, values)}</span>{' '}
                      <span>{sentence}</span>
                    </button>
                  </li>
                )),
            )}
          </ul>
        </section>
      ))}
    </section>
  );
}

function waitingOn(waiting: readonly WaitingEntry[], sheetId: string): readonly Want[] {
  return waiting
    .filter((one) => one.sheetId === sheetId)
    .map((one) => ({ kind: 'waiting', address: one.address, sentence: waitingSentence(one) }));
}

function totalWords(total: number): string {
  if (total === 0) return 'Nothing here wants attention.';
  return total === 1 ? '1 cell wants attention' : `${total} cells want attention`;
}
