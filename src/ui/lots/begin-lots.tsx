import { readLotTableFile } from '../../lots/file.ts';
import type { LotDesk } from './lot-desk.ts';

/** Where no lot table is open: what one is for, and the ways to begin. */
export function BeginLots({
  desk,
  onSaid,
}: {
  readonly desk: LotDesk;
  readonly onSaid: (sentence: string) => void;
}) {
  async function openExample(): Promise<void> {
    const text = await import('../../../sheets/larkspur-lane.lots.stretchout.json?raw').catch(() => null);
    const table = text && readLotTableFile(text.default);
    if (table?.ok) await desk.add(table.value);
    else onSaid('The example could not be fetched. Look whether the page can still be reached.');
  }
  return (
    <div className="lots-begin">
      <p>
        A lot table takes house types, templates whose author has said what varies from house to house, and
        figures every lot of a street from them: what each takes and costs, and what to order for all.
      </p>
      <div className="lots-deeds">
        <button type="button" className="lots-main" onClick={() => desk.begin('New lots')}>
          Begin a lot table
        </button>
        <button type="button" onClick={openExample}>
          Open the example: twelve lots of Larkspur Lane
        </button>
      </div>
    </div>
  );
}
