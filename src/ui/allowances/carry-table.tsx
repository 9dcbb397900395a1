import { useMemo, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { carryDifference, hasPlace } from '../../templates/allowances/carry.ts';
import { type AllowanceComparison, compareAllowances } from '../../templates/allowances/compare.ts';
import { type AllowanceCell, allowanceRows, singles } from '../../templates/allowances/rows.ts';
import { wordCarryFault } from '../../templates/allowances/wording.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';

/** The lines that another workbook has otherwise or has besides, each with a tick, and the deed that brings them in. */
export function CarryTable({
  mine,
  theirs,
  session,
  isReadOnly,
  onSay,
}: {
  readonly mine: KeptWorkbook;
  readonly theirs: KeptWorkbook;
  readonly session: Session;
  readonly isReadOnly: boolean;
  readonly onSay: (sentence: string) => void;
}) {
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [refusals, setRefusals] = useState<readonly string[]>([]);
  const compared = useMemo(
    () =>
      compareAllowances(
        allowanceRows(mine.workbook, mine.values),
        allowanceRows(theirs.workbook, theirs.values),
      ),
    [mine.workbook, mine.values, theirs],
  );
  const fresh = compared.filter(({ is, columns }) => is === 'only_there' && columns.length > 0);
  const homeless = fresh.filter((line) => !hasPlace(mine.workbook, line));
  const lines = [
    ...compared.filter(({ is }) => is === 'differs'),
    ...fresh.filter((line) => hasPlace(mine.workbook, line)),
  ];
  const chosen = lines.filter(({ id }) => ticked.has(id));
  const { title } = theirs.workbook;

  function bringIn(): void {
    const made = carryDifference(mine, theirs, new Set(chosen.map(({ id }) => id)));
    if (!made.ok) {
      setRefusals(made.fault.map(wordCarryFault));
      onSay('Nothing was brought in.');
      return;
    }
    const from = title.startsWith('Allowances of ') ? title.slice('Allowances of '.length) : title;
    const carried = session.carry(made.value, `allowances from ${from}`);
    setRefusals(carried.ok ? [] : [carried.fault]);
    if (!carried.ok) {
      onSay('Nothing was brought in.');
      return;
    }
    onSay(
      `${rows(chosen.length)} brought in from ${title}. Undo takes ${chosen.length === 1 ? 'it' : 'them'} back.`,
    );
    setTicked(new Set());
  }

  function tick(id: string): void {
    const next = new Set(ticked);
    if (!next.delete(id)) next.add(id);
    setTicked(next);
  }

  if (lines.length === 0) {
    return (
      <>
        <p>{wordSame(compared, title)}</p>
        <Homeless lines={homeless} />
      </>
    );
  }
  const areAll = chosen.length === lines.length;
  return (
    <>
      <div className="carry-scroll">
        <table className="carry-table">
          <caption>
            {title}: {rows(lines.length)} other than here or new <small>{wordOthers(compared)}</small>
          </caption>
          <thead>
            <tr>
              {isReadOnly ? null : (
                <th scope="col">
                  <input
                    type="checkbox"
                    aria-label="Tick every row"
                    checked={areAll}
                    ref={(box) => {
                      if (box) box.indeterminate = chosen.length > 0 && !areAll;
                    }}
                    onChange={() => setTicked(new Set(areAll ? [] : lines.map(({ id }) => id)))}
                  />
                </th>
              )}
              <th scope="col">Line</th>
              <th scope="col">Column</th>
              <th scope="col">Here</th>
              <th scope="col">There</th>
            </tr>
          </thead>
          {lines.map((line) => (
            <Line
              key={line.id}
              line={line}
              isTicked={ticked.has(line.id)}
              onTick={isReadOnly ? null : () => tick(line.id)}
            />
          ))}
        </table>
      </div>
      <Homeless lines={homeless} />
      {isReadOnly ? (
        <p>This workbook can only be read here, so nothing can be brought in.</p>
      ) : (
        <button type="button" className="carry-main" disabled={chosen.length === 0} onClick={bringIn}>
          {chosen.length === 0 ? 'Tick the rows to bring in' : `Bring in the ${ticks(chosen.length)}`}
        </button>
      )}
      {refusals.length > 0 ? (
        <ul className="carry-refusals" role="alert">
          {refusals.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
    </>
  );
}

/** What the other workbook has besides and nothing here would read. */
function Homeless({ lines }: { readonly lines: readonly AllowanceComparison[] }) {
  if (lines.length === 0) return null;
  return (
    <details className="carry-homeless">
      <summary>
        {rows(lines.length)} there {lines.length === 1 ? 'has' : 'have'} no place here
      </summary>
      <p>
        No cell or block of Allowances has their name, so no formula here would read them:{' '}
        {lines
          .map(({ label, columns }) => `${label} ${columns.at(-1)?.theirs?.shows ?? ''}`.trim())
          .join('; ')}
        .
      </p>
    </details>
  );
}

function Line({
  line,
  isTicked,
  onTick,
}: {
  readonly line: AllowanceComparison;
  readonly isTicked: boolean;
  readonly onTick: (() => void) | null;
}) {
  const { label, table, is } = line;
  // A new line has its name at its head already.
  const [first, ...others] = line.columns;
  const columns =
    is === 'only_there' && first?.theirs?.shows === label && others.length > 0 ? others : line.columns;
  const span = Math.max(1, columns.length);
  const where = table === singles ? 'single allowance' : table;
  return (
    <tbody className={isTicked ? 'carry-ticked' : undefined}>
      {(columns.length > 0 ? columns : [null]).map((column, at) => (
        <tr key={column?.heading ?? ''}>
          {at > 0 ? null : (
            <>
              {onTick ? (
                <td rowSpan={span}>
                  <input
                    type="checkbox"
                    aria-label={`Bring in ${label}, ${where}`}
                    checked={isTicked}
                    onChange={onTick}
                  />
                </td>
              ) : null}
              <th scope="rowgroup" rowSpan={span}>
                {label}
                <small>
                  {where}
                  {is === 'only_there' ? ' · new here' : ''}
                </small>
              </th>
            </>
          )}
          <td>{column?.heading ?? ''}</td>
          <td>{is === 'only_there' ? '–' : shown(column?.mine)}</td>
          <td className="carry-there">{shown(column?.theirs)}</td>
        </tr>
      ))}
    </tbody>
  );
}

function shown(cell: AllowanceCell | null | undefined): string {
  return cell?.shows || 'blank';
}

function rows(count: number): string {
  return `${count} ${count === 1 ? 'row' : 'rows'}`;
}

function ticks(count: number): string {
  return count === 1 ? 'ticked row' : `${count} ticked rows`;
}

function wordSame(compared: readonly AllowanceComparison[], title: string): string {
  const same = compared.filter(({ is }) => is === 'same').length;
  if (same === 0) return `${title} and this workbook have no allowance with the same name.`;
  return `Nothing in ${title} to bring in: ${rows(same)} the same. ${wordOthers(compared)}`.trim();
}

function wordOthers(compared: readonly AllowanceComparison[]): string {
  const only = compared.filter(({ is }) => is === 'only_here').length;
  return only === 0
    ? ''
    : `${rows(only)} ${only === 1 ? 'is' : 'are'} only here and ${only === 1 ? 'stays' : 'stay'}.`;
}
