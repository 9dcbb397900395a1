import { check, dollars, given, heading } from '../cells.ts';
import { type Line, line } from '../form.ts';
import { thisShop as invented } from './lines.ts';
import type { AllowanceTable } from './sheet.ts';

/** What things cost in this invented shop. */
const prices: readonly (readonly [name: string, price: number])[] = [
  ['Sheet metal, 28 ga', 34],
  ['Sheet metal, 26 ga', 38],
  ['Sheet metal, 24 ga', 47],
  ['Sheet metal, 22 ga', 58],
  ['Reducer', 22],
  ['End cap', 9],
  ...[4, 5, 6, 7, 8, 9, 10, 12, 14].flatMap(
    (size) =>
      [
        [`Flex ${size} in, R-6`, 24 + 4 * size],
        [`Flex ${size} in, R-8`, 28 + 5 * size],
      ] as const,
  ),
  ...[4, 5, 6, 7, 8, 9, 10, 12, 14].map((size) => [`Collar ${size} in`, 3 + size * 0.75] as const),
  ['Boot with register', 24],
  ['R-4 wrap', 62],
  ['R-5 wrap', 70],
  ['R-6 wrap', 78],
  ['R-8 wrap', 84],
  ['R-11 wrap', 110],
  ['Joint tape', 18],
  ['Mastic', 26],
  ['Facing tape', 21],
  ['Screws', 14],
  ['Staples', 6],
  ['Pins with clips', 34],
  ['Ties for flex', 15],
  ['Hanger strap', 16],
];

/** Lines that the shop may still add. */
const spare = 6;

/** The table of prices, whose heading stands in `first`. */
export function priceList(first: number): AllowanceTable {
  const count = prices.length + spare;
  return {
    lines: [
      line(...['Thing to order', 'Price', 'Where it comes from', 'Check'].map(heading)),
      ...Array.from({ length: count }, (_, index) => priceLine(first + index + 1, prices[index])),
    ],
    blocks: {
      prices: `A${first}:B${first + count}`,
      price_names: `A${first + 1}:A${first + count}`,
      price_each: `B${first + 1}:B${first + count}`,
    },
  };
}

function priceLine(row: number, known?: readonly [name: string, price: number]): Line {
  const open = known ? {} : { mayBeBlank: true };
  return line(
    given({ asks: 'What is it called on the order?', ...open }, { content: known?.[0] ?? null }),
    given(
      {
        asks: 'What does one sheet, roll, bag, box or piece of it cost?',
        least: 0.01,
        most: 10_000,
        why: 'nothing on the order is free or costs more than $10,000',
        ...open,
      },
      { content: known?.[1] ?? null, ...dollars },
    ),
    given(
      { asks: 'Where does this price come from?', mayBeBlank: true },
      { content: known ? invented : null },
    ),
    figuredCheck(row),
  );
}

function figuredCheck(row: number) {
  return check(
    `IF(AND(A${row}="",B${row}=""),"",IF(OR(A${row}="",B${row}=""),"look: name and price belong together","holds"))`,
  );
}
