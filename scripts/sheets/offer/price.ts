import type { Cell } from '../../../src/workbook/document.ts';
import {
  check,
  dollars,
  figured,
  figureHeading,
  given,
  heading,
  hours,
  onBelow,
  share,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { firstOf } from '../sentences.ts';
import { saysStop } from '../stops.ts';
import { things, works } from './lists.ts';

interface PriceLine {
  readonly label: string;
  readonly formula: (column: 'B' | 'C', of: (label: string) => string) => string;
  readonly more: Partial<Cell>;
  readonly says: string;
  /** Whether a difference of the two choices means anything. */
  readonly compares?: true;
}

const firstRow = 2;

const part = (column: 'B' | 'C'): 'first' | 'second' => (column === 'B' ? 'first' : 'second');

const job =
  (what: string): PriceLine['formula'] =>
  (_, of) =>
    `IF(${of('Direct cost')}=0,"",PRICE.JOB(${of('Material')},${of('Labor')},${of('Other')},overhead_rate,,margin,"margin",tax_rate,taxed,"at the end","${what}"))`;

const lines: readonly PriceLine[] = [
  {
    label: 'Things, as listed',
    formula: (column) => things.from(`${part(column)}_cost`, things.last + 1),
    more: dollars,
    says: 'from Things',
    compares: true,
  },
  {
    label: 'Material',
    formula: (_, of) => `${of('Things, as listed')}*(1+material_waste)`,
    more: dollars,
    says: 'with the waste on Allowances; 0 where whole packs are listed',
    compares: true,
  },
  {
    label: 'Hours',
    formula: (column) => works.from(`${part(column)}_hours`, works.last + 1),
    more: hours,
    says: 'from Work',
    compares: true,
  },
  {
    label: 'Labor',
    formula: (_, of) => `PRICE.LABOR(${of('Hours')},wage,burden)`,
    more: dollars,
    says: 'hours at the wage with its burden',
    compares: true,
  },
  {
    label: 'Direct cost',
    formula: (_, of) => `${of('Material')}+${of('Labor')}+${of('Other')}`,
    more: dollars,
    says: 'what the job itself costs',
    compares: true,
  },
  {
    label: 'Cost with overhead',
    formula: job('cost'),
    more: dollars,
    says: 'direct cost, tax on buying, and the part of rent, truck and office',
    compares: true,
  },
  {
    label: 'Left for the shop',
    formula: job('profit'),
    more: dollars,
    says: 'the margin, in money',
    compares: true,
  },
  {
    label: 'Price before tax',
    formula: job('price'),
    more: dollars,
    says: 'without the tax that the customer pays',
    compares: true,
  },
  {
    label: 'Customer’s tax',
    formula: job('tax'),
    more: dollars,
    says: 'by what is taxed',
    compares: true,
  },
  {
    label: 'To pay',
    formula: job('total'),
    more: { ...dollars, style: { bold: true } },
    says: 'what the offer says',
    compares: true,
  },
  {
    label: 'The margin as a markup',
    formula: () => 'PRICE.MARKUPFOR(margin)',
    more: { ...share, format: { type: 'percent', places: 1 } },
    says: 'the same money as a share of the cost: not the same number',
  },
  {
    label: 'That number as a markup',
    formula: (_, of) =>
      `IF(${of('Cost with overhead')}="","",PRICE.MARKUP(${of('Cost with overhead')},margin))`,
    more: dollars,
    says: 'what a slip of the two would ask for: too little',
  },
];

/** Other cost is filled in between what is figured, so its row has no formula. */
const otherRow = firstRow + lines.length + 2;

function cellOf(column: 'B' | 'C', label: string): string {
  if (label === 'Other') return `${column}${otherRow}`;
  const at = lines.findIndex((one) => one.label === label);
  if (at < 0) throw new Error(`Price has no line ${label}.`);
  return `${column}${firstRow + at}`;
}

const ofChosen = (label: string) => `IF(chosen="second",${cellOf('C', label)},${cellOf('B', label)})`;
export const toPay = { first: `Price!${cellOf('B', 'To pay')}`, second: `Price!${cellOf('C', 'To pay')}` };
export const mayGoOut = `Price!B${otherRow + 5}`;

export const priceForm: Form = form({
  id: 'price',
  name: 'Price',
  says: 'The two choices beside each other, from cost to price; fill in what else each costs.',
  widths: [23, 10, 10, 9, 24],
  lines: [
    line(
      heading('From cost to price'),
      figureHeading('First'),
      figureHeading('Second'),
      figureHeading('Apart'),
      heading('What it is'),
    ),
    ...lines.map((one, index): Line => {
      const row = firstRow + index;
      const cell = (column: 'B' | 'C') =>
        figured(
          one.formula(column, (label) => cellOf(column, label)),
          one.more,
        );
      const apart = `IF(COUNT(B${row}:C${row})<2,"",C${row}-B${row})`;
      return line(
        words(one.label),
        cell('B'),
        cell('C'),
        one.compares ? figured(apart, one.more) : null,
        words(one.says, onBelow),
      );
    }),
    emptyLine,
    line(heading('Besides'), null, null, null, null),
    line(
      words('Other direct cost'),
      other('first'),
      other('second'),
      null,
      words('a permit, rent of a lift, a helper', onBelow),
    ),
    emptyLine,
    line(heading('The choice that is sold'), null, null, null, null),
    {
      cells: [words('Hours'), figured(ofChosen('Hours'), hours), null, null, words('of the choice on Job')],
      name: { is: 'labor_hours', at: 1 },
    },
    {
      cells: [
        words('Price'),
        figured(ofChosen('To pay'), { ...dollars, style: { bold: true } }),
        null,
        null,
        words('with the tax that the customer pays'),
      ],
      name: { is: 'price', at: 1 },
    },
    line(
      words('May it go out?'),
      check(
        firstOf(
          [
            `AND(COUNTA(${things.all('thing')})=0,COUNTA(${works.all('work')})=0)`,
            '"look: nothing is listed yet; begin on Things and Work"',
          ],
          [saysStop(things.all('check')), '"stop: a thing has no price or no number; see Things"'],
          [saysStop(works.all('check')), '"stop: some work has no hours; see Work"'],
          [
            `AND(chosen="second",COUNT(${things.all('second')})+COUNT(${works.all('second')})=0)`,
            '"stop: the second choice is sold, and nothing is listed for it"',
          ],
          [
            `AND(chosen="first",COUNT(${things.all('first')})+COUNT(${works.all('first')})=0)`,
            '"stop: the first choice is sold, and nothing is listed for it"',
          ],
          ['margin<least_margin', '"look: the margin is under what the shop wants at least"'],
        ),
      ),
      null,
      null,
      words('do not send the offer while this says stop', onBelow),
    ),
  ],
});

function other(choice: string): Cell {
  return given(
    {
      asks: `What else does the ${choice} choice cost: a permit, a lift, a helper?`,
      least: 0,
      most: 1_000_000,
      why: 'no house costs a million',
      usual: 0,
    },
    { content: 0, ...dollars },
  );
}
