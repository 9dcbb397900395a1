import type { Axis, CellAddress } from '../../base/address.ts';

/** The name of a sheet's column inside the table. */
export function columnId(column: number): string {
  return `c${column}`;
}

/** Which cell of the sheet an element on the page belongs to; null for row numbers, headings and the rest. */
export function addressOf(target: EventTarget | null): CellAddress | null {
  const row = rowOf(target);
  const column = columnOf(target);
  return row === null || column === null ? null : { row, column };
}

/** A row or a column as its number or its letter stands for it. */
export interface SheetLine {
  readonly axis: Axis;
  readonly at: number;
}

/** Which whole row or column an element stands for: a row number or a column letter; null for anything else. */
export function lineOf(target: EventTarget | null): SheetLine | null {
  const row = rowOf(target);
  const column = columnOf(target);
  if (row !== null && isWithin(target, '[col-id="row"]')) return { axis: 'row', at: row };
  return row === null && column !== null ? { axis: 'column', at: column } : null;
}

export function isWithin(target: EventTarget | null, selector: string): boolean {
  return target instanceof Element && target.closest(selector) !== null;
}

export function rowOf(target: EventTarget | null): number | null {
  // The table counts only the rows that show; its own id of a row is the row's number in the sheet.
  const row = target instanceof Element ? target.closest('[row-id]')?.getAttribute('row-id') : null;
  return row && /^\d+$/.test(row) ? Number(row) : null;
}

export function columnOf(target: EventTarget | null): number | null {
  const id = target instanceof Element ? target.closest('[col-id]')?.getAttribute('col-id') : null;
  const column = /^c(\d+)$/.exec(id ?? '')?.[1];
  return column === undefined ? null : Number(column);
}

/** The element of a cell, where it is near enough to the visible part to be on the page at all. */
export function cellElement(host: HTMLElement, { row, column }: CellAddress): HTMLElement | null {
  return host.querySelector<HTMLElement>(`[row-id="${row}"] [col-id="${columnId(column)}"]`);
}

export function isInEditor(target: EventTarget): boolean {
  return isWithin(target, '.cell-editor');
}
