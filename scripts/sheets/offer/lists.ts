import {
  check,
  count,
  dollars,
  figured,
  figureHeading,
  given,
  heading,
  hours,
  onBelow,
  words,
} from '../cells.ts';
import { type Form, form } from '../form.ts';
import { allBlank, firstOf, ifFilled } from '../sentences.ts';
import { table } from '../table.ts';

export const things = table({
  sheet: 'Things',
  first: 2,
  count: 24,
  columns: ['thing', 'first', 'second', 'unit', 'check', 'own', 'each', 'first_cost', 'second_cost'],
});

export const works = table({
  sheet: 'Work',
  first: 2,
  count: 12,
  columns: ['work', 'first', 'second', 'unit', 'check', 'first_hours', 'second_hours'],
});

const many = (choice: string, what: string) => ({
  asks: `How much of it does the ${choice} choice take?`,
  least: 0,
  most: 100_000,
  why: `no house takes 100,000 ${what}`,
  mayBeBlank: true,
});

export const thingsForm: Form = form({
  id: 'things',
  name: 'Things',
  says: 'List what each choice takes, by the names of the price table on Allowances; what only one takes stays blank for the other.',
  widths: [20, 7, 8, 10, 15, 10, 9, 11, 11],
  lines: [
    things.line({
      thing: heading('Thing'),
      first: heading('First'),
      second: heading('Second'),
      unit: heading('Of what'),
      check: heading('Check'),
      own: heading('Own price'),
      each: figureHeading('Each'),
      first_cost: figureHeading('First'),
      second_cost: figureHeading('Second'),
    }),
    ...things.rows.map((row) => {
      const at = (column: Parameters<typeof things.at>[0]) => things.at(column, row);
      const cost = (choice: 'first' | 'second') =>
        figured(`IF(OR(${at(choice)}="",COUNT(${at('each')})=0),"",${at(choice)}*${at('each')})`, dollars);
      return things.line({
        thing: given({ asks: 'What is it called in the table of prices?', mayBeBlank: true }),
        first: given(many('first', 'of a thing'), count),
        second: given(many('second', 'of a thing'), count),
        unit: given({ asks: 'Of what: sheets, rolls, bags, pieces?', mayBeBlank: true }),
        own: given(
          {
            asks: 'What does one cost, where the table of prices is not to decide?',
            least: 0.01,
            most: 1_000_000,
            why: 'nothing here is free or costs over a million',
            mayBeBlank: true,
          },
          dollars,
        ),
        check: check(
          firstOf(
            [allBlank(row, ['A', 'B', 'C', 'D', 'F']), '""'],
            [`${at('thing')}=""`, '"stop: this line has a number but no name"'],
            [`AND(${at('first')}="",${at('second')}="")`, '"stop: still to fill in: how much of it"'],
            [`${at('each')}=""`, '"stop: no price of this name on Allowances; give it one of its own"'],
            [`COUNTIF(${things.beside('thing')},${at('thing')})>1`, '"look: this thing stands on two lines"'],
          ),
        ),
        each: figured(
          `IF(${at('own')}<>"",${at('own')},IF(${at('thing')}="","",IFERROR(INDEX(price_each,MATCH(${at('thing')},price_names,0)),"")))`,
          dollars,
        ),
        first_cost: cost('first'),
        second_cost: cost('second'),
      });
    }),
    things.line({
      thing: words('Total'),
      first_cost: figured(`SUM(${things.beside('first_cost')})`, dollars),
      second_cost: figured(`SUM(${things.beside('second_cost')})`, dollars),
    }),
  ],
});

export const workForm: Form = form({
  id: 'work',
  name: 'Work',
  says: 'List the work of each choice, by the names of the labor table on Allowances.',
  widths: [21, 8, 8, 14, 16, 9, 10],
  lines: [
    works.line({
      work: heading('Work'),
      first: heading('First'),
      second: heading('Second'),
      unit: heading('Unit'),
      check: heading('Check'),
      first_hours: figureHeading('First, h'),
      second_hours: figureHeading('Second, h'),
    }),
    ...works.rows.map((row) => {
      const at = (column: Parameters<typeof works.at>[0]) => works.at(column, row);
      const isKnown = `ISNUMBER(MATCH(${at('work')},labor_names,0))`;
      const taken = (choice: 'first' | 'second') =>
        figured(
          `IF(OR(${at('work')}="",${at(choice)}=""),"",IF(${isKnown},PRICE.HOURS(${at('work')},${at(choice)},labor,difficulty),""))`,
          hours,
        );
      return works.line({
        work: given({ asks: 'Which work is it, by its name in the table of labor?', mayBeBlank: true }),
        first: given(many('first', 'units of work'), hours),
        second: given(many('second', 'units of work'), hours),
        unit: figured(
          ifFilled(at('work'), `IFERROR(INDEX(labor_units,MATCH(${at('work')},labor_names,0)),"")`),
          onBelow,
        ),
        check: check(
          firstOf(
            [allBlank(row, ['A', 'B', 'C']), '""'],
            [`${at('work')}=""`, '"stop: this line has a number but no work"'],
            [`AND(${at('first')}="",${at('second')}="")`, '"stop: still to fill in: how much of it"'],
            [`NOT(${isKnown})`, '"stop: no work of this name in the table of labor on Allowances"'],
          ),
        ),
        first_hours: taken('first'),
        second_hours: taken('second'),
      });
    }),
    works.line({
      work: words('Total'),
      first_hours: figured(`SUM(${works.beside('first_hours')})`, hours),
      second_hours: figured(`SUM(${works.beside('second_hours')})`, hours),
    }),
  ],
});
