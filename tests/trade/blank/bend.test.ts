import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { bend, startingK } from '../../../src/trade/blank/bend.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const radius = double(0, 2).map(inches);
const thickness = double(0.005, 0.25).map(inches);

it('flats and allowance go as far round as outside sizes less the deduction', () => {
  fc.assert(
    fc.property(double(0, 170), radius, thickness, double(0, 0.5), (angle, r, t, k) => {
      const one = bend(angle, r, t, { by: 'K factor', k });
      const [first, second] = [20, 30];
      const byFlats = first - one.setBack + one.allowance + (second - one.setBack);
      expect(byFlats).toBeCloseTo(first + second - one.deduction, 9);
    }),
  );
});

it('the neutral line at the middle of the sheet makes the allowance a part of its circle', () => {
  fc.assert(
    fc.property(double(0, 170), radius, thickness, (angle, r, t) => {
      const { allowance } = bend(angle, r, t, { by: 'K factor', k: 0.5 });
      expect(allowance).toBeCloseTo((Math.PI * (2 * r + t) * angle) / 360, 9);
    }),
  );
});

it('no bend takes nothing, and a sharper one takes more', () => {
  fc.assert(
    fc.property(double(1, 169), radius, thickness, (angle, r, t) => {
      const rule = { by: 'K factor', k: startingK(r, t) } as const;
      expect(bend(0, r, t, rule)).toEqual({ allowance: 0, setBack: 0, deduction: 0 });
      expect(bend(angle + 1, r, t, rule).allowance).toBeGreaterThan(bend(angle, r, t, rule).allowance);
      expect(bend(angle, r, t, rule).deduction).toBeGreaterThan(0);
    }),
  );
});

it('the printed rule comes within 2 % of a K factor of 0.447', () => {
  fc.assert(
    fc.property(double(1, 170), radius, thickness, (angle, r, t) => {
      const printed = bend(angle, r, t, { by: 'printed rule' }).allowance;
      const exact = bend(angle, r, t, { by: 'K factor', k: 0.447 }).allowance;
      expect(Math.abs(printed / exact - 1)).toBeLessThan(0.02);
    }),
  );
});
