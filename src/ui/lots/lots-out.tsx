import { useState } from 'react';
import { lotsAsCsv, orderAsCsv } from '../../lots/csv-out.ts';
import type { LotOutcome } from '../../lots/figure-lots.ts';
import type { LotTable } from '../../lots/lot-table.ts';
import type { LotsOrder } from '../../lots/order-of-all.ts';
import { fileName } from '../files/file-name.ts';
import { handOver } from '../files/hand-over.ts';
import type { LotDesk } from './lot-desk.ts';

const csvKind = { description: 'CSV', accept: { 'text/csv': ['.csv'] } } as const;

/** Lots and order for other programs, and the way out of this browser for the whole table. */
export function LotsOut({
  desk,
  table,
  outcomes,
  order,
  isReadOnly,
  onSaid,
}: {
  readonly desk: LotDesk;
  readonly table: LotTable;
  readonly outcomes: readonly (LotOutcome | null)[];
  readonly order: LotsOrder;
  readonly isReadOnly: boolean;
  readonly onSaid: (sentence: string) => void;
}) {
  const [isAsking, setAsking] = useState(false);

  async function handOut(words: string, text: string): Promise<void> {
    const content = new Blob([text], { type: 'text/csv' });
    const saved = await handOver(content, fileName([table.title, words], 'csv'), csvKind);
    if (!saved.ok) onSaid(saved.fault);
    else if (saved.value !== null) onSaid(`Saved to ${saved.value}.`);
  }

  return (
    <div className="lots-deeds lots-out">
      <button type="button" onClick={() => handOut('lots', lotsAsCsv(table, outcomes))}>
        Lots as CSV
      </button>
      <button type="button" onClick={() => handOut('order', orderAsCsv(order))}>
        Order as CSV
      </button>
      {isReadOnly ? null : isAsking ? (
        <span className="lots-ask" role="alert">
          {table.title} goes out of this browser, with its {table.rows.length} lots. Save it to a file first
          to keep it.
          <button
            type="button"
            onClick={async () => {
              setAsking(false);
              const removed = await desk.remove();
              if (removed) onSaid(`${removed.title} is taken out.`);
            }}
          >
            Take it out
          </button>
          <button type="button" onClick={() => setAsking(false)}>
            Leave it here
          </button>
        </span>
      ) : (
        <button type="button" onClick={() => setAsking(true)}>
          Take this lot table out
        </button>
      )}
    </div>
  );
}
