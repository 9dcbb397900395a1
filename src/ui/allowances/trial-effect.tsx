import { useMemo, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { isFault } from '../../base/value.ts';
import { afterDifference } from '../../workbook/after-difference.ts';
import { type CellComparison, compareCells } from '../../workbook/comparison.ts';
import { type Difference, invertDifference } from '../../workbook/difference.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { DifferenceParts } from '../compare/difference-parts.tsx';
import { OrderDifferences } from '../compare/order-differences.tsx';

/** What is tried does to the open workbook: first what would break, then the order and the money, then every cell. */
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
  const broken = cells.filter(isBroken);

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
      {broken.length > 0 ? (
        <div className="allowances-broken">
          <p>
            <span aria-hidden="true">✕ </span>
            {broken.length === 1
              ? 'Without it 1 cell would have no figure:'
              : `Without it ${broken.length} cells would have no figure:`}
          </p>
          <ul>
            {broken.slice(0, brokenTold).map(({ place, label, sheetId, address }) => (
              <li key={place}>
                <button type="button" onClick={() => go(sheetId, address)}>
                  {place}
                </button>{' '}
                {label}
              </li>
            ))}
          </ul>
          {broken.length > brokenTold ? <p>And {broken.length - brokenTold} more, below.</p> : null}
        </div>
      ) : null}
      <OrderDifferences before={before} after={after} />
      <p className="allowances-effect-words" role="status">
        {said}
      </p>
      <DifferenceParts cells={cells} isOpen={(kind) => kind === 'check' || kind === 'figured'} onGo={go} />
    </>
  );
}

const brokenTold = 8;

function isBroken({ before, after }: CellComparison): boolean {
  return before !== null && after !== null && isFault(after.value) && !isFault(before.value);
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
