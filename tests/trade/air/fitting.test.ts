import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  airflow,
  feet,
  feetPerMinute,
  frictionRate,
  inches,
  squareFeet,
} from '../../../src/base/quantity.ts';
import { airAt, standardAir, standardTemperature } from '../../../src/trade/air/density.ts';
import {
  coefficientOfLength,
  coefficientOnVelocity,
  equivalentLength,
  fittingLoss,
} from '../../../src/trade/air/fitting.ts';
import { roundFriction } from '../../../src/trade/air/friction.ts';
import {
  airVelocity,
  ductVelocity,
  velocityOfPressure,
  velocityPressure,
} from '../../../src/trade/air/velocity.ts';

const set = { numRuns: 300 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const velocities = between(100, 5000).map(feetPerMinute);
const rates = between(0.01, 1).map(frictionRate);
const airs = between(-1500, 15_000).map((altitude) => airAt(feet(altitude), standardTemperature));

it('a coefficient becomes a length and the length the same coefficient', () => {
  fc.assert(
    fc.property(between(0, 20), velocities, rates, airs, (coefficient, velocity, rate, air) => {
      const { length } = equivalentLength(coefficient, velocity, rate, air);
      expect(coefficientOfLength(length, velocity, rate, air).coefficient).toBeCloseTo(coefficient, 9);
    }),
    set,
  );
});

it('the straight duct of an equivalent length takes what the fitting takes: C × diameter ÷ (12 f)', () => {
  fc.assert(
    fc.property(
      between(50, 5000).map(airflow),
      between(4, 40).map(inches),
      between(0.01, 5),
      (flow, diameter, coefficient) => {
        const { velocity, factor, rate } = roundFriction(flow, diameter, feet(0.0003), standardAir);
        const { length, loss } = equivalentLength(coefficient, velocity, rate, standardAir);
        expect((length * rate) / 100).toBeCloseTo(loss, 12);
        expect(length / ((coefficient * diameter) / (12 * factor))).toBeCloseTo(1, 9);
      },
    ),
    set,
  );
});

it('a coefficient brought to another velocity stands for the same loss', () => {
  fc.assert(
    fc.property(between(0.01, 5), velocities, velocities, (coefficient, from, to) => {
      const moved = coefficientOnVelocity(coefficient, from, to);
      const [one, other] = [fittingLoss(coefficient, from, standardAir), fittingLoss(moved, to, standardAir)];
      expect(other.loss / one.loss).toBeCloseTo(1, 9);
    }),
    set,
  );
});

it('velocity and its pressure turn back into each other, and thin air presses less', () => {
  fc.assert(
    fc.property(velocities, airs, (velocity, air) => {
      const pressure = velocityPressure(velocity, air);
      expect(velocityOfPressure(pressure, air)).toBeCloseTo(velocity, 6);
      expect(pressure / velocityPressure(velocity, standardAir)).toBeCloseTo(air.relativeDensity, 9);
    }),
    set,
  );
});

it('twice the velocity is four times the pressure', () => {
  expect(velocityPressure(feetPerMinute(4005), standardAir)).toBe(1);
  expect(velocityPressure(feetPerMinute(8010), standardAir)).toBe(4);
});

it('air that would race is refused with its velocity', () => {
  expect(airVelocity(airflow(400), squareFeet(0.5))).toBe(800);
  expect(ductVelocity(airflow(10_001), squareFeet(1))).toEqual({
    ok: false,
    fault: { code: 'air_too_fast', airflow: 10_001, velocity: 10_001, most: 10_000 },
  });
  expect(ductVelocity(airflow(10_000), squareFeet(1))).toEqual({ ok: true, value: 10_000 });
});
