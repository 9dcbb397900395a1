import { useId, useMemo, useState } from 'react';
import { columnName } from '../../base/address.ts';
import { limits } from '../../formula/limits.ts';
import type { WriteCommand } from '../../workbook/command/write.ts';
import type { Sheet } from '../../workbook/document.ts';
import { headingRowOf, mapByName, planImport } from '../../workbook/import.ts';
import { wordImportRefusal } from '../../workbook/import-wording.ts';
import { firstFreeLine, type Table, tablesOf } from '../../workbook/tables.ts';
import { ImportPreview } from './import-preview.tsx';

/** Nobody reads more at a time; the preview marks them all the same. */
const refusalsTold = 500;

export interface ReadFile {
  /** Another one each time that a file is chosen, be it the same file. */
  readonly serial: number;
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

/** Everything that the person decides about the lines of a file. */
interface Choices {
  /** Index among the tables of the sheet; null: plain cells under everything that stands there. */
  readonly table: number | null;
  /** The row of the file that names its columns; null where none does. */
  readonly headingRow: number | null;
  /** For each column of the table the field of the file, or null. */
  readonly fields: readonly (number | null)[];
  readonly begins: 'free' | 'first';
  readonly leavesRefused: boolean;
  /** What the file says nothing of is emptied in the lines that stand there. */
  readonly empties: boolean;
}

/** Where the lines of a file go on a sheet, with the preview of what comes of it. */
export function ImportDesk({
  read,
  sheet,
  onWrite,
}: {
  readonly read: ReadFile;
  readonly sheet: Sheet;
  readonly onWrite: (command: WriteCommand) => void;
}) {
  const { rows } = read;
  const id = useId();
  const tables = useMemo(() => tablesOf(sheet), [sheet]);
  const [choices, setChoices] = useState(() => chosenFor(bestTable(tables, rows), tables, sheet, rows));
  const table = tableOf(choices.table, tables, sheet, rows);
  const width = widthOf(rows);

  const plan = useMemo(() => {
    const filled = firstFreeLine(sheet, table);
    const isOver = choices.begins === 'first' && choices.table !== null;
    const skipped = isOver ? 0 : filled;
    const columns = table.columns.map(({ column }) => column);
    return planImport(sheet, {
      ...(isOver ? { over: { columns, lines: filled, empties: choices.empties } } : {}),
      file: read.name,
      rows,
      firstFileRow: choices.headingRow === null ? 0 : choices.headingRow + 1,
      mapping: table.columns.flatMap((column, at) => {
        const field = choices.fields[at];
        return typeof field === 'number' ? [{ column, field }] : [];
      }),
      firstRow: table.firstRow + skipped,
      room: Math.max(0, table.room - skipped),
      leavesRefused: choices.leavesRefused,
    });
  }, [sheet, table, rows, read.name, choices]);

  const { refusals, command } = plan;
  const isHeldUp = command === null || (refusals.length > 0 && !choices.leavesRefused);
  const fieldNames = Array.from({ length: width }, (_, field) => fieldName(rows, choices.headingRow, field));

  function headRow(headingRow: number | null): void {
    const fields =
      choices.table === null || headingRow === null
        ? choices.fields
        : mapByName(table.columns, rows[headingRow] ?? []);
    setChoices({ ...choices, headingRow, fields });
  }

  return (
    <div className="files-import">
      <div className="files-asks">
        <label htmlFor={`${id}-table`}>
          Where to
          <select
            id={`${id}-table`}
            value={choices.table ?? 'plain'}
            onChange={({ target }) => {
              const next = target.value === 'plain' ? null : Number(target.value);
              setChoices(chosenFor(next, tables, sheet, rows));
            }}
          >
            {tables.map(({ headingRow, columns, room }, at) => (
              <option key={headingRow} value={at}>
                {tableWords(headingRow, columns, room)}
              </option>
            ))}
            <option value="plain">plain cells from row {plainRow(sheet) + 1} on</option>
          </select>
        </label>
        <label htmlFor={`${id}-heading`}>
          What names the columns of the file
          <select
            id={`${id}-heading`}
            value={choices.headingRow ?? 'none'}
            onChange={({ target }) => headRow(target.value === 'none' ? null : Number(target.value))}
          >
            <option value="none">nothing: every line is brought in</option>
            {rows.slice(0, 20).map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the lines of the file do not move
              <option key={at} value={at}>
                line {at + 1}: {shortened(row.join(', '))}
              </option>
            ))}
          </select>
        </label>
        {choices.table === null ? null : (
          <label htmlFor={`${id}-begins`}>
            Beginning at
            <select
              id={`${id}-begins`}
              value={choices.begins}
              onChange={({ target }) =>
                setChoices({ ...choices, begins: target.value === 'first' ? 'first' : 'free' })
              }
            >
              <option value="free">the first line that is free</option>
              <option value="first">the first line, over what stands there</option>
            </select>
          </label>
        )}
      </div>
      <ImportPreview
        table={table}
        fields={choices.fields}
        fieldNames={fieldNames}
        plan={plan}
        onField={(at, field) =>
          setChoices({ ...choices, fields: choices.fields.map((one, place) => (place === at ? field : one)) })
        }
      />
      {plan.others === 0 ? null : (
        <label className="files-leave">
          <input
            type="checkbox"
            checked={choices.empties}
            onChange={({ target }) => setChoices({ ...choices, empties: target.checked })}
          />
          Empty {plan.others === 1 ? 'the 1 cell' : `the ${plan.others} cells`} of the lines that stand there
          which the file says nothing of; otherwise {plan.others === 1 ? 'it stays' : 'they stay'} beside the
          new ones
        </label>
      )}
      {refusals.length === 0 ? null : (
        <div className="files-refusals">
          <p>
            <span aria-hidden="true">✕</span> {counted(refusals.length, 'refusal')}
          </p>
          <ul>
            {refusals.slice(0, refusalsTold).map((refusal) => {
              const words = wordImportRefusal(refusal);
              return <li key={words}>{words}</li>;
            })}
            {refusals.length > refusalsTold ? (
              <li>And {counted(refusals.length - refusalsTold, 'more refusal')}: mend these first.</li>
            ) : null}
          </ul>
          <label className="files-leave">
            <input
              type="checkbox"
              checked={choices.leavesRefused}
              onChange={({ target }) => setChoices({ ...choices, leavesRefused: target.checked })}
            />
            Leave these lines out and bring in the others
          </label>
        </div>
      )}
      <p role="status">{outcomeWords(plan, isHeldUp)}</p>
      <button
        type="button"
        className="files-main"
        aria-disabled={isHeldUp}
        onClick={isHeldUp || !command ? undefined : () => onWrite(command)}
      >
        Bring in {counted(broughtIn(plan), 'line')}
      </button>
    </div>
  );
}

/** The table whose columns the file names best; null where none is named and the sheet has no table. */
function bestTable(tables: readonly Table[], rows: ReadFile['rows']): number | null {
  const hits = tables.map(({ columns }) => {
    const row = headingRowOf(columns, rows);
    return row === null ? 0 : mapByName(columns, rows[row] ?? []).filter((field) => field !== null).length;
  });
  return tables.length === 0 ? null : hits.indexOf(Math.max(...hits));
}

function chosenFor(
  at: number | null,
  tables: readonly Table[],
  sheet: Sheet,
  rows: ReadFile['rows'],
): Choices {
  const { columns } = tableOf(at, tables, sheet, rows);
  const headingRow = at === null ? null : headingRowOf(columns, rows);
  const fields =
    at === null
      ? columns.map((_, field) => field)
      : mapByName(columns, headingRow === null ? [] : (rows[headingRow] ?? []));
  return { table: at, headingRow, fields, begins: 'free', leavesRefused: false, empties: false };
}

/** The chosen table, or the plain cells under everything that stands on the sheet. */
function tableOf(at: number | null, tables: readonly Table[], sheet: Sheet, rows: ReadFile['rows']): Table {
  const chosen = at === null ? undefined : tables[at];
  if (chosen) return chosen;
  const firstRow = plainRow(sheet);
  const width = Math.min(widthOf(rows), limits.columns);
  return {
    headingRow: firstRow,
    columns: Array.from({ length: width }, (_, column) => ({ column, name: columnName(column) })),
    firstRow,
    room: limits.rows - firstRow,
  };
}

/** A row is left free under what stands there already. */
function plainRow(sheet: Sheet): number {
  const last = sheet.rows.findLastIndex((row) => row.some((cell) => cell !== null));
  return last < 0 ? 0 : last + 2;
}

function widthOf(rows: ReadFile['rows']): number {
  return rows.reduce((most, row) => Math.max(most, row.length), 0);
}

function tableWords(headingRow: number, columns: Table['columns'], room: number): string {
  const names = shortened(columns.map(({ name }) => name).join(', '));
  const lines = room > 9999 ? '' : `, ${counted(room, 'line')}`;
  return `the table at row ${headingRow + 1}: ${names}${lines}`;
}

function fieldName(rows: ReadFile['rows'], headingRow: number | null, field: number): string {
  const named = headingRow === null ? '' : (rows[headingRow]?.[field] ?? '').trim();
  return named === '' ? `field ${field + 1}` : shortened(named);
}

function outcomeWords(
  { lines, refusals, command }: ReturnType<typeof planImport>,
  isHeldUp: boolean,
): string {
  if (lines.length === 0)
    return 'No line goes in: choose for at least one column which field of the file it takes.';
  if (command === null) return 'No line is left to bring in.';
  if (isHeldUp)
    return 'Nothing is brought in while a line is refused: mend the file, or leave these lines out.';
  const left = refusals.length > 0 ? ' The refused ones stay out.' : '';
  return `${counted(broughtIn({ lines }), 'line')} will be brought in as one deed that Undo takes back.${left} An empty field leaves its cell as it is, unless it is to be emptied.`;
}

function broughtIn({ lines }: Pick<ReturnType<typeof planImport>, 'lines'>): number {
  return lines.filter(({ row }) => row !== null).length;
}

function counted(count: number, word: string): string {
  return `${count.toLocaleString('en-US')} ${word}${count === 1 ? '' : 's'}`;
}

function shortened(text: string): string {
  return text.length > 48 ? `${text.slice(0, 47)}…` : text;
}
