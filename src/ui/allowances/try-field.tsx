import { useId } from 'react';
import type { Session } from '../../session/session.ts';
import type { TriedPlace } from '../../templates/allowances/tried.ts';
import type { Cell } from '../../workbook/document.ts';
import { showValue } from '../../workbook/show.ts';
import type { Trial } from './use-trial.ts';

/** One number of the shop: what it is now, and a field for what it might be. */
export function TryField({
  label,
  source,
  place,
  cell,
  session,
  trial,
}: {
  readonly label: string;
  readonly source?: string;
  readonly place: TriedPlace;
  readonly cell: Cell;
  readonly session: Session;
  readonly trial: Trial;
}) {
  const id = useId();
  const typed = trial.typedAt(place);
  const read = typed === null ? null : session.preview(place.sheet, place.address, typed);
  const { text } = showValue(typeof cell.content === 'object' ? null : cell.content, cell.unit, cell.format);
  const isRead = session.getState().isReadOnly;
  return (
    <div className="try-field" data-tried={typed === null ? undefined : ''}>
      <label htmlFor={id}>{label}</label>
      <span className="try-field-now">{text || 'blank'}</span>
      {cell.question?.choices ? (
        <select
          id={id}
          value={typed ?? ''}
          disabled={isRead}
          onChange={({ target }) => trial.type(place, target.value)}
        >
          <option value="">as it is</option>
          {cell.question.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          value={typed ?? ''}
          disabled={isRead}
          placeholder="as it is"
          autoComplete="off"
          aria-invalid={read !== null && !read.ok}
          aria-describedby={`${id}-said`}
          onChange={({ target }) => trial.type(place, target.value)}
        />
      )}
      <small id={`${id}-said`} className={read && !read.ok ? 'try-field-fault' : undefined}>
        {read === null ? (source ?? '') : read.ok ? `reads ${read.value}` : read.fault}
      </small>
    </div>
  );
}
