import { referencesIn } from '../formula/references.ts';
import { cellsOf, sheetWithId } from './cells.ts';
import { isFormula, type Workbook } from './document.ts';
import { isSameSheet } from './kept-places.ts';

/** How many cells of other sheets read a sheet, by its name or by a name that lies on it: those that have no figure when it
 *  goes. */
export function sheetReaders(workbook: Workbook, id: string): number {
  const own = sheetWithId(workbook, id);
  if (!own) return 0;
  const names = Object.entries(workbook.names).flatMap(([name, { sheet }]) =>
    sheet === id ? [name.toLowerCase()] : [],
  );
  const words = [own.name.toLowerCase(), ...names];
  let count = 0;
  for (const sheet of workbook.sheets) {
    if (sheet.id === id) continue;
    for (const { cell } of cellsOf(sheet)) {
      if (!isFormula(cell.content)) continue;
      // Most formulas name neither; only those that may are read. A quote in a sheet's name is written twice.
      const small = cell.content.formula.toLowerCase().replaceAll("''", "'");
      if (!words.some((word) => small.includes(word))) continue;
      const reads = referencesIn(cell.content.formula).some((one) =>
        one.type === 'name'
          ? names.includes(one.name.toLowerCase())
          : one.sheet !== null && isSameSheet(one.sheet, own.name),
      );
      if (reads) count += 1;
    }
  }
  return count;
}
