import { type RefObject, useEffect, useLayoutEffect, useRef } from 'react';
import { type CellAddress, sameAddress } from '../../base/address.ts';
import type { SheetSight } from './cell-sight.ts';
import { createSheetTable, type SheetTable, type TablePlace } from './sheet-table.ts';

export interface KeptTable {
  readonly table: RefObject<SheetTable | null>;
  /** The next time the sheet is shown, the selected cell takes the focus. */
  readonly wantFocus: () => void;
  /** The next time the sheet is shown, the cell is scrolled into view. */
  readonly wantInView: (address: CellAddress) => void;
}

/** Keeps a table on the page that shows what it is given, with the selected cell in view and the focus with it. */
export function useSheetTable(
  host: RefObject<HTMLElement | null>,
  sight: SheetSight,
  {
    helpId,
    isEditing,
    isFirst,
    isAway,
    places,
  }: {
    readonly helpId: string;
    readonly isEditing: boolean;
    readonly isFirst: RefObject<boolean>;
    readonly isAway: boolean;
    readonly places: Map<string, TablePlace>;
  },
): KeptTable {
  const table = useRef<SheetTable | null>(null);
  const first = useRef(sight);
  const focused = useRef(sight.selected);
  const begins = useRef(isEditing);
  const isFocusWanted = useRef(false);
  const wanted = useRef<CellAddress | null>(null);

  useLayoutEffect(() => {
    if (!host.current) return;
    const { id } = first.current.sheet;
    const made = createSheetTable(host.current, first.current, helpId, places.get(id));
    table.current = made;
    return () => {
      places.set(id, made.place());
      table.current = null;
      made.destroy();
    };
  }, [host, helpId, places]);

  useEffect(() => {
    // Whoever came by a link stands in the cell now; whoever walks the list of sheets stays there.
    if (!isFirst.current && !begins.current && !document.activeElement?.closest('nav, search'))
      table.current?.focus(focused.current);
    isFirst.current = false;
  }, [isFirst]);

  // And so does whoever comes back to it from a page that stood in its place.
  const wasAway = useRef(isAway);
  useEffect(() => {
    const isBack = wasAway.current && !isAway;
    wasAway.current = isAway;
    if (isBack && !isEditing && !document.activeElement?.closest('nav, search'))
      table.current?.focus(focused.current);
  }, [isAway, isEditing]);

  useLayoutEffect(() => {
    table.current?.show(sight);
    if (wanted.current) table.current?.reveal(wanted.current);
    wanted.current = null;
  }, [sight]);

  useLayoutEffect(() => {
    const { selected } = sight;
    const isMoved = !sameAddress(focused.current, selected);
    focused.current = selected;
    if (isEditing || !(isMoved || isFocusWanted.current)) return;
    isFocusWanted.current = false;
    // Whoever steps through what was found stays in the search.
    if (document.activeElement?.closest('search')) return;
    table.current?.focus(selected);
  });

  return {
    table,
    wantFocus: () => {
      isFocusWanted.current = true;
    },
    wantInView: (address) => {
      wanted.current = address;
    },
  };
}
