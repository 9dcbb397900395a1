import { useMemo } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { compareCells } from '../../workbook/comparison.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { DifferenceParts } from './difference-parts.tsx';
import { OrderDifferences } from './order-differences.tsx';

/** Everything that differs between two workbooks: the order first, then what was given, chosen, checked and figured. */
export function Differences({
  before,
  after,
  open,
  onGo,
}: {
  readonly before: KeptWorkbook;
  readonly after: KeptWorkbook;
  /** Which of the two is open, so that its cells can be gone to. */
  readonly open: 'before' | 'after';
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const cells = useMemo(() => compareCells(before, after), [before, after]);
  return (
    <>
      <p className="compare-titles">
        <strong>{before.workbook.title}</strong> <span>{origin(before.workbook)}</span> beside{' '}
        <strong>{after.workbook.title}</strong> <span>{origin(after.workbook)}</span>
      </p>
      {cells.length === 0 ? <p className="compare-empty">Nothing differs.</p> : null}
      <OrderDifferences before={before} after={after} />
      <DifferenceParts
        cells={cells}
        isOpen={(kind) => kind !== 'words'}
        {...(open === 'after' ? { onGo } : {})}
      />
    </>
  );
}

/** `from Round trunk, revision 2` */
function origin({ template, kind }: Workbook): string {
  if (!template) return '';
  return kind === 'template'
    ? `revision ${template.revision}`
    : `from ${template.name}, revision ${template.revision}`;
}
