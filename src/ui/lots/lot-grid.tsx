import { type KeyboardEvent, useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { failed, type Outcome } from '../../base/outcome.ts';
import type { LotCommand } from '../../lots/commands.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import type { LotTotal } from '../../lots/totals.ts';
import { columnWidths } from './column-widths.ts';
import { canEdit, commandFor, type GridColumn, gridCell, headOf, unitUnder } from './grid-columns.ts';
import { stepFrom } from './grid-step.ts';
import type { FieldEnd } from './lot-field.tsx';
import { LotRow, type OpenField } from './lot-row.tsx';
import { TotalsRow } from './totals-row.tsx';
import './lot-grid.css';

const rowHeight = 34;
/** Rows drawn above and below those in sight. */
const spare = 8;

export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

/** The lots, one row each; only the rows in sight are drawn, so that five hundred are no slower than twelve. */
export function LotGrid({
  table,
  columns,
  outcomes,
  totals,
  here,
  isReadOnly,
  onHere,
  onRun,
}: {
  readonly table: LotTable;
  readonly columns: readonly GridColumn[];
  readonly outcomes: readonly (LotOutcome | null)[];
  readonly totals: readonly LotTotal[];
  readonly here: GridPlace;
  readonly isReadOnly: boolean;
  readonly onHere: (place: GridPlace) => void;
  readonly onRun: (command: LotCommand) => Outcome<null, string>;
}) {
  const scroller = useRef<HTMLDivElement>(null);
  const wantsFocus = useRef(false);
  const [scrolled, setScrolled] = useState({ top: 0, height: 600 });
  const [field, setField] = useState<OpenField | null>(null);
  const widths = useMemo(() => columnWidths(table, columns), [table, columns]);

  const first = Math.max(0, Math.floor(scrolled.top / rowHeight) - spare);
  const last = Math.min(table.rows.length, Math.ceil((scrolled.top + scrolled.height) / rowHeight) + spare);

  const go = useCallback(
    (place: GridPlace) => {
      wantsFocus.current = true;
      setField(null);
      onHere(place);
    },
    [onHere],
  );

  useLayoutEffect(() => {
    const box = scroller.current;
    if (!box || !wantsFocus.current || field) return;
    // The head and the totals lie over the rows.
    const top = here.row * rowHeight;
    const room = box.clientHeight - 3.5 * rowHeight;
    if (top < box.scrollTop) box.scrollTop = top;
    else if (top > box.scrollTop + room) box.scrollTop = top - room;
    const cell = box.querySelector<HTMLElement>(`[data-cell="${here.row} ${here.column}"]`);
    if (!cell) return; // drawn at the next turn, after the scrolling
    cell.focus({ preventScroll: false });
    wantsFocus.current = false;
  });

  const open = useCallback(
    (place: GridPlace, begun: string | null, isByPointer: boolean) => {
      const lot = table.rows[place.row];
      const column = columns[place.column];
      if (isReadOnly || !lot || !column) return;
      const cell = gridCell(table, lot, column, null);
      if (!canEdit(column, cell)) return;
      setField({ column: place.column, begun: cell.choices ? null : begun, isByPointer });
    },
    [table, columns, isReadOnly],
  );

  const press = useCallback(
    (row: number, column: number) => {
      const isThere = here.row === row && here.column === column;
      if (isThere && document.activeElement?.getAttribute('data-cell') === `${row} ${column}`) {
        open({ row, column }, null, true);
      } else go({ row, column });
    },
    [here, go, open],
  );

  const offer = useCallback(
    (row: number, index: number, typed: string): Outcome<null, string> => {
      const column = columns[index];
      const command = column ? commandFor(table, row, column, typed) : null;
      return command ? onRun(command) : failed('Nothing can be written here.');
    },
    [table, columns, onRun],
  );

  const close = useCallback(
    (end: FieldEnd) => {
      if (end === 'gone') return setField(null);
      const steps = { stay: [0, 0], down: [1, 0], right: [0, 1], left: [0, -1] } as const;
      const [down, right] = steps[end];
      go({
        row: Math.min(table.rows.length - 1, here.row + down),
        column: Math.min(columns.length - 1, Math.max(0, here.column + right)),
      });
    },
    [go, here, table.rows.length, columns.length],
  );

  function onKeyDown(event: KeyboardEvent): void {
    if (field || event.nativeEvent.isComposing) return;
    const size = { rows: table.rows.length, columns: columns.length };
    const page = Math.max(1, Math.floor(scrolled.height / rowHeight) - 4);
    const next = event.altKey ? null : stepFrom(here, event.key, event.ctrlKey || event.metaKey, size, page);
    const column = columns[here.column];
    if (next) go(next);
    else if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      const to = here.row + (event.key === 'ArrowUp' ? -1 : 1);
      if (!table.rows[to] || !onRun({ type: 'move_lot', from: here.row, to }).ok) return;
      go({ ...here, row: to });
    } else if (event.key === 'Enter' || event.key === 'F2') open(here, null, false);
    else if ((event.key === 'Delete' || event.key === 'Backspace') && column && !isReadOnly) {
      const isEmptied = column.kind === 'given' || column.kind === 'remark' || column.kind === 'option';
      const command = isEmptied ? commandFor(table, here.row, column, '') : null;
      if (command) onRun(command);
    } else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey) {
      open(here, event.key, false);
    } else return;
    event.preventDefault();
  }

  return (
    <div
      ref={scroller}
      className="lots-scroller"
      onScroll={({ currentTarget: { scrollTop, clientHeight } }) =>
        setScrolled({ top: scrollTop, height: clientHeight })
      }
    >
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its cells are walked and written to, as in a grid
        role="grid"
        aria-label="Lots"
        aria-rowcount={table.rows.length + 2}
        aria-colcount={columns.length}
        aria-readonly={isReadOnly}
        className="lots-grid"
        style={{ '--lots-columns': widths } as React.CSSProperties} // a property of our own
        onKeyDown={onKeyDown}
      >
        <thead className="lots-head">
          <tr aria-rowindex={1} className="lots-row">
            {columns.map((column, index) => (
              <th
                key={headOf(column)}
                scope="col"
                aria-colindex={index + 1}
                data-kind={column.kind}
                className="lots-cell"
              >
                <span>{headOf(column)}</span>
                {unitUnder(column) ? <small> {unitUnder(column)}</small> : null}
              </th>
            ))}
          </tr>
        </thead>
        <tbody
          style={{
            paddingTop: first * rowHeight,
            paddingBottom: Math.max(0, table.rows.length - last) * rowHeight,
          }}
        >
          {table.rows.slice(first, last).map((lot, index) => {
            const at = first + index;
            const isHere = here.row === at;
            return (
              <LotRow
                key={lot.name}
                table={table}
                lot={lot}
                at={at}
                columns={columns}
                outcome={outcomes[at] ?? null}
                here={isHere ? here.column : null}
                field={isHere ? field : null}
                onPress={press}
                onOffer={offer}
                onClose={close}
              />
            );
          })}
        </tbody>
        <TotalsRow columns={columns} totals={totals} lots={table.rows.length} />
      </table>
    </div>
  );
}
