import { isFault } from '../../base/value.ts';
import { referencesIn } from '../../formula/references.ts';
import { sheetNamed } from '../../workbook/cells.ts';
import { allowancesSheet } from '../../workbook/comparison.ts';
import { type Cell, isFormula, type Workbook } from '../../workbook/document.ts';
import type { KeptWorkbook } from '../../workbook/file.ts';
import { unlocked } from '../../workbook/locked.ts';
import { valueAt, valuesOfFormulas } from '../../workbook/values.ts';

/** A shop's allowances on their own: the sheet Allowances with the names that lead into it. A formula that reads another
 *  sheet becomes what it shows, or is left out where it shows a fault or nothing; every other one stays. Locks, examples and
 *  the template stay behind. Null where the workbook has no such sheet. */
export function allowancesOf({ workbook, values }: KeptWorkbook): KeptWorkbook | null {
  const sheet = sheetNamed(workbook, allowancesSheet);
  if (!sheet) return null;
  const known = Object.entries(workbook.names);
  const foreign = new Set(
    known.flatMap(([name, named]) => (named.sheet === sheet.id ? [] : [name.toLowerCase()])),
  );
  const own = sheet.name.toLowerCase();
  const readsElsewhere = (formula: string) =>
    referencesIn(formula).some((one) =>
      one.type === 'name'
        ? foreign.has(one.name.toLowerCase())
        : one.sheet !== null && one.sheet.toLowerCase() !== own,
    );
  const apart = (cell: Cell | null, row: number, column: number): Cell | null => {
    if (!cell) return null;
    const free = unlocked(cell);
    if (!isFormula(free.content) || !readsElsewhere(free.content.formula)) return free;
    const shown = valueAt(values, sheet.name, { row, column }) ?? null;
    if (shown === null || shown === '' || isFault(shown)) return null;
    return { ...free, content: shown, role: free.role === 'given' ? 'given' : 'text' };
  };
  const rows = sheet.rows.map((cells, row) => cells.map((cell, column) => apart(cell, row, column)));
  const alone: Workbook = {
    id: `${workbook.id}-allowances`,
    title: `Allowances of ${workbook.title}`.slice(0, 120),
    kind: 'allowances',
    sheets: [{ ...sheet, rows }],
    names: Object.fromEntries(known.filter(([, named]) => named.sheet === sheet.id)),
    examples: [],
  };
  return { workbook: alone, values: valuesOfFormulas(alone, values) };
}
