import { useRef, useState } from 'react';
import { sheetWithId } from '../../workbook/cells.ts';
import type { Carried } from './carried.ts';
import type { Draft } from './draft.ts';
import { OneSheet, type SheetGridProps } from './one-sheet.tsx';
import type { TablePlace } from './sheet-table.ts';
import './grid.css';
import './selection.css';

/** The sheet that is open, as a grid. A draft that was not taken waits on its sheet while the person looks at another,
 *  and what was copied or cut comes along to it. */
export function SheetGrid(props: SheetGridProps) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const [carried, setCarried] = useState<Carried | null>(null);
  const isFirst = useRef(true);
  const places = useRef(new Map<string, TablePlace>());
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
      carried={carried}
      onCarry={setCarried}
      isFirst={isFirst}
      places={places.current}
    />
  );
}
