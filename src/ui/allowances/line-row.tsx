import { useRef, useState } from 'react';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import {
  type AllowanceLine,
  calledAt,
  fieldsRepeating,
  type LineField,
  leadingLine,
  sourceOf,
} from '../../templates/allowances/line.ts';
import { CopiedLineFields } from './copied-line.tsx';
import { LineDeeds } from './line-deeds.tsx';
import { TryField } from './try-field.tsx';
import type { Trial } from './use-trial.ts';

/** One allowance: its figures, where they come from, and what is tried as a copy of it. */
export function LineRow({
  line,
  fields,
  session,
  state: { workbook, isReadOnly },
  trial,
}: {
  readonly line: AllowanceLine;
  /** What can be filled in of it, beside its name and its source. */
  readonly fields: readonly LineField[];
  readonly session: Session;
  readonly state: SessionState;
  readonly trial: Trial;
}) {
  const copyButton = useRef<HTMLButtonElement>(null);
  const [newest, setNewest] = useState<number | null>(null);
  const { sheet, row } = line;
  const label = calledAt(line);
  const leading = leadingLine(workbook, line);
  const copies = trial.copies.filter(({ of }) => of.sheet === sheet.id && of.row === row);
  const isOne = fields.length === 1;
  const fieldsOf = (copy: number | null, own: readonly LineField[]) =>
    own.map(({ heading, address, cell }) => (
      <TryField
        key={`${address.row} ${address.column}`}
        label={copy !== null || !isOne ? heading : label}
        place={{ sheet: sheet.id, address, copy }}
        cell={cell}
        session={session}
        trial={trial}
      />
    ));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame round every row
    <div
      role="group"
      className="allowance-line"
      aria-label={label}
      data-taken={trial.isTaken({ sheet: sheet.id, row }) ? '' : undefined}
    >
      {isOne ? null : <h3>{label}</h3>}
      {fieldsOf(null, fields)}
      <p className="allowance-line-note">
        <span>
          {sourceOf(line)}
          {line.name === null ? null : (
            <>
              {' '}
              · <span className="visually-hidden">in formulas </span>
              <code>{line.name}</code>
            </>
          )}
        </span>
        {leading === line ? (
          <LineDeeds
            line={line}
            trial={trial}
            isReadOnly={isReadOnly}
            copyButton={copyButton}
            onCopied={setNewest}
          />
        ) : (
          <span>has its name from {leading.table?.name ?? 'another row'}: copied along with it</span>
        )}
      </p>
      {copies.map((copy) => (
        <CopiedLineFields
          key={copy.id}
          copy={copy}
          of={label}
          trial={trial}
          isNew={copy.id === newest}
          onLeftOut={() => copyButton.current?.focus()}
        >
          {fieldsOf(copy.id, [...fields, ...fieldsRepeating(line)])}
        </CopiedLineFields>
      ))}
    </div>
  );
}
