import { failed, type Outcome } from '../../base/outcome.ts';
import { type LaborHours, laborHours, type Task } from '../../trade/price/labor.ts';
import { optional, quantity, text } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { cellList } from '../cell-list.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { optionalNumberColumn, table } from '../table.ts';
import type { Step } from '../working.ts';
import { laborFromOwn, ownFigures } from './cautions.ts';

/** The columns of the `labor` table: a row for each kind of work, with one of the two. */
const laborColumns = {
  hours_each: optionalNumberColumn('ratio', {
    says: 'hours for one foot, pound, piece or whatever the work is counted by',
    least: 0,
    most: 10_000,
  }),
  per_hour: optionalNumberColumn('ratio', {
    says: 'how many feet, pounds or pieces one person does in an hour',
    least: 0.001,
    most: 100_000,
  }),
};

/** Invented labor units, for examples and tests only. */
export const exampleLabor: readonly (readonly (string | number | null)[])[] = [
  ['work', 'hours each', 'per hour'],
  ['hang straight duct, ft', 0.08, null],
  ['hang a fitting, each', 0.75, null],
  ['shop work, lb', null, 40],
];

const named = text({ says: 'the work of each row, by its name in the table', most: 80 });
const counted = quantity('ratio', {
  says: 'how much of it there is, beside each name',
  least: 0,
  most: 10_000_000,
  why: 'no job of a shop has ten million of anything to do',
});

/** Hours of work by labor units. Faults: `unlike_lists`, `half_a_pair`, `no_row`, `no_labor_unit`. Source: the table. */
export const priceHours = defineFunction({
  name: 'PRICE.HOURS',
  says: 'Hours of work by your own labor units, for one kind of work or for a whole list.',
  words: [
    'labor hours',
    'man hours',
    'labor units',
    'how long will it take',
    'installation time',
    'shop hours',
  ],
  gives: { label: 'Hours', unit: 'ratio' },
  arguments: {
    work: cellList(named),
    amounts: cellList(counted),
    labor: table(laborColumns, { says: 'the table of labor units, headings included' }),
    difficulty: optional(
      quantity('ratio', {
        says: 'the factor for the place: 1 for a plain one, 1.2 where it takes a fifth longer',
        least: 0.1,
        most: 10,
        why: 'work that takes ten times as long is other work',
      }),
      1,
      'the units are then taken as they stand',
    ),
  },
  formula: [
    String.raw`\text{hours} = \text{difficulty} \times \sum_i \text{amounts}_i \times \text{hours each}_i, \quad \text{hours each} = \frac{1}{\text{per hour}}`,
  ],
  work: ({ work, amounts, labor, difficulty }): Outcome<LaborHours, CallFault> => {
    if (work.length !== amounts.length) {
      return failed({ code: 'unlike_lists', argument: 'amounts', got: amounts.length, wanted: work.length });
    }
    const tasks: Task[] = [];
    for (const [index, name] of work.entries()) {
      const amount = amounts[index] ?? null;
      if (name === null && (amount === null || amount === 0)) continue;
      if (name === null) return halfAPair(index, 'amounts', 'work');
      if (amount === null) return halfAPair(index, 'work', 'amounts');
      const row = labor.find(name);
      if (!row.ok) return row;
      const { hours_each: hoursEach, per_hour: perHour } = row.value;
      tasks.push({ unit: { work: name, hoursEach, perHour }, quantity: amount });
    }
    return fromTrade(laborHours(tasks, difficulty));
  },
  result: ({ hours }) => hours,
  steps: ({ tasks, plain, hours }, { difficulty }): readonly Step[] => [
    ...tasks.map(
      ({ unit, quantity: amount, hours: taken }): Step => ({
        label: begun(unit.work),
        sum:
          unit.perHour === null
            ? `${figure(amount, 4)} × ${figure(unit.hoursEach ?? 0, 5)}`
            : `${figure(amount, 4)} ÷ ${figure(unit.perHour, 5)}`,
        value: taken,
        unit: 'ratio',
        source: 'labor-units',
      }),
    ),
    {
      label: 'Together',
      sum: tasks.length === 0 ? 'nothing to do' : tasks.map((one) => figure(one.hours, 4)).join(' + '),
      value: plain,
      unit: 'ratio',
    },
    {
      label: 'Hours',
      sum: `${figure(plain, 4)} × ${figure(difficulty, 4)}`,
      value: hours,
      unit: 'ratio',
      source: 'price-arithmetic',
    },
  ],
  cautions: () => [laborFromOwn, ownFigures],
  sources: ['price-arithmetic', 'labor-units'],
  examples: [
    {
      says: '60 ft of straight duct and five fittings where work takes a fifth longer',
      given: {
        work: [['hang straight duct, ft'], ['hang a fitting, each']],
        amounts: [[60], [5]],
        labor: exampleLabor,
        difficulty: 1.2,
      },
      gives: 10.26,
      tolerance: 1e-9,
    },
    {
      says: '552 lb made in the shop at 40 lb an hour',
      given: { work: 'shop work, lb', amounts: 552, labor: exampleLabor },
      gives: 13.8,
      tolerance: 1e-9,
    },
  ],
});

function halfAPair(index: number, has: string, lacks: string) {
  return failed({ code: 'half_a_pair', row: index + 1, has, lacks } as const);
}

/** A name as the label of a step. */
function begun(name: string): string {
  return /^[A-Z]/.test(name)
    ? name
    : name.replace(/^[a-z]/, (letter) => letter.toUpperCase()).replace(/^(?![A-Z])/, 'Work: ');
}
