import type { CellRange } from '../../base/address.ts';
import { done, failed, type Outcome } from '../../base/outcome.ts';
import { findFunction } from '../../catalogue/list.ts';
import { builtins } from '../../formula/builtins.ts';
import { isUsableName } from '../../formula/name.ts';
import { afterNameRename } from '../../formula/rename.ts';
import { sheetWithId } from '../cells.ts';
import type { Difference } from '../difference.ts';
import type { Workbook } from '../document.ts';
import { rewrittenFormulas } from '../rewriting.ts';

export type NameCommand =
  | {
      readonly type: 'name_range';
      readonly name: string;
      readonly sheet: string;
      readonly range: CellRange;
    }
  | { readonly type: 'rename_name'; readonly name: string; readonly to: string }
  | { readonly type: 'remove_name'; readonly name: string };

export type NameFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'no_such_name'; readonly name: string }
  | { readonly code: 'name_taken'; readonly name: string }
  | { readonly code: 'name_of_a_function'; readonly name: string }
  | { readonly code: 'unusable_name'; readonly name: string };

/** Makes, changes or takes away a name for cells. Formulas follow a new name; without the name they say what is missing. */
export function changeNames(workbook: Workbook, command: NameCommand): Outcome<Difference, NameFault> {
  switch (command.type) {
    case 'name_range': {
      const { sheet, range } = command;
      const name = command.name.trim();
      if (!sheetWithId(workbook, sheet)) return failed({ code: 'no_such_sheet' });
      const fault = faultOf(workbook, name, null);
      return fault ? failed(fault) : done([{ type: 'name', name, before: null, after: { sheet, range } }]);
    }
    case 'rename_name': {
      const known = knownName(workbook, command.name);
      const range = known === undefined ? undefined : workbook.names[known];
      if (known === undefined || !range) return failed({ code: 'no_such_name', name: command.name });
      const to = command.to.trim();
      if (to === known) return done([]);
      const fault = faultOf(workbook, to, known);
      if (fault) return failed(fault);
      return done([
        { type: 'name', name: known, before: range, after: null },
        { type: 'name', name: to, before: null, after: range },
        ...rewrittenFormulas(workbook, (formula) => afterNameRename(formula, known, to)),
      ]);
    }
    case 'remove_name': {
      const known = knownName(workbook, command.name);
      const range = known === undefined ? undefined : workbook.names[known];
      if (known === undefined || !range) return failed({ code: 'no_such_name', name: command.name });
      return done([{ type: 'name', name: known, before: range, after: null }]);
    }
  }
}

function faultOf(workbook: Workbook, name: string, own: string | null): NameFault | null {
  if (!isUsableName(name) || name.length > 80) return { code: 'unusable_name', name };
  const wanted = name.toUpperCase();
  if (findFunction(name) || builtins.some((one) => one.name === wanted)) {
    return { code: 'name_of_a_function', name };
  }
  const taken = knownName(workbook, name);
  return taken !== undefined && taken !== own ? { code: 'name_taken', name: taken } : null;
}

/** Upper and lower case are alike, as in formulas. */
function knownName(workbook: Workbook, name: string): string | undefined {
  const wanted = name.trim().toLowerCase();
  return Object.keys(workbook.names).find((one) => one.toLowerCase() === wanted);
}
