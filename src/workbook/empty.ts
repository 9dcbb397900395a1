import type { Workbook } from './document.ts';

/** A workbook with one sheet and nothing on it. */
export function emptyWorkbook(id: string, title: string): Workbook {
  const columns = Array.from({ length: 6 }, () => ({ width: 12 }));
  return {
    id,
    title,
    kind: 'job',
    sheets: [{ id: 'sheet-1', name: 'Sheet 1', says: '', columns, rows: [] }],
    names: {},
    examples: [],
  };
}
