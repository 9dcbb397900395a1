import type { CellAddress } from '../base/address.ts';
import { referencesIn } from '../formula/references.ts';
import { cellsOf } from './cells.ts';
import { isFormula, type Workbook } from './document.ts';

export interface NameUser {
  readonly sheet: string;
  readonly address: CellAddress;
}

/** The formulas that use each name of a workbook, by the name as the workbook writes it. */
export function nameUsers(workbook: Workbook): ReadonlyMap<string, readonly NameUser[]> {
  const names = Object.keys(workbook.names);
  const users = new Map<string, NameUser[]>(names.map((name) => [name, []]));
  const bySmall = new Map(names.map((name) => [name.toLowerCase(), name]));
  for (const sheet of workbook.sheets) {
    for (const { address, cell } of cellsOf(sheet)) {
      if (!isFormula(cell.content)) continue;
      const small = cell.content.formula.toLowerCase();
      // Most formulas use no name; only those that may are read.
      if (!names.some((name) => small.includes(name.toLowerCase()))) continue;
      const used = new Set(
        referencesIn(cell.content.formula).flatMap((one) =>
          one.type === 'name' ? (bySmall.get(one.name.toLowerCase()) ?? []) : [],
        ),
      );
      for (const name of used) users.get(name)?.push({ sheet: sheet.id, address });
    }
  }
  return users;
}
