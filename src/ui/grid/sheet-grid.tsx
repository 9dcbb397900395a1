import { useRef, useState } from 'react';
import type { CellAddress, CellRange } from '../../base/address.ts';
import type { Session } from '../../session/session.ts';
import type { SessionState } from '../../session/state.ts';
import { sheetWithId } from '../../workbook/cells.ts';
import type { Draft } from './draft.ts';
import { OneSheet } from './one-sheet.tsx';
import './grid.css';

export interface SheetGridProps {
  readonly session: Session;
  readonly state: SessionState;
  readonly sheetId: string;
  readonly selected: CellAddress;
  readonly onSelect: (address: CellAddress) => void;
  /** Cells that the selected one comes from. */
  readonly marked: readonly CellRange[];
}

/** The sheet that is open, as a grid. A draft that was not taken waits on its sheet while the person looks at another. */
export function SheetGrid(props: SheetGridProps) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const isFirst = useRef(true);
  const { sheetId, state } = props;
  const sheet = sheetWithId(state.workbook, sheetId);
  if (!sheet) return null;
  return (
    <OneSheet
      {...props}
      key={sheetId}
      sheet={sheet}
      draft={draft?.sheetId === sheetId ? draft : null}
      onDraft={setDraft}
      isFirst={isFirst}
    />
  );
}
