import fc from 'fast-check';
import { expect, it } from 'vitest';
import { airflow, feet, inches } from '../../../src/base/quantity.ts';
import { standardAir } from '../../../src/trade/air/density.ts';
import { compressionFactor, flexCompression, flexFriction } from '../../../src/trade/air/flex.ts';
import { roundFriction } from '../../../src/trade/air/friction.ts';

const set = { numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const diameters = between(4, 20).map(inches);

function factor(diameter: number, compression: number): number {
  const outcome = compressionFactor(inches(diameter), compression, 'equation');
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

it('flex at full stretch is a rough round duct, by either rule', () => {
  fc.assert(
    fc.property(diameters, between(50, 2000).map(airflow), (diameter, flow) => {
      const rough = roundFriction(flow, diameter, feet(0.003), standardAir).rate;
      for (const rule of ['equation', 'maker guide'] as const) {
        const flex = flexFriction(flow, diameter, 0, rule, feet(0.003), standardAir);
        expect(flex).toMatchObject({ ok: true, value: { factor: 1, rate: rough } });
      }
    }),
    set,
  );
});

it('slack costs more the slacker it is and the smaller the flex, and never less than nothing', () => {
  fc.assert(
    fc.property(diameters, between(0.01, 0.4), (diameter, slack) => {
      expect(factor(diameter, slack)).toBeGreaterThan(1);
      expect(factor(diameter, slack + 0.01)).toBeGreaterThan(factor(diameter, slack));
      expect(factor(diameter + 1, slack)).toBeLessThan(factor(diameter, slack));
    }),
    set,
  );
});

it.each([
  [6, 2.09],
  [8, 1.85],
  [10, 1.66],
])(
  '4 %% of slack in %d in flex costs %d times [handbook of fundamentals, eq. 22-23, excerpt]',
  (size, times) => {
    expect(factor(size, 0.04)).toBeCloseTo(times, 2);
  },
);

it('the makers’ guide doubles at 15 % and is silent in between', () => {
  expect(compressionFactor(inches(8), 0.15, 'maker guide')).toEqual({ ok: true, value: 2 });
  expect(compressionFactor(inches(8), 0.3, 'maker guide')).toEqual({ ok: true, value: 4 });
  expect(compressionFactor(inches(8), 0.1, 'maker guide')).toEqual({
    ok: false,
    fault: { code: 'no_flex_row', got: 0.1, rows: [0, 0.15, 0.3] },
  });
});

it('flex is compressed by what it is shorter than stretched, and cannot be longer', () => {
  expect(flexCompression(feet(25), feet(25))).toEqual({ ok: true, value: 0 });
  expect(flexCompression(feet(17.5), feet(25))).toEqual({ ok: true, value: 0.3 });
  expect(flexCompression(feet(26), feet(25))).toEqual({
    ok: false,
    fault: { code: 'longer_than_stretched', installed: 26, stretched: 25 },
  });
});
