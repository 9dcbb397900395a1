import type { Cell, Sheet } from '../../src/workbook/document.ts';
import type { Form } from './form.ts';

/** The sheets of a template whose jobs keep its formulas, labels and checks: all that is filled in stays open. The
 *  allowances are the shop's own, so nothing is locked there. */
export function lockedSheets(forms: readonly Form[]): readonly Sheet[] {
  return forms.map(({ sheet }) =>
    sheet.name === 'Allowances' ? sheet : lockedBut(sheet, (cell) => isGiven(cell) || cell.content === null),
  );
}

/** A sheet that is locked but for some of its cells. */
export function lockedBut(sheet: Sheet, isOpen: (cell: Cell) => boolean): Sheet {
  const lock = (cell: Cell | null) => (cell && !isOpen(cell) ? { ...cell, locked: true as const } : cell);
  return { ...sheet, rows: sheet.rows.map((row) => row.map(lock)) };
}

export function isGiven(cell: Cell): boolean {
  return cell.role === 'given';
}
