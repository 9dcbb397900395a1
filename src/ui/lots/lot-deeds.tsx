import type { LotTable } from '../../lots/lot-table.ts';
import { typeName } from '../../lots/lot-table.ts';
import type { LotDesk } from './lot-desk.ts';
import type { GridPlace } from './lot-grid.tsx';

/** What is done to the lot where the person is, and how others come in. */
export function LotDeeds({
  desk,
  table,
  here,
  isReadOnly,
  onHere,
  onSaid,
  onOpenJob,
}: {
  readonly desk: LotDesk;
  readonly table: LotTable;
  readonly here: GridPlace;
  readonly isReadOnly: boolean;
  readonly onHere: (place: GridPlace) => void;
  readonly onSaid: (sentence: string) => void;
  readonly onOpenJob: () => void;
}) {
  const lot = table.rows[here.row];
  const { row } = here;

  function run(command: Parameters<LotDesk['run']>[0], to: number): void {
    const outcome = desk.run(command);
    onSaid(outcome.ok ? '' : outcome.fault);
    if (outcome.ok) onHere({ ...here, row: Math.max(0, to) });
  }

  const house = lot?.type ?? (table.types[0] && typeName(table.types[0]));
  return (
    <div className="lots-deeds">
      {isReadOnly ? null : (
        <>
          <button
            type="button"
            disabled={house === undefined}
            onClick={() => house && run({ type: 'add_lot', house }, table.rows.length)}
          >
            Add a lot
          </button>
          {lot ? (
            <>
              <button type="button" onClick={() => run({ type: 'copy_lot', at: row }, row + 1)}>
                Copy {lot.name}
              </button>
              <button
                type="button"
                disabled={row === 0}
                onClick={() => run({ type: 'move_lot', from: row, to: row - 1 }, row - 1)}
              >
                Move up
              </button>
              <button
                type="button"
                disabled={row >= table.rows.length - 1}
                onClick={() => run({ type: 'move_lot', from: row, to: row + 1 }, row + 1)}
              >
                Move down
              </button>
              <button
                type="button"
                onClick={() =>
                  run({ type: 'remove_lots', at: row, count: 1 }, Math.min(row, table.rows.length - 2))
                }
              >
                Take out {lot.name}
              </button>
            </>
          ) : null}
        </>
      )}
      {lot ? (
        <button type="button" className="lots-main" onClick={onOpenJob}>
          Open {lot.name} as a job
        </button>
      ) : null}
    </div>
  );
}
