import { useMemo } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { compareCells } from '../../workbook/comparison.ts';
import type { Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { DifferenceParts } from './difference-parts.tsx';
import { OrderDifferences } from './order-differences.tsx';

export interface Side extends KeptWorkbook {
  /** In words where it lies, where two titles may be the same. */
  readonly from?: string;
}

/** Everything that differs between two workbooks: the order first, then what was given, chosen, checked and figured. */
export function Differences({
  before,
  after,
  open,
  onGo,
}: {
  readonly before: Side;
  readonly after: Side;
  /** Which of the two is open, so that its cells can be gone to. */
  readonly open: 'before' | 'after';
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const cells = useMemo(() => compareCells(before, after), [before, after]);
  return (
    <>
      <dl className="compare-titles">
        <SideTitle word="Before" side={before} />
        <SideTitle word="After" side={after} />
      </dl>
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

function SideTitle({ word, side: { workbook, from } }: { readonly word: string; readonly side: Side }) {
  return (
    <div>
      <dt>{word}</dt>
      <dd>
        <strong>{workbook.title}</strong>{' '}
        <span>{[...(from ? [from] : []), ...origin(workbook)].join(' · ')}</span>
      </dd>
    </div>
  );
}

/** `made from Round trunk, revision 2` */
function origin({ template, kind }: Workbook): readonly string[] {
  if (!template) return [];
  const revision = `revision ${template.revision}`;
  return [kind === 'template' ? revision : `made from ${template.name}, ${revision}`];
}
