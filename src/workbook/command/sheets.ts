import { done, failed, type Outcome } from '../../base/outcome.ts';
import { afterSheetRemoval, afterSheetRename } from '../../formula/rename.ts';
import { sheetNamed } from '../cells.ts';
import { applyDifference, type Change, type Difference } from '../difference.ts';
import type { Workbook } from '../document.ts';
import { isSameSheet, keptPlacesAfter } from '../kept-places.ts';
import { usualColumn } from '../lines.ts';
import { rewrittenFormulas } from '../rewriting.ts';

export type SheetCommand =
  /** The id is the caller's to make; no other sheet may have it. */
  | { readonly type: 'add_sheet'; readonly id: string; readonly name: string; readonly index: number }
  /** The same for the id; the copy stands below the sheet that it is of. */
  | { readonly type: 'copy_sheet'; readonly sheet: string; readonly id: string; readonly name: string }
  | { readonly type: 'describe_sheet'; readonly sheet: string; readonly says: string }
  | { readonly type: 'remove_sheet'; readonly sheet: string }
  | { readonly type: 'rename_sheet'; readonly sheet: string; readonly name: string }
  | { readonly type: 'move_sheet'; readonly sheet: string; readonly index: number };

export type SheetFault =
  | { readonly code: 'no_such_sheet' }
  | { readonly code: 'sheet_name_taken'; readonly name: string }
  | { readonly code: 'unusable_sheet_name'; readonly name: string }
  | { readonly code: 'sheet_sentence_too_long'; readonly got: number; readonly most: number }
  | { readonly code: 'last_sheet' };

const longestName = 60;
const longestSentence = 500;
const columnsOfNew = 6;

export function changeSheets(workbook: Workbook, command: SheetCommand): Outcome<Difference, SheetFault> {
  if (command.type === 'add_sheet') return addSheet(workbook, command);
  const index = workbook.sheets.findIndex((sheet) => sheet.id === command.sheet);
  const sheet = workbook.sheets[index];
  if (!sheet) return failed({ code: 'no_such_sheet' });
  switch (command.type) {
    case 'remove_sheet': {
      if (workbook.sheets.length === 1) return failed({ code: 'last_sheet' });
      const names = Object.entries(workbook.names).flatMap(([name, before]): readonly Change[] =>
        before.sheet === sheet.id ? [{ type: 'name', name, before, after: null }] : [],
      );
      const others = { ...workbook, sheets: workbook.sheets.filter((one) => one !== sheet) };
      const formulas = rewrittenFormulas(others, (formula) => afterSheetRemoval(formula, sheet.name));
      const kept = keptPlacesAfter(workbook, (place) =>
        isSameSheet(place.sheet, sheet.name) ? null : place,
      );
      return done([...formulas, ...names, ...kept, { type: 'sheet', index, before: sheet, after: null }]);
    }
    case 'copy_sheet': {
      const name = command.name.trim();
      const fault = nameFault(workbook, name, null);
      if (fault) return failed(fault);
      const copy = { ...sheet, id: command.id, name };
      // A formula that names its own sheet goes on doing so in the copy.
      const formulas = rewrittenFormulas({ ...workbook, sheets: [copy] }, (formula) =>
        afterSheetRename(formula, sheet.name, name),
      );
      const after = applyDifference({ ...workbook, sheets: [copy] }, formulas).sheets[0] ?? copy;
      return done([{ type: 'sheet', index: index + 1, before: null, after }]);
    }
    case 'describe_sheet': {
      const says = command.says.trim();
      if (says.length > longestSentence) {
        return failed({ code: 'sheet_sentence_too_long', got: says.length, most: longestSentence });
      }
      return done(
        says === sheet.says ? [] : [{ type: 'sheet_says', sheet: sheet.id, before: sheet.says, after: says }],
      );
    }
    case 'rename_sheet': {
      const name = command.name.trim();
      if (name === sheet.name) return done([]);
      const fault = nameFault(workbook, name, sheet.id);
      if (fault) return failed(fault);
      return done([
        { type: 'sheet_name', sheet: sheet.id, before: sheet.name, after: name },
        ...rewrittenFormulas(workbook, (formula) => afterSheetRename(formula, sheet.name, name)),
        ...keptPlacesAfter(workbook, (place) =>
          isSameSheet(place.sheet, sheet.name) ? { ...place, sheet: name } : place,
        ),
      ]);
    }
    case 'move_sheet': {
      const to = Math.max(0, Math.min(workbook.sheets.length - 1, command.index));
      return done(to === index ? [] : [{ type: 'sheet_place', before: index, after: to }]);
    }
  }
}

function addSheet(
  workbook: Workbook,
  { id, name: wanted, index }: Extract<SheetCommand, { type: 'add_sheet' }>,
): Outcome<Difference, SheetFault> {
  const name = wanted.trim();
  const fault = nameFault(workbook, name, null);
  if (fault) return failed(fault);
  const sheet = {
    id,
    name,
    says: '',
    columns: Array.from({ length: columnsOfNew }, () => usualColumn),
    rows: [],
  };
  return done([{ type: 'sheet', index, before: null, after: sheet }]);
}

function nameFault(workbook: Workbook, name: string, own: string | null): SheetFault | null {
  if (name === '' || name.length > longestName || /['![\]:*?/\\]/.test(name)) {
    return { code: 'unusable_sheet_name', name };
  }
  const other = sheetNamed(workbook, name);
  return other && other.id !== own ? { code: 'sheet_name_taken', name: other.name } : null;
}
