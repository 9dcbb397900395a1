import type { Cell, Content, Sheet } from '../../../src/workbook/document.ts';

/** A sheet drawn in letters: each one is a cell with that text, a point is none. */
export function sheetOf(rows: readonly string[]): Sheet {
  return sheetWith(rows.map((row) => [...row].map((letter) => (letter === '.' ? null : text(letter)))));
}

export function sheetWith(rows: readonly (readonly (Cell | null)[])[], id = 'one'): Sheet {
  return { id, name: id, says: '', columns: [], rows };
}

export function text(content: Content): Cell {
  return { content, role: 'text' };
}
