import { useMemo } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { writeAddress } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { allowanceBlocks, singleAllowances } from '../../templates/allowances/fields.ts';
import { groupedSingles } from '../../templates/allowances/groups.ts';
import { allowanceLine, type LineField } from '../../templates/allowances/line.ts';
import { LineRow } from './line-row.tsx';
import type { Trial } from './use-trial.ts';

/** Every allowance of the workbook, each with a field for what it might be and where it comes from: those that stand alone,
 *  and the tables row by row. */
export function AllowanceList({
  session,
  state,
  trial,
  onGo,
}: {
  readonly session: Session;
  readonly state: SessionState;
  readonly trial: Trial;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const { workbook, values } = state;
  const blocks = useMemo(() => allowanceBlocks(workbook, values), [workbook, values]);
  const singles = useMemo(() => singleAllowances(workbook), [workbook]);
  const lines = useMemo(() => {
    const rows = [
      ...blocks.flatMap(({ sheet, rows: own }) => own.map(({ row }) => ({ sheet, row }))),
      ...singles.map(({ sheet, address: { row } }) => ({ sheet, row })),
    ];
    return new Map(rows.map((place) => [place.row, allowanceLine(workbook, place)]));
  }, [workbook, blocks, singles]);
  if (blocks.length === 0 && singles.length === 0) return null;
  const rowOf = (row: number, fields: readonly LineField[]) => {
    const line = lines.get(row);
    if (!line) return null;
    const own = fields.filter(({ address }) => address.column !== line.source?.column);
    return <LineRow key={row} line={line} fields={own} session={session} state={state} trial={trial} />;
  };
  return (
    <section aria-labelledby="allowances-all">
      <h2 id="allowances-all">All allowances</h2>
      <p className="allowances-source">
        Under each stands where it comes from{singles.length > 0 ? ', and its name in formulas' : ''}.
      </p>
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
          <div className="allowances-lines">{rows.map(({ row, fields }) => rowOf(row, fields))}</div>
        </details>
      ))}
      {groupedSingles(singles).map(({ group, singles: own }) => (
        <details key={group} open className="allowances-block">
          <summary>
            {group} <span>{own.length === 1 ? '1 single allowance' : `${own.length} single allowances`}</span>
          </summary>
          <div className="allowances-lines">
            {own.map(({ address, cell }) => rowOf(address.row, [{ heading: 'Figure', address, cell }]))}
          </div>
        </details>
      ))}
    </section>
  );
}
