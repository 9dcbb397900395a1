import { check, count, dollars, figured, figureHeading, heading, onBelow, words } from '../cells.ts';
import { type Form, form, type Line, line } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { saysStop } from '../stops.ts';
import { wholeUp } from '../whole.ts';
import {
  blanks,
  branches,
  flexCount,
  flexIsUnderCode,
  gauges,
  type Plan,
  rooms,
  seals,
  trunk,
  unlessBlank,
  wraps,
} from './plan.ts';

/** What every house takes: its name, how many and of what, each as a formula. */
const things = [
  ['"Reducer"', seals.from('steps', seals.last + 1), '"one at each step of the trunk"'],
  ['"End cap"', seals.from('caps', seals.last + 1), '"one at each end of the trunk"'],
  ['"Boot with register"', branches.from('branches', branches.last + 1), '"one at each branch"'],
  ['job_wrap', 'wrap_rolls', '"rolls, as on Allowances"'],
  ['"Joint tape"', 'joint_tape_rolls', '"rolls of "&tape_roll&" ft"'],
  ['"Mastic"', 'mastic_pails', '"pails of "&mastic_pail&" gal"'],
  ['"Facing tape"', 'facing_tape_rolls', '"rolls of "&facing_roll&" ft"'],
  ['"Screws"', 'screw_boxes', '"boxes of "&screw_box'],
  ['"Staples"', 'staple_boxes', '"boxes of "&staple_box'],
  ['"Pins with clips"', 'pin_boxes', '"boxes of "&pin_box'],
  ['"Ties for flex"', 'tie_bags', '"bags of "&tie_bag'],
  ['"Hanger strap"', 'strap_rolls', '"rolls of "&strap_roll&" ft"'],
] as const;

/** Where the lines of the order stand, under its heading and the check over all of it. */
const firstItem = 3;
const firstFlex = firstItem + things.length;
const firstCollar = firstFlex + flexCount;
const firstMetal = firstCollar + flexCount;
const lastItem = firstMetal + gauges.rows.length - 1;
const flexSizes = `G${firstFlex}:G${firstFlex + flexCount - 1}`;

/** What a house takes, item by item, for the Price sheet and whoever goes to the counter. */
export const itemCosts = `Order!E${firstItem}:E${lastItem}`;

/** A number that is short of a room would be ordered unseen, so the order stops with it. */
function isWhole(plan: Plan): string {
  return firstOf(
    [`COUNT(${rooms.all('airflow')})=0`, '"look: no room gets its air yet; begin on Rooms and Trunk"'],
    [flexIsUnderCode(plan), '"stop: the flex has less R than the code asks for; see Rooms"'],
    [`${saysStop(rooms.all('check'))}`, '"stop: the order is without a room; see the checks on Rooms"'],
    [`${saysStop(trunk.all('check'))}`, '"stop: the order is without a section; see the checks on Trunk"'],
    [
      `COUNTIF(${blanks.all('fit')},"holds")<COUNT(${blanks.all('width')})`,
      '"stop: a blank is larger than the stock sheet; see Blanks"',
    ],
    ['NOT(wrap_is_ready)', '"stop: the order is without the wrap; see Wrap"'],
    [saysStop(wraps.all('check')), '"stop: a wrap has less R than the code asks for; see Wrap"'],
    [
      `SUM(${gauges.all('sheets')})<SUM(${blanks.all('sheets')})`,
      '"stop: there is no room for so many gauges"',
    ],
    [
      `COUNTIF(${branches.all('flex')},">"&MAX(${flexSizes}))>0`,
      '"stop: there is no room for so many sizes of flex"',
    ],
    [
      `COUNTIF(D${firstItem}:D${lastItem},"no price")>0`,
      '"look: a thing has no price on Allowances, so the cost is without it"',
    ],
  );
}

export function orderForm(plan: Plan): Form {
  return form({
    id: 'order',
    name: 'Order',
    says: 'What the house takes, in the units that the counter sells; nothing is to be filled in here.',
    widths: [18, 13, 22, 9, 10, 2, 8],
    lines: [
      line(...['To order', 'How many', 'Of what'].map(heading), figureHeading('Each'), figureHeading('Cost')),
      line(words('The whole house'), check(isWhole(plan)), words('do not order while this says stop')),
      ...things.map(([name, quantity, of], index) => item(firstItem + index, name, quantity, of)),
      ...Array.from({ length: flexCount }, (_, index) => flexItem(firstFlex + index, index)),
      ...Array.from({ length: flexCount }, (_, index) => collarItem(firstCollar + index, firstFlex + index)),
      ...gauges.rows.map((row, index) =>
        item(
          firstMetal + index,
          `IF(${gauges.from('gauge', row)}="","",${gauges.from('item', row)})`,
          `IF(${gauges.from('gauge', row)}="","",${gauges.from('sheets', row)})`,
          '"sheets "&sheet_width&" × "&sheet_length&" in"',
        ),
      ),
    ],
    blocks: { order: `A1:C${lastItem}` },
  });
}

/** Blank where the house has none, so that only what is needed has a cost. A thing without a price says so. */
function item(row: number, name: string, quantity: string, of: string): Line {
  return line(
    figured(name),
    figured(quantity, count),
    figured(unlessBlank(`A${row}`, of), onBelow),
    figured(
      `IF(OR(B${row}="",B${row}=0),"",IFERROR(INDEX(price_each,MATCH(A${row},price_names,0)),"no price"))`,
      dollars,
    ),
    figured(`IF(COUNT(D${row})=0,"",B${row}*D${row})`, dollars),
  );
}

/** The sizes of flex that the house has, the smallest first. */
function flexSize(row: number, index: number): string {
  const all = branches.all('flex');
  if (index === 0) return `IF(COUNT(${all})=0,"",MIN(${all}))`;
  const smaller = `G${row - 1}`;
  return `IF(${smaller}="","",IF(COUNTIF(${all},">"&${smaller})=0,"",MINIFS(${all},${all},">"&${smaller})))`;
}

function flexItem(row: number, index: number): Line {
  const size = `G${row}`;
  const whole = `SUMIF(${branches.all('flex')},${size},${branches.all('bought')})`;
  const { cells } = item(
    row,
    unlessBlank(size, `"Flex "&${size}&" in, R-"&flex_r`),
    unlessBlank(size, wholeUp(`${whole}*(1+flex_waste)/flex_bag`)),
    '"bags of "&flex_bag&" ft, joined"',
  );
  return line(...cells, null, figured(flexSize(row, index), { ...count, unit: 'in' }));
}

function collarItem(row: number, flexRow: number): Line {
  const size = `G${flexRow}`;
  return item(
    row,
    unlessBlank(size, `"Collar "&${size}&" in"`),
    unlessBlank(size, `SUMIF(${branches.all('flex')},${size},${branches.all('branches')})`),
    '"tap collars, one to a branch"',
  );
}
