import type { SessionState } from '../../session/state.ts';
import { cellAt, sheetWithId } from '../../workbook/cells.ts';
import { labelOf } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import { isOneCell } from '../grid/selection.ts';
import type { TaggedCells } from './tagged-cells.ts';
import './tag-list.css';

/** The cells that the formula reads so far, each under its number, with what they are called and what they show. */
export function TagList({
  cells,
  state,
}: {
  readonly cells: readonly TaggedCells[];
  readonly state: SessionState;
}) {
  if (cells.length === 0) return null;
  return (
    <ol className="tag-list" aria-label="Cells of this formula">
      {cells.map((one) => (
        <li key={one.tag}>
          <span className="tag-list-number" data-tag-line={one.tag % 4}>
            {one.tag}
          </span>{' '}
          <code>{one.written}</code> <span className="tag-list-about">{aboutCells(one, state)}</span>
        </li>
      ))}
    </ol>
  );
}

function aboutCells({ sheetId, range }: TaggedCells, { workbook, values }: SessionState): string {
  const sheet = sheetWithId(workbook, sheetId);
  if (!sheet || !isOneCell(range)) return '';
  const cell = cellAt(sheet, range.from);
  const shown = showValue(shownValue(sheet, range.from, cell, values), cell?.unit, cell?.format);
  return [labelOf(sheet, range.from, values), shown.text || 'empty'].filter(Boolean).join(': ');
}
