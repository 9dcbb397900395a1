import { useState } from 'react';
import { figureWorkbook } from '../../engine/figure-workbook.ts';
import { OtherWorkbook } from '../files/other-workbook.tsx';
import type { openFile } from '../files/workbook-file.ts';
import type { ShopPageProps } from '../shop-page.ts';
import { useLastAsked } from '../use-last-asked.ts';
import { Differences, type Side } from './differences.tsx';
import './compare.css';

/** The open workbook beside another one, from the shelf or from a file: what differs, in the shop's words. */
export function ComparePage({ keeper, desk, session, state, onGo }: ShopPageProps) {
  const [other, setOther] = useState<Side | null>(null);
  const [said, setSaid] = useState('');
  const ask = useLastAsked();
  const [isTurned, setTurned] = useState(false);
  const { workbook } = state;

  async function take(kept: ReturnType<typeof openFile>, from: string): Promise<void> {
    const isLast = ask();
    setSaid('Figuring the other workbook …');
    const read = await kept;
    if (!isLast()) return;
    if (!read.ok) return setSaid(read.fault);
    // Stored figures are not trusted: both sides are figured by the same engine.
    const values = await figureWorkbook(read.value.workbook, await keeper.spareCalculator()).catch(
      () => null,
    );
    if (!isLast()) return;
    setOther({ workbook: read.value.workbook, values: values ?? read.value.values, from });
    setSaid(values ? '' : 'The other workbook could not be figured; what was stored with it is shown.');
  }

  const here = { workbook, values: state.values, from: 'open now' };
  const [before, after] = isTurned ? [here, other] : [other, here];
  return (
    <section className="compare" aria-label="Compare workbooks">
      <div className="compare-choice">
        <OtherWorkbook
          keeper={keeper}
          desk={desk}
          openId={workbook.id}
          chosenId={other?.workbook.id}
          fileDeed="Choose a file"
          fileWords="Workbook file to compare with"
          onTake={take}
        />
        <label>
          <input type="checkbox" checked={isTurned} onChange={(event) => setTurned(event.target.checked)} />{' '}
          The open one is the earlier
        </label>
      </div>
      <p className="compare-said" role="status">
        {said ||
          (session.getState().figures.type === 'figuring' ? 'The open workbook is being figured.' : '')}
      </p>
      {before && after ? (
        <Differences before={before} after={after} open={isTurned ? 'before' : 'after'} onGo={onGo} />
      ) : (
        <p className="compare-empty">
          Choose what to put beside <strong>{workbook.title}</strong>: last week’s copy, the same job from
          another computer, or another revision of its template. Neither is changed.
        </p>
      )}
    </section>
  );
}
