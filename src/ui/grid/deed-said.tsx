import type { Session } from '../../session/session.ts';
import type { Deed } from '../../workbook/history.ts';

/** What a deed did besides what one sees, while it is the last one. */
export interface Said {
  readonly sentence: string;
  readonly deed: Deed;
}

/** Stands below the sheet, is read out when it comes, and goes with the next deed. */
export function DeedSaid({
  said,
  session,
  onClose,
}: {
  readonly said: Said | null;
  readonly session: Session;
  readonly onClose: () => void;
}) {
  const isLast = said !== null && session.getState().history.done.at(-1) === said.deed;
  return (
    <div className="sheet-grid-said" role="status">
      {isLast ? (
        <>
          <p>{said.sentence}</p>
          <button
            type="button"
            onClick={() => {
              session.undo();
              onClose();
            }}
          >
            Take back {said.deed.says}
          </button>
          <button type="button" onClick={onClose}>
            Close
          </button>
        </>
      ) : null}
    </div>
  );
}
