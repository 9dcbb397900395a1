import { writeAddress } from '../base/address.ts';
import { tradeFunctions } from '../catalogue/list.ts';
import { builtins } from '../formula/builtins.ts';
import { checkFormula } from '../formula/check.ts';
import { wordFormulaFault } from '../formula/wording.ts';
import { sheetWithId } from '../workbook/cells.ts';
import { applyDifference, type Difference } from '../workbook/difference.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';

const functionNames = [...tradeFunctions, ...builtins].map((one) => one.name);

/** Why a formula cannot stand in this workbook, in a sentence; null when it can. */
export function formulaRefusal(workbook: Workbook, formula: string): string | null {
  const outcome = checkFormula(formula, {
    functions: functionNames,
    names: Object.keys(workbook.names),
    sheets: workbook.sheets.map((sheet) => sheet.name),
  });
  return outcome.ok ? null : wordFormulaFault(outcome.fault, formula);
}

const refusalsTold = 10;

/** The same for every formula that a difference brings in; where it brings several, each refusal with its cell on a line of
 *  its own. A formula
 *  that only goes along with something else was taken before: it is refused for nothing that was wrong with it then. */
export function refuseFormula(workbook: Workbook, difference: Difference, isTyped: boolean): string | null {
  const after = withWordsOf(workbook, difference);
  const refusals: { readonly place: string; readonly sentence: string }[] = [];
  for (const change of difference) {
    if (change.type !== 'cell' || !change.after || !isFormula(change.after.content)) continue;
    const sentence = formulaRefusal(after, change.after.content.formula);
    if (sentence === null) continue;
    const before = change.before?.content ?? null;
    if (!isTyped && isFormula(before) && formulaRefusal(workbook, before.formula) !== null) continue;
    const sheet = sheetWithId(workbook, change.sheet)?.name ?? '';
    refusals.push({ place: `${sheet}!${writeAddress(change.address)}`, sentence });
  }
  const [first] = refusals;
  if (refusals.length < 2) return first?.sentence ?? null;
  const told = refusals.slice(0, refusalsTold).map(({ place, sentence }) => `${place}: ${sentence}`);
  const rest = refusals.length - told.length;
  return [...told, ...(rest > 0 ? [`And ${rest} more.`] : [])].join('\n');
}

/** The workbook with the names and sheets that formulas can use afterwards. */
function withWordsOf(workbook: Workbook, difference: Difference): Workbook {
  const words = difference.filter(({ type }) => type === 'name' || type === 'sheet' || type === 'sheet_name');
  return words.length === 0 ? workbook : applyDifference(workbook, words);
}
