import { type RefObject, useLayoutEffect, useState } from 'react';
import type { CellAddress } from '../../base/address.ts';
import { cellElement } from './cell-place.ts';
import { type EditorPlace, placeOver, samePlace } from './editor-place.ts';

/** Keeps the editor over its cell while the sheet scrolls or changes size. Null while nothing is being edited. */
export function useEditorPlace(
  host: RefObject<HTMLElement | null>,
  frame: RefObject<HTMLElement | null>,
  address: CellAddress | null,
): EditorPlace | null {
  const [place, setPlace] = useState<EditorPlace | null>(null);
  const row = address?.row;
  const column = address?.column;

  useLayoutEffect(() => {
    const table = host.current;
    const around = frame.current;
    if (row === undefined || column === undefined || !table || !around) return setPlace(null);
    const follow = () => {
      const cell = cellElement(table, { row, column });
      // A cell that is scrolled far away is not on the page; the editor then stays where it was.
      if (!cell) return;
      const next = placeOver(cell, around);
      setPlace((before) => (before && samePlace(before, next) ? before : next));
    };
    follow();
    table.addEventListener('scroll', follow, true);
    const size = new ResizeObserver(follow);
    size.observe(around);
    return () => {
      table.removeEventListener('scroll', follow, true);
      size.disconnect();
    };
  }, [host, frame, row, column]);

  return place;
}
