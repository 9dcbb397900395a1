import { type CellRange, isInRange } from '../base/address.ts';
import { referencesIn } from '../formula/references.ts';
import { cellsOf } from './cells.ts';
import { isFormula, type Sheet, type Workbook } from './document.ts';

/** The other sheets that read the rows of a block one by one: cells of at least two of them, each by itself. */
export function rowReaders(workbook: Workbook, sheet: Sheet, range: CellRange): readonly Sheet[] {
  return workbook.sheets.filter((other) => {
    if (other === sheet) return false;
    const rows = new Set<number>();
    for (const { cell } of cellsOf(other)) {
      if (!isFormula(cell.content)) continue;
      for (const one of referencesIn(cell.content.formula)) {
        const isOne = one.type === 'cell' && one.sheet?.toLowerCase() === sheet.name.toLowerCase();
        if (isOne && isInRange(one, range)) rows.add(one.row);
      }
      if (rows.size > 1) return true;
    }
    return false;
  });
}
