import { useRef, useState } from 'react';
import { sheetWithId } from '../../workbook/cells.ts';
import type { Carried } from './carried.ts';
import type { Draft } from './draft.ts';
import { OneSheet, type SheetGridProps } from './one-sheet.tsx';
import type { TablePlace } from './sheet-table.ts';
import './grid.css';
import './selection.css';

/** The sheet that is open, as a grid. A formula that is being written comes along to another sheet, where cells can be
 *  picked for it, and so does what was copied or cut. */
export function SheetGrid(props: SheetGridProps) {
  const [draft, setDraft] = useState<Draft | null>(null);
  const [carried, setCarried] = useState<Carried | null>(null);
  const isFirst = useRef(true);
  const caret = useRef<number | null>(null);
  const places = useRef(new Map<string, TablePlace>());
  const { sheetId, state } = props;
  const sheet = sheetWithId(state.workbook, sheetId);
  if (!sheet) return null;
  const isWritable = draft !== null && sheetWithId(state.workbook, draft.sheetId) !== undefined;
  return (
    <OneSheet
      {...props}
      key={sheetId}
      sheet={sheet}
      draft={isWritable ? draft : null}
      caret={caret}
      onDraft={setDraft}
      carried={carried}
      onCarry={setCarried}
      isFirst={isFirst}
      places={places.current}
    />
  );
}
