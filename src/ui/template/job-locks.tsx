import { useMemo } from 'react';
import { cellsOf } from '../../workbook/cells.ts';
import { lockState } from '../../workbook/locked.ts';
import type { ShopPageProps } from '../shop-page.ts';

/** Whether the locks of a job hold, and the way to take them off or put them on again. */
export function JobLocks({ session, state }: ShopPageProps) {
  const { workbook, isReadOnly } = state;
  const count = useMemo(
    () =>
      workbook.sheets.reduce(
        (sum, sheet) => sum + [...cellsOf(sheet)].filter(({ cell }) => cell.locked).length,
        0,
      ),
    [workbook.sheets],
  );
  const hold = lockState(workbook) === 'hold';
  if (count === 0) return null;
  return (
    <section className="template-part" aria-labelledby="template-locks">
      <h2 id="template-locks">Locks</h2>
      <p>
        {count.toLocaleString('en-US')} cells are locked by the template.{' '}
        {hold ? 'Nothing changes them here.' : 'The locks of this job are off: all of them can be changed.'}
      </p>
      {isReadOnly ? null : (
        <div className="template-deeds">
          <button type="button" onClick={() => session.run({ type: 'set_locks', hold: !hold })}>
            {hold ? 'Take the locks off this job' : 'Put the locks on again'}
          </button>
        </div>
      )}
    </section>
  );
}
