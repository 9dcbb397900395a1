import { useMemo, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { afterDifference } from '../../workbook/after-difference.ts';
import { compareCells } from '../../workbook/comparison.ts';
import { type Difference, invertDifference } from '../../workbook/difference.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { DifferenceParts } from '../compare/difference-parts.tsx';
import { OrderDifferences } from '../compare/order-differences.tsx';
import { TrialHarm } from './trial-harm.tsx';

/** What is tried does to the open workbook: first what would be worse, then the order and the money, then every cell. */
export function TrialEffect({
  before,
  after,
  difference,
  onGo,
}: {
  readonly before: KeptWorkbook;
  readonly after: KeptWorkbook;
  readonly difference: Difference;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const [said, setSaid] = useState('');
  const cells = useMemo(() => compareCells(before, after), [before, after]);
  const figured = cells.filter(({ kind }) => kind === 'figured' || kind === 'check').length;

  /** The cell stands in the row that it has before anything is kept. */
  function go(sheetId: string, address: CellAddress): void {
    const back = invertDifference(difference).filter(isOfLines);
    const [here] = afterDifference([{ sheetId, address }], back);
    if (here) onGo(sheetId, here.address);
    else setSaid('This row comes with the copy. Keep it first; then it is on the sheet.');
  }

  return (
    <>
      <p className="allowances-effect-words">{effectWords(figured)}</p>
      <TrialHarm cells={cells} onGo={go} />
      <OrderDifferences before={before} after={after} />
      <p className="allowances-effect-words" role="status">
        {said}
      </p>
      <DifferenceParts cells={cells} isOpen={(kind) => kind === 'check' || kind === 'figured'} onGo={go} />
    </>
  );
}

function isOfLines({ type }: Difference[number]): boolean {
  return type === 'lines' || type === 'lines_place';
}

function effectWords(figured: number): string {
  if (figured === 0) {
    return 'No figure of this job changes: nothing in it uses these numbers.';
  }
  return figured === 1 ? '1 figure of this job changes.' : `${figured} figures of this job change.`;
}
