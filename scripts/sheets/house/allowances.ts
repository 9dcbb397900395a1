import type { Question } from '../../../src/workbook/document.ts';
import { check, count, dollars, factor, feet, feetAMinute, frictionRate, given, heading, inches, onBelow, share, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { allowances as ofTrunk } from '../round-trunk/allowances.ts';

const invented = 'this shop (invented)';
const memory = 'from memory, not verified';

type Limits = Pick<Question, 'least' | 'most' | 'why'>;

function allowed(
  name: string,
  label: string,
  content: number,
  more: Parameters<typeof given>[1],
  asks: string,
  [least, most, why]: readonly [number, number, string],
  source: string,
): Line {
  const limits: Limits = { least, most, why };
  return namedLine(
    name,
    words(label),
    given({ asks, ...limits, usual: content }, { content, ...more }),
    words(source),
  );
}

const fast = [200, 3000, 'air in a house duct moves at a few hundred to some 1,500 fpm'] as const;

const sizing: readonly Line[] = [
  emptyLine,
  line(heading('Sizing'), null, heading('Where it comes from')),
  allowed('rate_low', 'Friction rate, low', 0.06, frictionRate, 'Under which friction rate shall it be worth a look?', [0.005, 0.5, 'no duct of a house is sized for less'], memory),
  allowed('rate_high', 'Friction rate, high', 0.15, frictionRate, 'Over which friction rate shall it be worth a look?', [0.02, 1, 'more than that is a large building'], 'handbook text: 0.15'),
  allowed('air_apart', 'Air and loads, apart', 0.15, share, 'How far may the air of the blower lie from what the loads ask for?', [0.01, 0.5, 'more than half is another blower'], invented),
  allowed('trunk_speed', 'Fastest air in a trunk', 900, feetAMinute, 'How fast may the air move in a trunk?', fast, `900 fpm, ${memory}`),
  allowed('flex_speed', 'Fastest air in a branch', 700, feetAMinute, 'How fast may the air move in a branch?', fast, `700 fpm, ${memory}`),
  allowed('round_step', 'Round trunk, steps of', 1, inches, 'In which steps is round trunk made?', [0.5, 2, 'pipe is made in steps of half an inch to 2 in'], invented),
  allowed('width_step', 'Rectangular, steps of', 2, inches, 'In which steps of width is rectangular trunk made?', [0.5, 4, 'steps over 4 in waste metal'], invented),
  allowed('smallest_side', 'Rectangular, least width', 8, inches, 'How narrow is a trunk made at least?', [4, 24, 'narrower than 4 in is no trunk'], invented),
  allowed('aspect_most', 'Rectangular, how flat', 4, factor, 'How many times its depth may a trunk be wide?', [1, 12, 'flatter than 12 to 1 is not made'], 'house practice 4; a naval handbook wants 3 and allows 6'),
  allowed('smallest_flex', 'Smallest branch', 5, inches, 'Which is the smallest flex that the shop hangs?', [3, 10, 'flex for a room is 3 to 10 in at least'], invented),
  namedLine(
    'flex_step',
    words('Flex, steps of'),
    given({ asks: 'In which steps of diameter is flex stocked?', least: 0.5, most: 2, why: 'flex is stocked in steps of half an inch to 2 in', usual: 1 }, { content: 1, ...inches }),
    words(invented),
    check('IF(OR(flex_step=0.5,flex_step=1,flex_step=2),"holds","stop: steps are 1/2, 1 or 2 in")'),
  ),
  allowed('flex_roughness', 'Flex, roughness', 0.003, { unit: 'ft', format: { type: 'decimal', places: 4 } }, 'How rough is flex at full stretch?', [0.0001, 0.02, 'no duct is smoother or rougher'], 'handbook class: 0.003 ft at most'),
  allowed('flex_slack', 'Flex, slack', 0.04, share, 'How far short of full stretch does flex lie?', [0, 0.45, 'flex that lies over 45 % short is a heap'], 'this shop pulls it tight; let go, about 15 % (trade journal, 2010)'),
  allowed('flex_bag', 'Flex in a bag', 25, feet, 'How much flex is in a bag?', [5, 100, 'bags hold 5 to 100 ft'], 'common practice, no source'),
  allowed('flex_waste', 'Flex, waste', 0.1, share, 'What share of flex is lost at the ends?', [0, 1, 'more waste than flex is a slip'], invented),
  allowed('flex_ties', 'Ties to a branch', 4, count, 'How many ties does a branch get, core and jacket at both ends?', [0, 12, 'more than 12 is a slip'], 'common practice: core and jacket, both ends'),
  allowed('tie_bag', 'Ties in a bag', 100, count, 'How many ties are in a bag?', [1, 10_000, 'a bag holds at least one'], invented),
  emptyLine,
  line(heading('Hanging'), null, heading('Where it comes from')),
  allowed('hang_spacing', 'Trunk, hangers apart', 96, inches, 'How far apart are the hangers of the trunk at most?', [12, 120, 'the work specification for homes allows 10 ft'], 'work specification for homes: 10 ft; this shop 8 ft'),
  allowed('hang_drop', 'Drop to the trunk', 12, inches, 'How far below the structure does the trunk hang?', [0, 120, 'more than 10 ft below is no attic'], invented),
  allowed('flex_spacing', 'Flex, supports apart', 48, inches, 'How far apart is flex supported?', [12, 120, 'flex sags between supports'], 'flex standard of 2010: 4 ft'),
  allowed('flex_strap', 'Strap at a support of flex', 36, inches, 'How much strap does a support of flex take?', [6, 120, 'a support takes half a foot to 10 ft'], invented),
  allowed('strap_roll', 'Strap in a roll', 100, feet, 'How much strap is in a roll?', [5, 1000, 'rolls are 5 to 1,000 ft long'], invented),
];

const laborUnits = [
  ['Make duct', 0.045, 'lb of metal, layout to seam'],
  ['Wrap duct', 0.02, 'sq ft of wrap, cut, put on, taped'],
  ['Seal metal', 0.025, 'ft of joint or seam'],
  ['Hang trunk', 0.12, 'ft of trunk, joined and hung'],
  ['Run a branch', 0.75, 'each, tap to boot'],
  ['Set and test a system', 4, 'each, with balancing'],
] as const;

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

const laborFirst = ofTrunk.sheet.rows.length + sizing.length + 2;
const laborLast = laborFirst + laborUnits.length;
const priceFirst = laborLast + 2;
const priceLast = priceFirst + prices.length + spare;

const tables: readonly Line[] = [
  emptyLine,
  line(...['Work', 'Hours each', 'Where it comes from', 'Check', 'For'].map(heading)),
  ...laborUnits.map(([work, each, per], index) =>
    line(
      words(work),
      given(
        { asks: `How many hours does one ${per} take?`, least: 0, most: 40, why: 'nothing here takes a week for each', usual: each },
        { content: each, unit: 'ratio', format: { type: 'decimal', places: 3 } },
      ),
      words(invented),
      check(`IF(B${laborFirst + index + 1}=0,"look: this work then costs nothing","holds")`),
      words(per, onBelow),
    ),
  ),
  emptyLine,
  line(...['Thing', 'Price', 'Where it comes from', 'Check'].map(heading)),
  ...Array.from({ length: prices.length + spare }, (_, index) => priceLine(priceFirst + index + 1, prices[index])),
];

function priceLine(row: number, known?: readonly [name: string, price: number]): Line {
  const open = known ? {} : { mayBeBlank: true };
  return line(
    given({ asks: 'What is it called on the order?', ...open }, { content: known?.[0] ?? null }),
    given(
      { asks: 'What does one sheet, roll, bag, box or piece of it cost?', least: 0.01, most: 10_000, why: 'nothing on the order is free or costs more than $10,000', ...open },
      { content: known?.[1] ?? null, ...dollars },
    ),
    given({ asks: 'Where does this price come from?', mayBeBlank: true }, { content: known ? invented : null }),
    figuredCheck(row),
  );
}

function figuredCheck(row: number) {
  return check(
    `IF(AND(A${row}="",B${row}=""),"",IF(OR(A${row}="",B${row}=""),"look: name and price belong together","holds"))`,
  );
}

const own = form({
  id: ofTrunk.sheet.id,
  name: 'Allowances',
  says: ofTrunk.sheet.says,
  widths: [],
  lines: [...ofTrunk.sheet.rows.map((cells): Line => ({ cells })), ...sizing, ...tables],
  blocks: {
    labor: `A${laborFirst}:B${laborLast}`,
    price_names: `A${priceFirst + 1}:A${priceLast}`,
    price_each: `B${priceFirst + 1}:B${priceLast}`,
  },
});

/** The allowances of a trunk, and what a whole house needs besides. */
export const houseAllowances: Form = {
  sheet: { ...own.sheet, columns: ofTrunk.sheet.columns },
  names: { ...ofTrunk.names, ...own.names },
};
