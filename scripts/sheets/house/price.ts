import { dollars, figured, given, heading, hours, onBelow, share, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { itemCosts } from './order.ts';
import { blanks, branches, type Plan, seals } from './plan.ts';

const works = (plan: Plan) =>
  [
    ['Make duct', blanks.from('weight', blanks.last + 1), 'lb', 'in the shop'],
    ['Wrap duct', 'wrap_area', 'sq ft', 'in the shop'],
    ['Seal metal', 'metal_to_seal/12', 'ft', 'in the shop'],
    ['Hang trunk', `${blanks.from('length', blanks.last + 1)}/12`, 'ft', 'at the house'],
    ['Run a branch', branches.from('branches', branches.last + 1), 'each', 'at the house'],
    [
      'Set and test a system',
      `IF(${seals.from('joints', seals.last + 1)}=0,0,${plan.systems.length})`,
      'each',
      'at the house',
    ],
  ] as const;

/** What a line says about itself, over the columns that only work needs. */
const remark = { across: 3, ...onBelow };

const dear = { least: 0, most: 1_000_000, why: 'a house does not cost a million' };
const part = (least: number, most: number, why: string) => ({ least, most, why });

type Limits = { readonly least: number; readonly most: number; readonly why: string };

const money = asked(dollars);
const rate = asked(share);

export function priceForm(plan: Plan): Form {
  const listed = works(plan);
  const lastWork = listed.length + 1;
  return form({
    id: 'price',
    name: 'Price',
    says: 'Say what an hour costs and what the shop must earn; read here the hours, the cost and the price.',
    widths: [23, 13, 6, 8, 20],
    lines: [
      line(...['Work', 'How much', 'Unit', 'Hours', 'Where'].map(heading)),
      ...listed.map(([work, amount, unit, where], index): Line => {
        const row = index + 2;
        const factor = where === 'at the house' ? 'difficulty' : '1';
        return line(
          words(work),
          figured(amount, hours),
          words(unit),
          figured(`PRICE.HOURS(A${row},B${row},labor,${factor})`, hours),
          words(where),
        );
      }),
      namedLine(
        'labor_hours',
        words('Hours in all'),
        figured(`SUM(D2:D${lastWork})`, hours),
        words('by the table of labor on Allowances', remark),
        null,
        null,
      ),
      emptyLine,
      line(heading('Cost'), null, heading('What it is'), null, null),
      namedLine(
        'material',
        words('Material'),
        figured(`SUM(${itemCosts})`, dollars),
        words('whole sheets, rolls, bags and boxes of the order; waste is in them', remark),
        null,
        null,
      ),
      money(
        'wage',
        'Wage of an hour',
        28,
        'What is paid for an hour of work?',
        { ...dear, most: 300 },
        'before burden; an outlook handbook of 2023 has a median of $28.26',
      ),
      rate(
        'burden',
        'Burden on the wage',
        0.43,
        'What share comes on top of the wage for taxes, insurance and benefits?',
        part(0, 3, 'a burden over three times the wage is a slip'),
        '43 % on the bare wage in construction, federal statistics of June 2022',
      ),
      namedLine(
        'labor_cost',
        words('Labor'),
        figured('PRICE.LABOR(labor_hours,wage,burden)', dollars),
        words('hours with their burden', remark),
        null,
        null,
      ),
      money(
        'other_cost',
        'Other direct cost',
        0,
        'What else does this house cost: a permit, a lift, a helper?',
        dear,
        'permits, rent of tools, subcontracts',
      ),
      rate(
        'overhead_rate',
        'Overhead',
        0.2,
        'Which share of the direct cost must the house carry of rent, truck and office?',
        part(0, 3, 'overhead over three times the direct cost is a slip'),
        'this shop (invented); a year of it over a year of direct cost',
      ),
      rate(
        'margin',
        'Margin',
        0.15,
        'Which share of the price shall be left when all is paid?',
        part(0, 0.9, 'no work leaves more than nine tenths of its price'),
        'a share of the price, not of the cost: 15 % of the price is 17.6 % on the cost',
      ),
      rate(
        'tax_rate',
        'Sales tax',
        0,
        'Which rate of sales tax is due? 0 for none.',
        part(0, 0.2, 'no sales tax is above 20 %'),
        'ask the state; it differs by place and contract',
      ),
      namedLine(
        'taxed',
        words('Tax is due on'),
        given(
          {
            asks: 'What is the sales tax due on: the material when it is bought, the material when it is sold, or all of it?',
            choices: ['none', 'purchase', 'material sold', 'all'],
            usual: 'purchase',
          },
          { content: 'purchase' },
        ),
        words('in most states a contractor pays it on buying', remark),
        null,
        null,
      ),
      emptyLine,
      line(heading('Price'), null, null, null, null),
      namedLine('direct_cost', words('Cost with overhead'), figured(job('cost'), dollars)),
      namedLine('profit', words('Left for the shop'), figured(job('profit'), dollars)),
      namedLine(
        'price',
        words('The house is sold for'),
        figured(job('total'), { ...dollars, style: { bold: true } }),
        words('with the tax that the customer pays', remark),
        null,
        null,
      ),
    ],
  });
}

function job(what: 'cost' | 'profit' | 'total'): string {
  return `IF(labor_hours=0,"",PRICE.JOB(material,labor_cost,other_cost,overhead_rate,,margin,"margin",tax_rate,taxed,"at the end","${what}"))`;
}

/** A cost or a share that the shop fills in: `dollars` or `share` says which. */
function asked(more: typeof dollars) {
  return (name: string, label: string, content: number, asks: string, limits: Limits, says: string): Line =>
    namedLine(
      name,
      words(label),
      given({ asks, ...limits, usual: content }, { content, ...more }),
      words(says, remark),
      null,
      null,
    );
}
