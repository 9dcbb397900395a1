interface Place {
  readonly row: number;
  readonly column: number;
}

/** Where a key leads in a table; null for keys that lead nowhere. */
export function stepFrom(
  { row, column }: Place,
  key: string,
  isFar: boolean,
  size: { readonly rows: number; readonly columns: number },
  page: number,
): Place | null {
  const at = (toRow: number, toColumn: number): Place => ({
    row: Math.min(Math.max(0, toRow), size.rows - 1),
    column: Math.min(Math.max(0, toColumn), size.columns - 1),
  });
  switch (key) {
    case 'ArrowUp':
      return at(isFar ? 0 : row - 1, column);
    case 'ArrowDown':
      return at(isFar ? size.rows : row + 1, column);
    case 'ArrowLeft':
      return at(row, isFar ? 0 : column - 1);
    case 'ArrowRight':
      return at(row, isFar ? size.columns : column + 1);
    case 'Home':
      return at(isFar ? 0 : row, 0);
    case 'End':
      return at(isFar ? size.rows : row, size.columns);
    case 'PageUp':
      return at(row - page, column);
    case 'PageDown':
      return at(row + page, column);
    default:
      return null;
  }
}
