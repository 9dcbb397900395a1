import type { CellAddress } from '../../base/address.ts';
import type { CellComparison, ComparedKind } from '../../workbook/comparison.ts';
import { comparisonParts } from '../../workbook/comparison-parts.ts';
import { CellDifferences } from './cell-differences.tsx';
import './difference-parts.css';

/** Cells that differ, kind by kind, each kind to be opened and closed. */
export function DifferenceParts({
  cells,
  isOpen,
  onGo,
}: {
  readonly cells: readonly CellComparison[];
  /** Whether a kind is open at first. */
  readonly isOpen: (kind: ComparedKind) => boolean;
  /** Left out where the later workbook is not the open one. */
  readonly onGo?: (sheetId: string, address: CellAddress) => void;
}) {
  return comparisonParts(cells).map(({ kind, says, cells: own }) => (
    <details key={kind} open={isOpen(kind)} className="difference-part">
      <summary>
        {says} <span>{own.length === 1 ? '1 cell' : `${own.length} cells`}</span>
      </summary>
      <CellDifferences cells={own} says={says} {...(onGo ? { onGo } : {})} />
    </details>
  ));
}
