import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../../src/catalogue/argument.ts';
import type { AnyTradeFunction } from '../../../src/catalogue/define.ts';
import { priceBuy } from '../../../src/catalogue/price/buy.ts';
import { priceCompare } from '../../../src/catalogue/price/compare.ts';
import { priceDiscount } from '../../../src/catalogue/price/discount.ts';
import { exampleLabor, priceHours } from '../../../src/catalogue/price/hours.ts';
import { priceJob } from '../../../src/catalogue/price/job.ts';
import { priceMargin, priceMarkup } from '../../../src/catalogue/price/margin.ts';
import { priceMarginOf, priceMarkupFor } from '../../../src/catalogue/price/markup-and-margin.ts';
import { priceOverhead } from '../../../src/catalogue/price/overhead.ts';
import { priceFoot } from '../../../src/catalogue/price/per.ts';
import { sayMoney } from '../../../src/catalogue/say.ts';
import { wordFault } from '../../../src/catalogue/wording.ts';

const set = { numRuns: 200 };
const amount = fc.double({ min: 0.01, max: 1e7, noNaN: true });
const margin = fc.double({ min: 0, max: 0.9, noNaN: true });

function worked(spec: AnyTradeFunction, ...raw: readonly RawArgument[]) {
  const outcome = spec.call(raw);
  if (!outcome.ok) throw new Error(wordFault(outcome.fault));
  return outcome.value;
}

const figureOf = (spec: AnyTradeFunction, ...raw: readonly RawArgument[]) =>
  Number(worked(spec, ...raw).value);

function refusal(spec: AnyTradeFunction, ...raw: readonly RawArgument[]): string {
  const outcome = spec.call(raw);
  if (outcome.ok) throw new Error(`${spec.name} gave ${outcome.value.value}.`);
  return wordFault(outcome.fault);
}

it('a margin turned into a markup and back is the same margin, and both give the same price', () => {
  fc.assert(
    fc.property(amount, margin, (cost, share) => {
      const markup = figureOf(priceMarkupFor, share);
      expect(figureOf(priceMarginOf, markup)).toBeCloseTo(share, 12);
      const price = figureOf(priceMargin, cost, share);
      expect(figureOf(priceMarkup, cost, markup) / price).toBeCloseTo(1, 12);
      expect(figureOf(priceMargin, cost * 2, share)).toBeGreaterThan(price);
    }),
    set,
  );
});

it('the working of a margin shows what the same number as a markup would give', () => {
  const steps = worked(priceMargin, 100, 0.2).steps();
  expect(steps.map((step) => step.value)).toEqual([0.25, 120, 125]);
});

it('an exact amount is not rounded, and a cent only where it is asked for', () => {
  expect(figureOf(priceMargin, 3128.67, 0.18)).toBeCloseTo(3815.4512195, 6);
  expect(figureOf(priceMargin, 3128.67, 0.18, 'cents')).toBe(3815.45);
});

it('waste as a share of what is bought is never less than the same waste added', () => {
  fc.assert(
    fc.property(amount, margin, (needed, waste) => {
      const [added, bought] = ['added', 'of bought'].map((meaning) =>
        figureOf(priceBuy, needed, waste, meaning),
      );
      expect(bought).toBeGreaterThanOrEqual((added ?? 0) - 1e-6);
    }),
    set,
  );
});

describe('hours of a list', () => {
  it('add up row by row, and leave blank rows out', () => {
    const work = [['hang straight duct, ft'], [null], ['shop work, lb']];
    expect(figureOf(priceHours, work, [[10], [null], [80]], exampleLabor)).toBeCloseTo(2.8, 12);
  });

  it('ask for what is missing in a row', () => {
    expect(refusal(priceHours, [['shop work, lb']], [[null]], exampleLabor)).toMatch(
      /Row 1 has something in the work but nothing in the amounts/,
    );
    expect(refusal(priceHours, [[null]], [[5]], exampleLabor)).toMatch(/nothing in the work/);
    expect(refusal(priceHours, 'sing', 1, exampleLabor)).toMatch(/no row “sing”/);
    expect(
      refusal(priceHours, 'idle', 1, [
        ['work', 'hours each'],
        ['idle', null],
      ]),
    ).toMatch(/no labor unit/);
    expect(refusal(priceOverhead, [[100], [200]], [[0.1], [null]])).toMatch(/nothing in the rates/);
  });
});

describe('the price of a job', () => {
  it('grows with each of its costs and is never below its cost', () => {
    fc.assert(
      fc.property(
        amount,
        amount,
        margin,
        fc.constantFrom('margin', 'markup'),
        (material, labor, profit, is) => {
          const price = (metal: number, work: number) =>
            figureOf(priceJob, metal, work, null, 0.1, 50, profit, is, 0.07, 'purchase');
          const was = price(material, labor);
          expect(price(material + 1, labor)).toBeGreaterThan(was);
          expect(price(material, labor + 1)).toBeGreaterThan(was);
          expect(was).toBeGreaterThanOrEqual(1.1 * (1.07 * material + labor) + 50 - 1e-6);
        },
      ),
      set,
    );
  });

  it('says when no overhead is in it, and when a tax rate taxes nothing', () => {
    const says = worked(priceJob, 100, 100, null, null, null, 0.1, null, 0.07, 'none')
      .cautions()
      .map((one) => one.sentence);
    expect(says).toContainEqual(expect.stringMatching(/No overhead is in this price/));
    expect(says).toContainEqual(expect.stringMatching(/nothing is taxed/));
  });

  it('has the tax on the material sold at its share of the price', () => {
    // Half of the cost is material, so half of the price of 250 is taxed.
    expect(figureOf(priceJob, 100, 100, null, null, null, 0.2, null, 0.1, 'material sold')).toBeCloseTo(
      262.5,
      9,
    );
    expect(figureOf(priceJob, 100, 100, null, null, null, 0.2, null, 0.1, 'all')).toBeCloseTo(275, 9);
    expect(figureOf(priceJob, 100, 100, null, null, null, 0.2, null, 0.1, 'purchase')).toBeCloseTo(262.5, 9);
  });
});

it('a discount larger than the margin is said to sell below cost', () => {
  const says = worked(priceDiscount, 0.2, 0.3).cautions();
  expect(says.map((one) => one.sentence)).toContainEqual(expect.stringMatching(/below its cost/));
});

it('two prices compared one way and the other undo each other', () => {
  // A price a million times the other would lose its digits in the share, which is then close to −1.
  const quote = fc.double({ min: 10, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(quote, quote, (first, second) => {
      expect(figureOf(priceCompare, first, second)).toBe(-figureOf(priceCompare, second, first) + 0);
      const there = 1 + figureOf(priceCompare, first, second, 'share');
      const back = 1 + figureOf(priceCompare, second, first, 'share');
      expect(there * back).toBeCloseTo(1, 9);
    }),
    set,
  );
});

it('a price by the foot takes its length in inches, as every length comes', () => {
  expect(figureOf(priceFoot, 300, 480)).toBe(7.5);
});

it('money is written with its cents and thousands', () => {
  expect([0, 5, 1340.625, -0.001, -12.5, 1234567.891].map(sayMoney)).toEqual([
    '$0.00',
    '$5.00',
    '$1,340.63',
    '$0.00',
    '−$12.50',
    '$1,234,567.89',
  ]);
});
