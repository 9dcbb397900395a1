import { useMemo } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { compareCells } from '../../workbook/comparison.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { DifferenceParts } from '../compare/difference-parts.tsx';
import { OrderDifferences } from '../compare/order-differences.tsx';

/** What the numbers that are tried do to the open workbook: first the order and the money, then every cell. */
export function TrialEffect({
  before,
  after,
  onGo,
}: {
  readonly before: KeptWorkbook;
  readonly after: KeptWorkbook;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const cells = useMemo(() => compareCells(before, after), [before, after]);
  const figured = cells.filter(({ kind }) => kind === 'figured' || kind === 'check').length;
  return (
    <>
      <p className="allowances-effect-words">{effectWords(figured)}</p>
      <OrderDifferences before={before} after={after} />
      <DifferenceParts cells={cells} isOpen={(kind) => kind === 'check' || kind === 'figured'} onGo={onGo} />
    </>
  );
}

function effectWords(figured: number): string {
  if (figured === 0) {
    return 'No figure of this job changes: nothing in it uses these numbers.';
  }
  return figured === 1 ? '1 figure of this job changes.' : `${figured} figures of this job change.`;
}
