import { facingTape } from '../allowances/facing.ts';
import { staplesAndPins } from '../allowances/fasteners.ts';
import { allowance, thisShop } from '../allowances/lines.ts';
import { type AllowanceTable, allowancesSheet } from '../allowances/sheet.ts';
import { stock } from '../allowances/stock.ts';
import { wrapping } from '../allowances/wrap.ts';
import { wrapCount } from '../allowances/wraps.ts';
import { check, dollars, figured, given, heading, words } from '../cells.ts';
import { type Line, line } from '../form.ts';
import { rowsFrom } from '../sentences.ts';

const [fraction] = stock;
if (!fraction) throw new Error('The stock has no finest mark.');

/** How near the outer face may come to the dew point before it is worth a look. */
const margin: readonly Line[] = [
  fraction,
  allowance(
    'dry_margin',
    'Warmer than the dew point by',
    {
      asks: 'How many degrees must the outer face stay above the dew point, so that it is not worth a look?',
      least: 0,
      most: 30,
      why: 'more than 30 °F is another climate',
      usual: 2,
    },
    { content: 2, unit: 'degF' },
    thisShop,
  ),
];

/** Invented prices of a roll, in the order of the wraps. */
const prices = [62, 71, 79, 88, 104] as const;

/** A price to each line of the table of wraps. */
function rollPrices(firstRow: number): AllowanceTable {
  const rows = rowsFrom(firstRow + 1, wrapCount);
  return {
    lines: [
      line(heading('Price of a roll'), heading('Price'), heading('Where it comes from'), heading('Check')),
      ...rows.map((_, index) => {
        const name = `A${index + 2}`;
        return line(
          figured(`IF(${name}="","",${name})`),
          given(
            {
              asks: 'What does a roll of this wrap cost?',
              least: 0.01,
              most: 10_000,
              why: 'no roll of duct wrap costs more',
              mayBeBlank: true,
            },
            { content: prices[index] ?? null, ...dollars },
          ),
          words(thisShop),
          check(
            `IF(${name}="","",IF(B${firstRow + 1 + index}="","look: without its price this wrap is compared without money","holds"))`,
          ),
        );
      }),
    ],
    blocks: { roll_prices: `B${firstRow + 1}:B${firstRow + wrapCount}` },
  };
}

export const allowances = allowancesSheet({
  wraps: true,
  groups: [wrapping, margin, facingTape, staplesAndPins],
  tables: [rollPrices],
});
