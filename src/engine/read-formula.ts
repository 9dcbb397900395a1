import type { CellFault } from '../base/value.ts';
import { checkFormula } from '../formula/check.ts';
import { engineText } from '../formula/engine-text.ts';
import { type Expression, withoutGroups } from '../formula/expression.ts';
import { parseFormula } from '../formula/parse.ts';
import { referencesIn } from '../formula/references.ts';
import { wordFormulaFault } from '../formula/wording.ts';
import { type Names, rangeOver } from './names.ts';
import type { Reach } from './reach.ts';
import { spillFault } from './wording.ts';

/** A formula that the engine may see, as the engine writes it, with what it reads; or why the engine must not see it. */
export type ReadFormula = { readonly text: string } & (
  | { readonly type: 'sound'; readonly written: string; readonly reaches: readonly Reach[] }
  | { readonly type: 'refused'; readonly fault: CellFault }
);

export interface FormulaReader {
  /** Reads a formula as it stands in a sheet (its name in small letters). */
  readonly read: (text: string, sheet: string) => ReadFormula;
  /** The same for an expression outside any cell, which may come to a block. */
  readonly readFreely: (text: string, sheet: string) => ReadFormula;
  /** Refuses from now on a formula that was seen to give more than one value. */
  readonly refuseSpill: (text: string) => void;
}

/** Knows the functions, names and sheets of one book; remembers what it has read, since filled-down formulas repeat. */
export function formulaReader(about: {
  readonly functions: readonly string[];
  readonly names: Names;
  readonly sheets: readonly string[];
}): FormulaReader {
  const known = {
    functions: about.functions,
    names: [...about.names.values()].map((one) => one.name),
    sheets: about.sheets,
  };
  const remembered = new Map<string, Expression | CellFault>();

  function check(text: string): Expression | CellFault {
    const outcome = checkFormula(text, known);
    return outcome.ok ? outcome.value : refused(wordFormulaFault(outcome.fault, text));
  }

  function reading(text: string, sheet: string, checked: Expression | CellFault): ReadFormula {
    if ('fault' in checked) return { text, type: 'refused', fault: checked };
    return {
      text,
      type: 'sound',
      written: engineText(checked),
      reaches: reachesOf(checked, sheet, about.names),
    };
  }

  return {
    read: (text, sheet) => {
      const checked = remembered.get(text) ?? check(text);
      remembered.set(text, checked);
      return reading(text, sheet, checked);
    },
    readFreely: (text, sheet) => {
      const parsed = parseFormula(text);
      if (!parsed.ok || withoutGroups(parsed.value).type !== 'range')
        return reading(text, sheet, check(text));
      const inCall = `COUNTA(${text})`; // a block is fine as an argument, so it is checked as one
      const outcome = checkFormula(inCall, known);
      return reading(
        text,
        sheet,
        outcome.ok ? parsed.value : refused(wordFormulaFault(outcome.fault, inCall)),
      );
    },
    refuseSpill: (text) => remembered.set(text, spillFault),
  };
}

function refused(sentence: string): CellFault {
  return { fault: 'refused', sentence };
}

/** Every block that an expression reads, in the order of writing. */
function reachesOf(expression: Expression, ownSheet: string, names: Names): readonly Reach[] {
  return referencesIn(expression).flatMap((reference) => {
    if (reference.type === 'name') {
      const named = names.get(reference.name.toLowerCase());
      return named ? [named.reach] : [];
    }
    const [from, to] = reference.type === 'cell' ? [reference, reference] : [reference.start, reference.end];
    return [{ sheet: reference.sheet?.toLowerCase() ?? ownSheet, range: rangeOver(from, to) }];
  });
}
