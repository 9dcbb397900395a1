import { useEffect, useState } from 'react';
import type { CellAddress } from '../base/address.ts';
import type { Explanation } from '../session/explanation.ts';
import type { Session } from '../session/session.ts';
import type { SessionState } from '../session/state.ts';

/** The working of a cell: at once what can be said without the engine, then the whole, and anew when a figure changes. */
export function useExplanation(
  session: Session,
  state: SessionState,
  sheetId: string,
  address: CellAddress,
): Explanation {
  const { workbook, values, figures } = state;
  const { row, column } = address;
  const [whole, setWhole] = useState<{ readonly key: string; readonly explanation: Explanation } | null>(
    null,
  );
  const key = `${workbook.id} ${sheetId} ${row} ${column}`;

  // biome-ignore lint/correctness/useExhaustiveDependencies: the workbook and its values are what a new working comes from
  useEffect(() => {
    let isWanted = true;
    session.explain(sheetId, { row, column }).then((explanation) => {
      if (isWanted) setWhole({ key, explanation });
    });
    return () => {
      isWanted = false;
    };
  }, [session, sheetId, row, column, key, workbook, values, figures.type]);

  // While the figures are on their way, the last working of the same cell stays, so that nothing flickers.
  return whole?.key === key ? whole.explanation : session.glance(sheetId, address);
}
