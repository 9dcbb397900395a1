import { figured, given, heading, words } from '../cells.ts';
import { type Line, line } from '../form.ts';
import { thisShop } from './lines.ts';
import type { AllowanceTable } from './sheet.ts';
import { wrapCount } from './wraps.ts';

const gauges = [30, 28, 26, 24, 22, 20, 18] as const;

/** Everything else that an order for a trunk may name, by the words of the order. */
const others = [
  'Joint tape',
  'Mastic',
  'Facing tape',
  'Screws',
  'Staples',
  'Pins with clips',
  'End caps',
  'Tap collars',
] as const;

/** What the shop pays for each thing that it orders. The shop fills them in: a template knows no prices. */
export function pricesTable(firstRow: number): AllowanceTable {
  const lines: readonly Line[] = [
    line(heading('Thing to order'), heading('Price'), heading('Where it comes from')),
    ...gauges.map((gauge) => priceLine(words(`Sheet metal, ${gauge} ga`), 'a sheet')),
    ...others.map((item) => priceLine(words(item), 'a roll, pail, box or piece')),
    ...Array.from({ length: wrapCount }, (_, index) =>
      priceLine(figured(`IF(A${index + 2}="","",A${index + 2})`), 'a roll'),
    ),
  ];
  return { lines, blocks: { prices: `A${firstRow}:B${firstRow + lines.length - 1}` } };
}

function priceLine(item: Line['cells'][number], of: string): Line {
  return line(
    item,
    given(
      {
        asks: `What does this shop pay for ${of}?`,
        least: 0.01,
        most: 100_000,
        why: 'nothing is had for nothing, and no stock costs as much as a house',
        mayBeBlank: true,
      },
      { unit: 'money' },
    ),
    words(thisShop.replace(' (invented)', '')),
  );
}
