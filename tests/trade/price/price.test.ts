import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feet, money, pounds } from '../../../src/base/quantity.ts';
import { roundMoney, toCents } from '../../../src/trade/price/cents.ts';
import { compare, pricePerFoot, pricePerPound } from '../../../src/trade/price/compare.ts';
import { centRules, type JobCosts, jobPrice, salesTax } from '../../../src/trade/price/job.ts';
import { laborCost, laborHours, workerCost } from '../../../src/trade/price/labor.ts';
import {
  marginAfterDiscount,
  marginOfMarkup,
  markupForMargin,
  priceByMargin,
  priceByMarkup,
} from '../../../src/trade/price/margin.ts';
import { materialCost, toBuy } from '../../../src/trade/price/material.ts';
import { breakEven, overheadOn, overheadPerHour } from '../../../src/trade/price/overhead.ts';

const set = { numRuns: 500 };
const amount = fc.double({ min: 0, max: 1e7, noNaN: true });
const share = fc.double({ min: 0, max: 0.9, noNaN: true });

function value<T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!outcome.ok) throw new Error('A fault where a figure was wanted.');
  return outcome.value;
}

describe('money to the cent', () => {
  it('takes half a cent up, also where binary fractions fall short of it', () => {
    expect(toCents(money(1250 * 1.0725))).toBe(1340.63);
    expect(toCents(money(1.005))).toBe(1.01);
    expect(toCents(money(-1.005))).toBe(-1.01);
    expect(toCents(money(2.675))).toBe(2.68);
    expect(toCents(money(999_999.994))).toBe(999_999.99);
    expect(toCents(money(-0.001))).toBe(0);
  });

  it('is a whole number of cents, within half a cent, and stays where it is', () => {
    fc.assert(
      fc.property(amount, (exact) => {
        const rounded = toCents(money(exact));
        expect(Math.abs(rounded - exact)).toBeLessThanOrEqual(0.005 + 1e-8);
        expect(rounded).toBe(Number(rounded.toFixed(2)));
        expect(toCents(rounded)).toBe(rounded);
        expect(roundMoney(money(exact), 0.05, 'up')).toBeGreaterThanOrEqual(exact - 1e-5);
        expect(roundMoney(money(exact), 5, 'down')).toBeLessThanOrEqual(exact + 1e-5);
      }),
      set,
    );
  });

  it('up or down leaves a whole cent alone', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (cents) => {
        for (const rounding of ['nearest', 'up', 'down'] as const) {
          expect(roundMoney(money(cents / 100), 0.01, rounding)).toBe(cents / 100 + 0);
        }
      }),
      set,
    );
  });
});

describe('margin and markup', () => {
  it('undo each other, and give the same price', () => {
    fc.assert(
      fc.property(share, amount, (margin, cost) => {
        const markup = markupForMargin(margin);
        expect(marginOfMarkup(markup)).toBeCloseTo(margin, 12);
        expect(priceByMarkup(money(cost), markup) / (priceByMargin(money(cost), margin) || 1)).toBeCloseTo(
          cost === 0 ? 0 : 1,
          12,
        );
      }),
      set,
    );
  });

  it('of the same number differ, and the margin asks the higher price', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.9, noNaN: true }), (rate) => {
        expect(priceByMargin(money(100), rate)).toBeGreaterThan(priceByMarkup(money(100), rate));
      }),
      set,
    );
  });

  it('leave nothing after a discount as large as the margin, and less than nothing after a larger one', () => {
    expect(marginAfterDiscount(0.3, 0.3)).toBeCloseTo(0, 12);
    expect(marginAfterDiscount(0.3, 0.4)).toBeLessThan(0);
    expect(marginAfterDiscount(0.3, 0)).toBeCloseTo(0.3, 12);
  });
});

describe('material', () => {
  it('with waste as a share of what is bought is more than with the same share added', () => {
    fc.assert(
      fc.property(amount, share, (needed, waste) => {
        const added = toBuy(needed, waste, 'added', null).bought;
        const bought = toBuy(needed, waste, 'of bought', null).bought;
        expect(bought).toBeGreaterThanOrEqual(added - 1e-6);
        expect(bought * (1 - waste)).toBeCloseTo(needed, 4);
      }),
      set,
    );
  });

  it('comes in whole packs that cover it, and not one more', () => {
    fc.assert(
      fc.property(amount, fc.double({ min: 1, max: 500, noNaN: true }), (needed, pack) => {
        const { packs, bought } = toBuy(needed, 0, 'added', pack);
        expect(bought).toBeGreaterThanOrEqual(needed - 1e-8 * Math.max(pack, needed));
        expect(bought - pack).toBeLessThan(needed * (1 + 1e-8) + 1e-8);
        expect(bought).toBe((packs ?? 0) * pack);
      }),
      set,
    );
  });

  it('costs its price and the tax on it', () => {
    const { beforeTax, tax, cost } = materialCost(toBuy(100, 0, 'added', null), money(2), 0.05);
    expect([beforeTax, tax, cost]).toEqual([200, 10, 210]);
  });
});

describe('labor', () => {
  const straight = { work: 'straight', hoursEach: 0.08, perHour: null };

  it('takes hours for each, or a number in an hour, and not both or neither', () => {
    const shop = { work: 'shop', hoursEach: null, perHour: 40 };
    const hours = value(
      laborHours(
        [
          { unit: straight, quantity: 60 },
          { unit: shop, quantity: 552 },
        ],
        1.5,
      ),
    );
    expect(hours.plain).toBeCloseTo(4.8 + 13.8, 9);
    expect(hours.hours).toBeCloseTo(27.9, 9);
    expect(laborHours([{ unit: { ...straight, hoursEach: null }, quantity: 1 }], 1)).toMatchObject({
      fault: { code: 'no_labor_unit', hasBoth: false },
    });
    expect(laborHours([{ unit: { ...straight, perHour: 2 }, quantity: 1 }], 1)).toMatchObject({
      fault: { code: 'no_labor_unit', hasBoth: true },
    });
  });

  it('costs the wage and its burden', () => {
    expect(laborCost(10, money(28), 0.5)).toEqual({ rate: 42, cost: 420 });
  });

  it('of a worker stops paying a capped tax past its base', () => {
    const job = {
      wage: money(28),
      paidHours: 2080,
      productiveHours: 1700,
      payrollTax: 0,
      capped: [{ rate: 0.006, base: money(7000) }],
      insurance: 0,
      benefits: money(0),
    };
    expect(value(workerCost(job, 'productive')).cappedTaxes).toEqual([42]);
    expect(value(workerCost({ ...job, wage: money(2) }, 'productive')).cappedTaxes[0]).toBeCloseTo(24.96, 9);
    expect(workerCost({ ...job, productiveHours: 2100 }, 'paid')).toMatchObject({
      fault: { code: 'productive_over_paid' },
    });
  });
});

describe('overhead', () => {
  it('is each part at its own rate', () => {
    expect(
      overheadOn([
        { cost: money(100), rate: 0.1 },
        { cost: money(50), rate: 0.5 },
      ]),
    ).toEqual({ shares: [10, 25], overhead: 35 });
    expect(overheadPerHour(money(68_000), 4, 1700)).toBe(10);
    expect(breakEven(money(350), 0.35)).toBeCloseTo(1000, 9);
  });
});

describe('the price of a job', () => {
  const job: JobCosts = {
    material: money(1344),
    labor: money(23.5 * 45.47),
    other: money(0),
    overheadShare: 0,
    overhead: money(23.5 * 26.47),
    profit: 0.18,
    profitIs: 'margin',
    taxRate: 0.07,
    taxed: 'purchase',
  };

  it('can differ by a cent between the end and each line, and only then is rounded', () => {
    const [exact, end, lines] = centRules.map((rule) => jobPrice(job, rule));
    expect(exact?.cost).toBeCloseTo(3128.67, 6);
    expect(end?.cost).toBeCloseTo(3128.67, 6);
    expect(lines?.cost).toBe(3128.68);
    expect(exact?.total).toBeCloseTo(3128.67 / 0.82, 6);
    expect(end?.total).toBe(3815.45);
  });

  it('adds up line by line where each line is rounded', () => {
    fc.assert(
      fc.property(amount, amount, share, (material, labor, overheadShare) => {
        const price = jobPrice(
          { ...job, material: money(material), labor: money(labor), overheadShare },
          'each line',
        );
        expect(toCents(money(price.direct + price.overhead))).toBe(price.cost);
        expect(toCents(money(price.price + price.salesTax))).toBe(price.total);
      }),
      set,
    );
  });

  it('grows with every cost, with overhead, profit and tax', () => {
    const more = fc.double({ min: 1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(
        amount,
        more,
        fc.constantFrom('none', 'purchase', 'material sold', 'all'),
        (base, by, taxed) => {
          const priced = (change: Partial<JobCosts>) =>
            jobPrice({ ...job, material: money(base), taxed, ...change }, 'exact').total;
          const was = priced({});
          expect(priced({ material: money(base + by) })).toBeGreaterThan(was);
          expect(priced({ labor: money(job.labor + by) })).toBeGreaterThan(was);
          expect(priced({ other: money(by) })).toBeGreaterThan(was);
          expect(priced({ overheadShare: 0.1 })).toBeGreaterThan(was);
          expect(priced({ profit: 0.2 })).toBeGreaterThan(was);
        },
      ),
      set,
    );
  });

  it('that costs nothing is nothing', () => {
    const nothing = { ...job, material: money(0), labor: money(0), overhead: money(0) };
    for (const taxed of ['material sold', 'all', 'purchase', 'none'] as const) {
      expect(jobPrice({ ...nothing, taxed }, 'exact').total).toBe(0);
    }
  });
});

it('tax on all is tax on the material and on the rest', () => {
  expect(salesTax(money(100), money(300), 0.1, 'all')).toBeCloseTo(40, 9);
  expect(salesTax(money(100), money(300), 0.1, 'material')).toBeCloseTo(10, 9);
});

it('a price over feet and pounds, and two prices beside each other', () => {
  expect(pricePerFoot(money(300), feet(40))).toBe(7.5);
  expect(pricePerPound(money(300), pounds(60))).toBe(5);
  expect(compare(money(80), money(100))).toEqual({ difference: 20, share: 0.25 });
});
