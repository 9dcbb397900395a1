import type { CellAddress } from '../../base/address.ts';

/** The name of a sheet's column inside the table. */
export function columnId(column: number): string {
  return `c${column}`;
}

/** Which cell of the sheet an element on the page belongs to; null for row numbers, headings and the rest. */
export function addressOf(target: EventTarget | null): CellAddress | null {
  if (!(target instanceof Element)) return null;
  const column = /^c(\d+)$/.exec(target.closest('[col-id]')?.getAttribute('col-id') ?? '')?.[1];
  const row = target.closest('[row-index]')?.getAttribute('row-index');
  if (column === undefined || !row || !/^\d+$/.test(row)) return null;
  return { row: Number(row), column: Number(column) };
}

/** The element of a cell, where it is near enough to the visible part to be on the page at all. */
export function cellElement(host: HTMLElement, { row, column }: CellAddress): HTMLElement | null {
  return host.querySelector<HTMLElement>(`[row-index="${row}"] [col-id="${columnId(column)}"]`);
}
