import { memo } from 'react';
import type { Outcome } from '../../base/outcome.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import type { Lot, LotTable } from '../../lots/lot-table.ts';
import { canEdit, type GridCell, type GridColumn, gridCell, headOf, textToChange } from './grid-columns.ts';
import { type FieldEnd, LotField } from './lot-field.tsx';

/** The field that is open in a row. */
export interface OpenField {
  readonly column: number;
  /** What was typed to open it; null where it was opened as it stands. */
  readonly begun: string | null;
  readonly isByPointer: boolean;
}

/** One lot of the table: a row of cells, one of which may be open. Drawn again only when something of it is another. */
export const LotRow = memo(function LotRow({
  table,
  lot,
  at,
  columns,
  outcome,
  here,
  field,
  onPress,
  onOffer,
  onClose,
}: {
  readonly table: LotTable;
  readonly lot: Lot;
  readonly at: number;
  readonly columns: readonly GridColumn[];
  readonly outcome: LotOutcome | null;
  /** The column of the cell where the person is; null in all other rows. */
  readonly here: number | null;
  readonly field: OpenField | null;
  readonly onPress: (row: number, column: number) => void;
  readonly onOffer: (row: number, column: number, typed: string) => Outcome<null, string>;
  readonly onClose: (end: FieldEnd) => void;
}) {
  return (
    <tr aria-rowindex={at + 2} className="lots-row" data-here={here === null ? undefined : ''}>
      {columns.map((column, index) => {
        const cell = gridCell(table, lot, column, outcome);
        const isOpen = field?.column === index;
        return (
          // biome-ignore lint/a11y/useAriaPropsSupportedByRole: every cell of a grid may be selected
          <td
            key={headOf(column)}
            role={index === 0 ? 'rowheader' : 'gridcell'}
            aria-colindex={index + 1}
            aria-selected={here === index}
            aria-readonly={canEdit(column, cell) ? undefined : true}
            tabIndex={here === index && !isOpen ? 0 : -1}
            data-cell={`${at} ${index}`}
            data-kind={column.kind}
            data-says={cell.says}
            data-mark={cell.mark}
            className="lots-cell"
            title={cell.title}
            onPointerDown={(event) => {
              if (isOpen || event.button !== 0) return;
              event.preventDefault();
              onPress(at, index);
            }}
          >
            {isOpen ? (
              <LotField
                label={`${headOf(column)} of ${lot.name}`}
                text={field.begun ?? (cell.choices ? cell.text : textToChange(table, lot, column))}
                choices={cell.choices}
                isByPointer={field.isByPointer}
                onOffer={(typed) => onOffer(at, index, typed)}
                onClose={onClose}
              />
            ) : (
              <CellText cell={cell} />
            )}
          </td>
        );
      })}
    </tr>
  );
});

function CellText({ cell }: { readonly cell: GridCell }) {
  if (cell.says === 'none') return <span className="visually-hidden">not of this type</span>;
  return (
    <span className="lots-text">
      {cell.text}
      {cell.says === 'usual' ? <span className="visually-hidden">, as usual</span> : null}
    </span>
  );
}
