import { laborTable } from '../allowances/labor.ts';
import { allowance, chosen, thisShop } from '../allowances/lines.ts';
import { priceList } from '../allowances/price-list.ts';
import { allowancesSheet } from '../allowances/sheet.ts';
import { dollars, factor, share } from '../cells.ts';
import type { Line } from '../form.ts';

function rate(
  name: string,
  label: string,
  content: number,
  asks: string,
  [most, why]: readonly [number, string],
  source: string,
): Line {
  return allowance(name, label, { asks, least: 0, most, why, usual: content }, { content, ...share }, source);
}

const rates: readonly Line[] = [
  allowance(
    'wage',
    'Wage of an hour',
    {
      asks: 'What is paid for an hour of work, before burden?',
      least: 0,
      most: 300,
      why: 'no wage of a shop is over $300 an hour',
      usual: 28,
    },
    { content: 28, ...dollars },
    'this shop; the federal outlook handbook of 2023 has a median of $28.26',
  ),
  rate(
    'burden',
    'Burden on the wage',
    0.43,
    'What share comes on top of the wage for taxes, insurance and benefits?',
    [3, 'a burden over three times the wage is a slip'],
    'federal statistics of June 2022, construction: 43 % on the bare wage',
  ),
  allowance(
    'difficulty',
    'How hard to work there',
    {
      asks: 'How much longer does the work take there than usual? 1 for as usual.',
      least: 0.5,
      most: 3,
      why: 'work that takes three times as long is another job',
      usual: 1,
    },
    { content: 1, ...factor },
    thisShop,
  ),
  rate(
    'material_waste',
    'Waste of material',
    0,
    'What share of material is lost beyond the whole packs that are listed?',
    [1, 'more waste than material is a slip'],
    'this shop: none, since whole packs are listed',
  ),
  rate(
    'overhead_rate',
    'Overhead',
    0.2,
    'Which share of the direct cost must a job carry of rent, truck and office?',
    [3, 'overhead over three times the direct cost is a slip'],
    'this shop (invented): a year of it over a year of direct cost',
  ),
  rate(
    'margin',
    'Margin',
    0.15,
    'Which share of the price shall be left when all is paid?',
    [0.9, 'no work leaves more than nine tenths of its price'],
    'this shop (invented); a share of the price',
  ),
  rate(
    'least_margin',
    'Margin, the least',
    0.08,
    'Under which margin is the price worth a look?',
    [0.9, 'no work leaves more than nine tenths of its price'],
    thisShop,
  ),
  rate(
    'tax_rate',
    'Sales tax',
    0,
    'Which rate of sales tax is due? 0 for none.',
    [0.2, 'no sales tax is above 20 %'],
    'ask the state; it differs by place and contract',
  ),
  chosen(
    'taxed',
    'Tax is due on',
    'purchase',
    'What is the sales tax due on: nothing, the material when it is bought, the material when it is sold, or all of it?',
    ['none', 'purchase', 'material sold', 'all'],
    'most states: on buying (common practice, no source)',
  ),
];

export const allowances = allowancesSheet({
  wraps: false,
  groups: [rates],
  tables: [laborTable, priceList],
});
