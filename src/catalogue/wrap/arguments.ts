import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Quantity } from '../../base/quantity.ts';
import { cornerRules } from '../../trade/wrap/geometry.ts';
import { installedOverThickness } from '../../trade/wrap/stretch-out.ts';
import { choice, optional, quantity, text } from '../argument.ts';
import type { CallFault } from '../fault.ts';
import { type Row, type Table, table } from '../table.ts';
import { wrapColumns } from '../wraps.ts';

export type WrapRow = Row<typeof wrapColumns>;
export type WrapTable = Table<typeof wrapColumns>;

/** Every function of a wrap asks for its name and for the table that it stands in. */
export const wrapArguments = {
  wrap: text({ says: 'the name of the wrap, as in the first column of the table', most: 80 }),
  wraps: table(wrapColumns, { says: 'the table of wraps, headings included' }),
};

export const lapArgument = optional(
  quantity('in', {
    says: 'how far the facing laps over itself at the long seam',
    least: 0,
    most: 12,
    why: 'a lap takes a few inches of wrap; over a foot is most likely a slip',
  }),
  2,
  'the published tables include a lap of 2 in',
);

export const cornersArgument = optional(
  choice(cornerRules, {
    says: 'how the wrap goes round the corners of a rectangular duct: bent at full thickness, folded sharp, or by the middle of its thickness',
  }),
  'bent',
  'wrap bends round a corner; for round duct this does not matter',
);

export const cutArgument = quantity('in', {
  says: 'the cut length of the wrap, once round with its lap',
  least: 1,
  most: 800,
  why: 'no shop duct is that far round, so it is most likely a slip of the unit',
});

export const runLength = quantity('in', {
  says: 'the length of the straight run, in inches',
  least: 1,
  most: 12_000,
  why: 'a run over 1,000 ft is most likely a slip of the unit',
});

/** The row of the named wrap, when its two thicknesses can be true. Faults: `no_row`, `installed_over_thickness`. */
export function installedOf(name: string, wraps: WrapTable): Outcome<WrapRow, CallFault> {
  const row = wraps.find(name);
  if (!row.ok) return row;
  const { installed, thickness } = row.value;
  return installed > thickness
    ? failed({ code: 'trade', fault: installedOverThickness({ name, installed, thickness }) })
    : row;
}

/** A size of the roll, which only pieces, rolls and facing tape need. Faults: `no_roll_size`. */
export function rollSize<U extends 'in' | 'ft'>(
  wrap: string,
  column: string,
  size: Quantity<U> | null,
): Outcome<Quantity<U>, CallFault> {
  return size === null
    ? failed({ code: 'trade', fault: { code: 'no_roll_size', wrap, column } })
    : done(size);
}
