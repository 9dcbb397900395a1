import { done, failed, type Outcome } from '../base/outcome.ts';
import { type CellValue, isFault } from '../base/value.ts';
import { type Argument, isBlock, type RawArgument } from './argument.ts';
import type { CallFault } from './fault.ts';

/** One value or a block of cells, read cell by cell, row by row, as `one` reads a single value; a blank cell is null. */
export function cellList<T>(one: Argument<T>): Argument<readonly (T | null)[]> {
  const { usual: _, ...rest } = one;
  return {
    ...rest,
    allows: `${one.allows}; one value, or a block of them`,
    read: (raw, argument) => {
      const values: (T | null)[] = [];
      for (const cell of cellsOf(raw)) {
        if (cell === null || cell === '') {
          values.push(null);
          continue;
        }
        if (isFault(cell)) return failed({ code: 'argument_in_fault', argument, fault: cell });
        const outcome: Outcome<T, CallFault> = one.read(cell, argument);
        if (!outcome.ok) return outcome;
        values.push(outcome.value);
      }
      return done(values);
    },
  };
}

function cellsOf(raw: RawArgument): readonly CellValue[] {
  return isBlock(raw) ? raw.flat() : [raw];
}
