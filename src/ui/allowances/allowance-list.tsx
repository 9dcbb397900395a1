import type { CellAddress } from '../../base/address.ts';
import { writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import { allowanceBlocks, singleAllowances } from '../../templates/single-allowances.ts';
import type { Workbook } from '../../workbook/document.ts';
import { TryField } from './try-field.tsx';
import type { Trial } from './use-trial.ts';

/** Every allowance of the workbook: the tables, each a link to where it stands, and the single ones with their source. */
export function AllowanceList({
  session,
  workbook,
  trial,
  onGo,
}: {
  readonly session: Session;
  readonly workbook: Workbook;
  readonly trial: Trial;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const blocks = allowanceBlocks(workbook);
  const singles = singleAllowances(workbook);
  if (blocks.length === 0 && singles.length === 0) return null;
  return (
    <section aria-labelledby="allowances-all">
      <h2 id="allowances-all">All allowances</h2>
      {blocks.length === 0 ? null : (
        <ul className="allowances-blocks">
          {blocks.map(({ name, sheet, at, headings, rows }) => (
            <li key={name}>
              <button type="button" onClick={() => onGo(sheet, at)}>
                <strong>{name.replaceAll('_', ' ')}</strong> at {writeAddress(at)}
              </button>{' '}
              <small>
                {rows === 1 ? '1 row' : `${rows} rows`}: {headings.filter(Boolean).join(', ')}
              </small>
            </li>
          ))}
        </ul>
      )}
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
    </section>
  );
}
