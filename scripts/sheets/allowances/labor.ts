import { check, given, heading, onBelow, words } from '../cells.ts';
import { line } from '../form.ts';
import { thisShop } from './lines.ts';
import type { AllowanceTable } from './sheet.ts';

/** What each kind of work takes, in this invented shop. */
const laborUnits = [
  ['Make duct', 0.045, 'lb of metal, layout to seam'],
  ['Wrap duct', 0.02, 'sq ft of wrap, cut, put on, taped'],
  ['Seal metal', 0.025, 'ft of joint or seam'],
  ['Hang trunk', 0.12, 'ft of trunk, joined and hung'],
  ['Run a branch', 0.75, 'each, tap to boot'],
  ['Set and test a system', 4, 'each, with balancing'],
] as const;

/** The table of labor, whose heading stands in `first`. */
export function laborTable(first: number): AllowanceTable {
  return {
    lines: [
      line(...['Work', 'Hours each', 'Where it comes from', 'Check', 'For'].map(heading)),
      ...laborUnits.map(([work, each, per], index) =>
        line(
          words(work),
          given(
            {
              asks: `How many hours does one ${per} take?`,
              least: 0,
              most: 40,
              why: 'nothing here takes a week for each',
              usual: each,
            },
            { content: each, unit: 'ratio', format: { type: 'decimal', places: 3 } },
          ),
          words(thisShop),
          check(`IF(B${first + index + 1}=0,"look: this work then costs nothing","holds")`),
          words(per, onBelow),
        ),
      ),
    ],
    blocks: {
      labor: `A${first}:B${first + laborUnits.length}`,
      labor_names: `A${first}:A${first + laborUnits.length}`,
      labor_units: `E${first}:E${first + laborUnits.length}`,
    },
  };
}
