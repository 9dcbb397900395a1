import { useRef, useState } from 'react';
import { sameAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { singleAllowances } from '../../templates/allowances/fields.ts';
import {
  allowanceLine,
  fieldsRepeating,
  type LineField,
  ownSource,
  sourceOf,
} from '../../templates/allowances/line.ts';
import type { CopiedLine } from '../../templates/allowances/tried.ts';
import type { WrapRow, WrapTable } from '../../templates/allowances/wraps.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { namedBlock } from '../../workbook/order.ts';
import { CopiedLineFields } from './copied-line.tsx';
import { TryField } from './try-field.tsx';
import type { Trial } from './use-trial.ts';

/** Single allowances that decide a stretch-out beside the wrap's own line. */
const besideTheWrap = ['lap', 'corners', 'wrap_waste'];

/** A wrap of the workbook, or one that is tried as a copy of it. */
export interface ChosenWrap {
  readonly wrap: WrapRow;
  readonly copy: CopiedLine | null;
}

/** One wrap, number by number, each with a field for what it might be. */
export function WrapFields({
  table,
  chosen: { wrap, copy },
  session,
  state: { workbook, isReadOnly },
  trial,
  onChoose,
}: {
  readonly table: WrapTable;
  readonly chosen: ChosenWrap;
  readonly session: Session;
  readonly state: SessionState;
  readonly trial: Trial;
  readonly onChoose: (row: number, copy: number | null) => void;
}) {
  const copyButton = useRef<HTMLButtonElement>(null);
  const [newest, setNewest] = useState<number | null>(null);
  const singles = singleAllowances(workbook).filter(({ name }) => besideTheWrap.includes(name));
  const line = allowanceLine(workbook, { sheet: table.sheet.id, row: wrap.row });
  const own: readonly LineField[] = wrap.fields
    .slice(1)
    .filter(({ address }) => address.column !== line?.source?.column);
  const field = ({ heading, address, cell }: LineField) => (
    <TryField
      key={`${address.row} ${address.column}`}
      label={heading}
      place={{ sheet: table.sheet.id, address, copy: copy?.id ?? null }}
      cell={cell}
      session={session}
      trial={trial}
    />
  );
  const fields = [...own, ...(line ? fieldsRepeating(line) : [])].map(field);
  const optionOf = (row: number, id: number | null) => (id === null ? String(row) : `${row} ${id}`);
  return (
    <section className="allowances-wrap" aria-labelledby="allowances-wrap">
      <h2 id="allowances-wrap">Wrap</h2>
      <div className="allowances-choice">
        <label>
          <span className="visually-hidden">Which wrap</span>
          <select
            value={optionOf(wrap.row, copy?.id ?? null)}
            onChange={({ target }) => {
              const [row, id] = target.value.split(' ');
              onChoose(Number(row), id === undefined ? null : Number(id));
            }}
          >
            {table.wraps.map((one) => (
              <option key={one.row} value={optionOf(one.row, null)}>
                {one.name}
              </option>
            ))}
            {trial.copies
              .filter(({ of }) => of.sheet === table.sheet.id && isWrap(table, of.row))
              .map(({ id, of, name }) => (
                <option key={`copy ${id}`} value={optionOf(of.row, id)}>
                  {name.trim() || 'a copy without a name'} (tried)
                </option>
              ))}
          </select>
        </label>
        {line ? (
          <button
            type="button"
            ref={copyButton}
            disabled={isReadOnly}
            onClick={() => {
              const id = trial.copy(line);
              setNewest(id);
              onChoose(wrap.row, id);
            }}
          >
            Copy this wrap and change it
          </button>
        ) : null}
      </div>
      {copy ? (
        <CopiedLineFields
          key={copy.id}
          copy={copy}
          of={wrap.name}
          trial={trial}
          isNew={copy.id === newest}
          onLeftOut={() => {
            onChoose(wrap.row, null);
            copyButton.current?.focus();
          }}
        >
          {fields}
        </CopiedLineFields>
      ) : (
        <>
          <p className="allowances-source">
            Where its numbers come from: {line ? sourceOf(line) : ownSource}
          </p>
          {fields}
        </>
      )}
      {singles.map(({ name: key, label, sheet, address, cell, source: from }) => (
        <TryField
          key={key}
          label={label}
          source={from || ownSource}
          place={{ sheet, address, copy: null }}
          cell={cell}
          session={session}
          trial={trial}
        />
      ))}
      <JobWrap
        workbook={workbook}
        name={copy ? copy.name.trim() : wrap.name}
        trial={trial}
        isReadOnly={isReadOnly}
      />
    </section>
  );
}

function isWrap({ wraps }: WrapTable, row: number): boolean {
  return wraps.some((one) => one.row === row);
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
  const block = namedBlock(workbook, 'job_wrap');
  const sheet = block ? sheetWithId(workbook, block.sheet) : undefined;
  if (!block || !sheet || !sameAddress(block.range.from, block.range.to)) return null;
  const { from } = block.range;
  const isOwn = cellAt(sheet, from)?.content === name;
  const place = { sheet: sheet.id, address: from, copy: null };
  return (
    <label className="allowances-use">
      <input
        type="checkbox"
        checked={isOwn || trial.typedAt(place) === name}
        disabled={isOwn || isReadOnly}
        onChange={({ target }) => trial.type(place, target.checked ? name : '')}
      />{' '}
      {isOwn ? 'This job is made with it' : 'Try it on this job'}
    </label>
  );
}
