import { sameAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { singleAllowances } from '../../templates/allowances/fields.ts';
import type { WrapRow, WrapTable } from '../../templates/allowances/wraps.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { namedBlock } from '../../workbook/order.ts';
import { TryField } from './try-field.tsx';
import type { Trial } from './use-trial.ts';

/** Single allowances that decide a stretch-out beside the wrap's own line. */
const besideTheWrap = ['lap', 'corners', 'wrap_waste'];

/** One wrap, number by number, each with a field for what it might be. */
export function WrapFields({
  table,
  wrap,
  now,
  session,
  state: { workbook, isReadOnly },
  trial,
  onWrap,
}: {
  readonly table: WrapTable;
  readonly wrap: WrapRow;
  /** The line as the workbook has it; of a copy, the line that it is of. */
  readonly now: WrapRow;
  readonly session: Session;
  readonly state: SessionState;
  readonly trial: Trial;
  readonly onWrap: (name: string) => void;
}) {
  const singles = singleAllowances(workbook).filter(({ name }) => besideTheWrap.includes(name));
  const [name, ...numbers] = wrap.fields;
  const source = numbers.find(({ heading }) => /source|comes from/i.test(heading));
  const fields = numbers.filter((field) => field !== source);
  const cellNow = (heading: string) => now.fields.find((one) => one.heading === heading)?.cell ?? null;
  return (
    <section className="allowances-wrap" aria-labelledby="allowances-wrap">
      <h2 id="allowances-wrap">Wrap</h2>
      <div className="allowances-choice">
        <label>
          <span className="visually-hidden">Which wrap</span>
          <select value={wrap.name} onChange={({ target }) => onWrap(target.value)}>
            {table.wraps.map((one) => (
              <option key={one.row} value={one.name}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={isReadOnly} onClick={() => onWrap(trial.copy(table, wrap))}>
          Copy this wrap and change it
        </button>
      </div>
      <p className="allowances-source">{sourceWords(source?.cell.content)}</p>
      {fields.map(({ heading, address, cell }) => (
        <TryField
          key={heading}
          label={heading}
          sheet={table.sheet.id}
          address={address}
          cell={cellNow(heading) ?? cell}
          session={session}
          trial={trial}
        />
      ))}
      {singles.map(({ name: key, label, sheet, address, cell, source: from }) => (
        <TryField
          key={key}
          label={label}
          source={from}
          sheet={sheet}
          address={address}
          cell={cell}
          session={session}
          trial={trial}
        />
      ))}
      <JobWrap
        workbook={workbook}
        name={String(name?.cell.content ?? wrap.name)}
        trial={trial}
        isReadOnly={isReadOnly}
      />
    </section>
  );
}

/** Whether this job is tried with the wrap. */
function JobWrap({
  workbook,
  name,
  trial,
  isReadOnly,
}: {
  readonly workbook: SessionState['workbook'];
  readonly name: string;
  readonly trial: Trial;
  readonly isReadOnly: boolean;
}) {
  const place = namedBlock(workbook, 'job_wrap');
  const sheet = place ? sheetWithId(workbook, place.sheet) : undefined;
  if (!place || !sheet || !sameAddress(place.range.from, place.range.to)) return null;
  const { from } = place.range;
  const isOwn = cellAt(sheet, from)?.content === name;
  return (
    <label className="allowances-use">
      <input
        type="checkbox"
        checked={isOwn || trial.typedAt(sheet.id, from) === name}
        disabled={isOwn || isReadOnly}
        onChange={({ target }) => trial.type(sheet.id, from, target.checked ? name : '')}
      />{' '}
      {isOwn ? 'This job is made with it' : 'Try it on this job'}
    </label>
  );
}

function sourceWords(content: unknown): string {
  return typeof content === 'string' && content !== ''
    ? `Where its numbers come from: ${content}`
    : 'This shop’s own numbers';
}
