import { useMemo, useRef, useState } from 'react';
import { lotColumns } from '../../lots/columns.ts';
import { guessTargets, type LotTarget, lotsToBringIn, readLots } from '../../lots/csv-in.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import { wordLotFault } from '../../lots/wording.ts';
import { readCsv } from '../../workbook/csv.ts';
import { readText } from '../files/read-text.ts';
import type { LotDesk } from './lot-desk.ts';

interface ReadFile {
  readonly name: string;
  readonly heads: readonly { readonly key: string; readonly text: string }[];
  readonly rows: readonly (readonly string[])[];
}

const mostShown = 12;

/** Lots from a CSV file: where each column goes, what is wrong with any line, and only then all of them at once. */
export function LotsIn({
  desk,
  table,
  onSaid,
}: {
  readonly desk: LotDesk;
  readonly table: LotTable;
  readonly onSaid: (sentence: string) => void;
}) {
  const files = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<ReadFile | null>(null);
  const [targets, setTargets] = useState<readonly LotTarget[]>([]);
  const [isInstead, setInstead] = useState(false);
  const read = useMemo(
    () => (file ? readLots(table, file.rows, targets, isInstead) : null),
    [file, table, targets, isInstead],
  );
  const lots = read ? lotsToBringIn(read) : null;
  const faults = (read?.lines ?? []).flatMap(({ fileLine, faults: own }) =>
    own.map(({ column, fault }) => ({
      fileLine,
      head: file?.heads[column]?.text ?? '',
      sentence: wordLotFault(fault),
    })),
  );

  async function take(chosen: File): Promise<void> {
    const text = await readText(chosen);
    if (!text.ok) {
      onSaid(`${chosen.name} was not read. ${text.fault}`);
      return;
    }
    const [heads = [], ...rows] = readCsv(text.value);
    setFile({ name: chosen.name, heads: heads.map((text, at) => ({ key: `${at} ${text}`, text })), rows });
    setTargets(guessTargets(table, heads));
  }

  function bringIn(): void {
    if (!lots || !file) return;
    const outcome = desk.run({ type: 'bring_in', lots, instead: isInstead, file: file.name });
    onSaid(outcome.ok ? `${lots.length} lots came in from ${file.name}.` : outcome.fault);
    if (outcome.ok) setFile(null);
  }

  return (
    <details className="lots-part">
      <summary>Lots from a CSV file</summary>
      <p className="lots-note">
        The first line names the columns. Nothing is written before every line is right.
      </p>
      <div className="lots-deeds">
        <button type="button" disabled={table.types.length === 0} onClick={() => files.current?.click()}>
          Choose a CSV file
        </button>
        <input
          ref={files}
          type="file"
          accept=".csv,.txt,text/csv"
          aria-label="CSV file of lots"
          hidden
          onChange={(event) => {
            const [chosen] = event.target.files ?? [];
            event.target.value = '';
            if (chosen) take(chosen);
          }}
        />
      </div>
      {file && read ? (
        <>
          <div className="lots-preview">
            <table className="lots-list">
              <caption className="visually-hidden">What {file.name} would bring in</caption>
              <thead>
                <tr>
                  <th scope="col">Line</th>
                  {file.heads.map(({ key, text }, column) => (
                    <th key={key} scope="col">
                      {text || 'no heading'}
                      <TargetChoice
                        label={`Where the column ${text || 'without a heading'} goes`}
                        table={table}
                        target={targets[column] ?? { to: 'nowhere' }}
                        onChoose={(target) => setTargets(targets.with(column, target))}
                      />
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {read.lines.slice(0, mostShown).map(({ fileLine, texts, faults: own }) => (
                  <tr key={fileLine}>
                    <th scope="row">{fileLine}</th>
                    {file.heads.map(({ key }, column) => (
                      <td key={key} data-refused={own.some((one) => one.column === column) ? '' : undefined}>
                        {texts[column] ?? ''}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {faults.length > 0 ? (
            <ul className="lots-alarm" role="alert">
              {faults.slice(0, 60).map(({ fileLine, head, sentence }) => (
                <li key={`${fileLine} ${head} ${sentence}`}>
                  Line {fileLine}
                  {head === '' ? '' : `, ${head}`}: {sentence}
                </li>
              ))}
            </ul>
          ) : null}
          <div className="lots-deeds">
            <label>
              <input
                type="checkbox"
                checked={isInstead}
                onChange={(event) => setInstead(event.target.checked)}
              />{' '}
              In place of the lots that are here
            </label>
            <button type="button" className="lots-main" disabled={!lots} onClick={bringIn}>
              {lots
                ? `Bring in ${lots.length === 1 ? '1 lot' : `${lots.length} lots`}`
                : 'Not all is right yet'}
            </button>
            <button type="button" onClick={() => setFile(null)}>
              Leave it
            </button>
          </div>
        </>
      ) : null}
    </details>
  );
}

function TargetChoice({
  label,
  table,
  target,
  onChoose,
}: {
  readonly label: string;
  readonly table: LotTable;
  readonly target: LotTarget;
  readonly onChoose: (target: LotTarget) => void;
}) {
  const { options, givens } = lotColumns(table.types);
  const targets: readonly (readonly [string, LotTarget])[] = [
    ['leave it out', { to: 'nowhere' }],
    ['Lot', { to: 'name' }],
    ['House type', { to: 'type' }],
    ['Remark', { to: 'remark' }],
    ...options.map((name) => [name, { to: 'option', name }] as const),
    ...givens.map((label) => [label, { to: 'given', label }] as const),
  ];
  return (
    <select
      aria-label={label}
      value={JSON.stringify(target)}
      onChange={(event) => {
        const chosen = targets.find(([, one]) => JSON.stringify(one) === event.target.value);
        if (chosen) onChoose(chosen[1]);
      }}
    >
      {targets.map(([words, one]) => (
        <option key={words} value={JSON.stringify(one)}>
          {words}
        </option>
      ))}
    </select>
  );
}
