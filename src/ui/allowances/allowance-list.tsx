import type { CellAddress } from '../../base/address.ts';
import { writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { allowanceBlocks, singleAllowances } from '../../templates/allowances/fields.ts';
import { TryField } from './try-field.tsx';
import type { Trial } from './use-trial.ts';

/** Every allowance of the workbook, each with a field for what it might be: the single ones with their source, and the
 *  tables row by row. */
export function AllowanceList({
  session,
  state: { workbook, values },
  trial,
  onGo,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly trial: Trial;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const blocks = allowanceBlocks(workbook, values);
  const singles = singleAllowances(workbook);
  if (blocks.length === 0 && singles.length === 0) return null;
  return (
    <section aria-labelledby="allowances-all">
      <h2 id="allowances-all">All allowances</h2>
      <div className="allowances-singles">
        {singles.map(({ name, label, source, sheet, address, cell }) => (
          <TryField
            key={name}
            label={label}
            source={source || 'this shop'}
            sheet={sheet}
            address={address}
            cell={cell}
            session={session}
            trial={trial}
          />
        ))}
      </div>
      {blocks.map(({ name, sheet, at, headings, rows }) => (
        <details key={name} className="allowances-block">
          <summary>
            {name.replaceAll('_', ' ')}{' '}
            <span>
              {rows.length === 1 ? '1 row' : `${rows.length} rows`}: {headings.filter(Boolean).join(', ')}
            </span>
          </summary>
          <button type="button" onClick={() => onGo(sheet, at)}>
            Go to {writeAddress(at)} on the sheet
          </button>
          <div className="allowances-singles">
            {rows.flatMap(({ row, label, fields }) =>
              fields.map(({ heading, address, cell }) => (
                <TryField
                  key={`${row} ${address.column}`}
                  label={fields.length === 1 ? label : `${label}, ${heading.toLowerCase()}`}
                  sheet={sheet}
                  address={address}
                  cell={cell}
                  session={session}
                  trial={trial}
                />
              )),
            )}
          </div>
        </details>
      ))}
    </section>
  );
}
