import { done, failed, type Outcome } from '../base/outcome.ts';
import type { CellFault } from '../base/value.ts';
import { checkFormula } from '../formula/check.ts';
import { engineText } from '../formula/engine-text.ts';
import { type Expression, withoutGroups } from '../formula/expression.ts';
import type { FormulaFault } from '../formula/fault.ts';
import { referencesIn } from '../formula/references.ts';
import { wordFormulaFault } from '../formula/wording.ts';
import { filledDown, type Written } from './filled-down.ts';
import { withPlaces } from './named-places.ts';
import type { Names } from './names.ts';
import { type Reach, reachOf } from './reach.ts';
import { type ReadColumns, readColumns } from './read-columns.ts';
import { spillFault, unreadableFault } from './wording.ts';

/** A formula that the engine may see, as the engine writes it, with what it reads; or why the engine must not see it. */
export type ReadFormula = { readonly text: string } & (
  | { readonly type: 'sound'; readonly written: string; readonly reaches: readonly Reach[] }
  | { readonly type: 'refused'; readonly fault: CellFault }
);

export interface FormulaReader {
  /** Reads a formula as it stands in a sheet (its name in small letters), perhaps below one that is alike. */
  readonly read: (text: string, sheet: string, above?: unknown) => ReadFormula;
  /** The same for an expression outside any cell, which may come to a block. */
  readonly readFreely: (text: string, sheet: string) => ReadFormula;
  /** Refuses from now on a formula that was seen to give more than one value. */
  readonly refuseSpill: (text: string) => void;
  /** The columns that all formulas read so far reach into. */
  readonly columns: ReadColumns;
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
  /** What stands in cells, by sheet and text; shape trees are not kept, since a large book has many. */
  const remembered = new Map(
    about.sheets.map((sheet) => [sheet.toLowerCase(), new Map<string, ReadFormula>()]),
  );
  const spilling = new Set<string>();
  const pattern = filledDown();
  const columns = readColumns();

  function check(text: string): Checked {
    try {
      const outcome = checkFormula(text, known);
      if (outcome.ok) return done(withPlaces(outcome.value, about.names));
      const { code } = outcome.fault;
      return failed({ code, cell: refused(wordFormulaFault(outcome.fault, text)) });
    } catch (error) {
      if (error instanceof RangeError) return failed({ code: 'unreadable', cell: unreadableFault }); // out of stack
      throw error;
    }
  }

  function reading(text: string, sheet: string, checked: Checked): ReadFormula {
    if (!checked.ok) return { text, type: 'refused', fault: checked.fault.cell };
    const own = writeReading(checked.value, sheet);
    for (const reach of own.reaches) columns.add(reach);
    return { text, type: 'sound', ...own };
  }

  return {
    columns,
    read: (text, sheet, above) => {
      const own = remembered.get(sheet);
      const known = own?.get(text);
      if (known) return known;
      // One that is alike reads the columns of the first of its kind.
      const like = spilling.size === 0 ? pattern.like(text, sheet, above) : null;
      if (like) return like;
      let checked = spilling.has(text) ? failed(spill) : check(text);
      // Kept in a cell, a block would show a fault there and yet be handed on.
      if (checked.ok && withoutGroups(checked.value).type === 'range') checked = failed(spill);
      const read = reading(text, sheet, checked);
      if (checked.ok) pattern.learn(text, sheet, checked.value, (one) => writeReading(one, sheet));
      own?.set(text, read);
      return read;
    },
    readFreely: (text, sheet) => {
      const alone = check(text);
      if (alone.ok || alone.fault.code !== 'range_for_a_value') return reading(text, sheet, alone);
      const inCall = check(`COUNTA(${text})`); // a block may not stand alone in a cell but as an argument
      const [block] = inCall.ok && inCall.value.type === 'call' ? inCall.value.arguments : [];
      return reading(text, sheet, block && block.type !== 'missing' ? done(block) : alone);
    },
    refuseSpill: (text) => {
      spilling.add(text);
      for (const own of remembered.values()) own.delete(text);
    },
  };
}

type Checked = Outcome<Expression, Refusal>;

interface Refusal {
  readonly code: FormulaFault['code'] | 'unreadable' | 'spill';
  readonly cell: CellFault;
}

const spill: Refusal = { code: 'spill', cell: spillFault };

function refused(sentence: string): CellFault {
  return { fault: 'refused', sentence };
}

/** Writes a sound expression for the engine, with what it reads. */
export function writeReading(expression: Expression, sheet: string): Written {
  return { written: engineText(expression), reaches: reachesOf(expression, sheet) };
}

/** Every block that an expression reads, in the order of writing; names have been replaced before. */
function reachesOf(expression: Expression, ownSheet: string): readonly Reach[] {
  return referencesIn(expression).flatMap((reference) =>
    reference.type === 'name' ? [] : [reachOf(reference, ownSheet)],
  );
}
