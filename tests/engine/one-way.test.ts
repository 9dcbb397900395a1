import { expect, test } from 'vitest';
import { done } from '../../src/base/outcome.ts';
import { quantity } from '../../src/catalogue/argument.ts';
import { defineFunction } from '../../src/catalogue/call.ts';
import { createCalculator } from '../../src/engine/create.ts';
import { book } from './sheets.ts';

function counting() {
  let asked = 0;
  const dear = defineFunction({
    name: 'AREA.DEAR',
    says: 'A trial that counts how often it is asked.',
    gives: { label: 'Area', unit: 'sqft' },
    words: [],
    formula: [],
    sources: [],
    examples: [],
    arguments: {
      width: quantity('in', { says: 'the width', least: 1, most: 120, why: 'the bench is no larger' }),
    },
    work: ({ width }) => {
      asked += 1;
      return done({ area: width });
    },
    result: ({ area }) => area,
    steps: () => [],
  });
  return { dear, asked: () => asked };
}

test('IF works out the way that is taken, and not the other', async () => {
  const { dear, asked } = counting();
  const calculator = createCalculator({ functions: [dear] });
  const told = await calculator.open(
    book({
      S: [
        [
          5,
          '',
          '=IF(B1="","",AREA.DEAR(A1))',
          '=IF(A1>1,AREA.DEAR(A1),AREA.DEAR(2))',
          '=IF(A1<1,AREA.DEAR(A1))',
        ],
      ],
    }),
  );
  expect(told.map(({ value }) => value)).toEqual(['', 5, false]);
  expect(asked()).toBe(1);
});

test('a condition that is no plain yes or no is judged as before', async () => {
  const calculator = createCalculator({ functions: [] });
  const told = await calculator.open(
    book({
      S: [
        [3, 'words', '=IF(A1,"yes","no")', '=IF(0,"yes","no")', '=IF(1/0,"yes","no")', '=IF(B1,"yes","no")'],
      ],
    }),
  );
  const values = told.map(({ value }) => value);
  expect(values.slice(0, 2)).toEqual(['yes', 'no']);
  expect(values[2]).toMatchObject({ fault: 'divided_by_zero' });
  expect(values[3]).toMatchObject({ fault: 'wrong_kind' });
});
