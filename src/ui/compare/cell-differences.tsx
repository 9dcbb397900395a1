import type { CellAddress } from '../../base/address.ts';
import type { CellComparison } from '../../workbook/comparison.ts';
import { isRewritten, sayBy, saySide } from '../../workbook/comparison-parts.ts';
import './differences.css';

/** Cells that differ, one to a row: which, what it was, what it is, and by how much. */
export function CellDifferences({
  cells,
  says,
  onGo,
}: {
  readonly cells: readonly CellComparison[];
  /** What the table is of, for who listens to it. */
  readonly says: string;
  /** Left out where the later workbook is not the open one. */
  readonly onGo?: (sheetId: string, address: CellAddress) => void;
}) {
  return (
    <table className="differences">
      <caption className="visually-hidden">{says}</caption>
      <thead>
        <tr>
          <th scope="col">Cell</th>
          <th scope="col">What it is</th>
          <th scope="col" className="differences-figure">
            Before
          </th>
          <th scope="col" className="differences-figure">
            After
          </th>
          <th scope="col">By</th>
        </tr>
      </thead>
      <tbody>
        {cells.map((cell) => (
          <Row key={`${cell.place} ${cell.after ? '' : 'gone'}`} cell={cell} onGo={onGo} />
        ))}
      </tbody>
    </table>
  );
}

function Row({
  cell,
  onGo,
}: {
  readonly cell: CellComparison;
  readonly onGo: ((sheetId: string, address: CellAddress) => void) | undefined;
}) {
  const { place, label, before, after } = cell;
  const formulas = isRewritten(cell);
  return (
    <tr>
      <th scope="row">
        {onGo && after ? (
          <button
            type="button"
            className="differences-place"
            onClick={() => onGo(cell.sheetId, cell.address)}
          >
            {place}
          </button>
        ) : (
          place
        )}
      </th>
      <td>{label}</td>
      <td className={classOf(cell)}>{formulas ? <code>={before?.formula}</code> : saySide(before)}</td>
      <td className={`${classOf(cell)} differences-after`}>
        {formulas ? <code>={after?.formula}</code> : saySide(after)}
      </td>
      <td className="differences-by">{formulas ? 'written otherwise, to the same end' : sayBy(cell)}</td>
    </tr>
  );
}

/** Figures stand at the right on one line; sentences and formulas run on. */
function classOf(cell: CellComparison): string {
  const isFigure = [cell.before, cell.after].every(
    (side) => side === null || (side.shown.type !== 'text' && side.shown.type !== 'fault'),
  );
  return isFigure && !isRewritten(cell) ? 'differences-figure' : 'differences-words';
}
