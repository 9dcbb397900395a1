import { writeAddress } from '../base/address.ts';
import { tradeFunctions } from '../catalogue/list.ts';
import { filledDown } from '../engine/filled-down.ts';
import { writeReading } from '../engine/read-formula.ts';
import { builtins } from '../formula/builtins.ts';
import { checkFormula } from '../formula/check.ts';
import { wordFormulaFault } from '../formula/wording.ts';
import { sheetWithId } from '../workbook/cells.ts';
import { applyDifference, type Difference } from '../workbook/difference.ts';
import { isFormula, type Workbook } from '../workbook/document.ts';

const functionNames = [...tradeFunctions, ...builtins].map((one) => one.name);

/** Why a formula cannot stand in this workbook, in a sentence; null when it can. */
export function formulaRefusal(workbook: Workbook, formula: string): string | null {
  return refusalsIn(workbook)(formula, '');
}

/** The same for many formulas, each with the sheet that it stands on: one that differs from a sound one in nothing but its
 *  rows is not taken apart again. */
function refusalsIn(workbook: Workbook): (formula: string, sheet: string) => string | null {
  const known = {
    functions: functionNames,
    names: Object.keys(workbook.names),
    sheets: workbook.sheets.map((sheet) => sheet.name),
  };
  const sound = filledDown();
  return (formula, sheet) => {
    if (sound.like(formula, sheet, null)) return null;
    const outcome = checkFormula(formula, known);
    if (!outcome.ok) return wordFormulaFault(outcome.fault, formula);
    sound.learn(formula, sheet, outcome.value, (one) => writeReading(one, sheet));
    return null;
  };
}

const refusalsTold = 10;

/** The same for every formula that a difference brings in; where it brings several, each refusal with its cell on a line of
 *  its own. A formula
 *  that only goes along with something else was taken before: it is refused for nothing that was wrong with it then. */
export function refuseFormula(workbook: Workbook, difference: Difference, isTyped: boolean): string | null {
  const refusalAfter = refusalsIn(withWordsOf(workbook, difference));
  const refusalBefore = refusalsIn(workbook);
  const refusals: { readonly place: string; readonly sentence: string }[] = [];
  for (const change of difference) {
    if (change.type !== 'cell' || !change.after || !isFormula(change.after.content)) continue;
    const sentence = refusalAfter(change.after.content.formula, change.sheet);
    if (sentence === null) continue;
    const before = change.before?.content ?? null;
    if (!isTyped && isFormula(before) && refusalBefore(before.formula, change.sheet) !== null) continue;
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
