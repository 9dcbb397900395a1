import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fahrenheit, feet } from '../../../src/base/quantity.ts';
import { airAt, pressureAt, standardAir } from '../../../src/trade/air/density.ts';

/** The part of psychrolib 1.1.1 that is used here; the package brings no types of its own. */
interface Psychrometrics {
  readonly IP: number;
  readonly SetUnitSystem: (system: number) => void;
  readonly GetStandardAtmPressure: (altitude: number) => number;
  readonly GetDryAirDensity: (temperature: number, pressure: number) => number;
}

const psychrometrics: Psychrometrics = createRequire(import.meta.url)('psychrolib');
psychrometrics.SetUnitSystem(psychrometrics.IP);

const set = { numRuns: 300 };
const altitudes = fc.double({ min: -1500, max: 15_000, noNaN: true }).map(feet);
const temperatures = fc.double({ min: -40, max: 250, noNaN: true }).map(fahrenheit);

it('standard air weighs 0.075 lb/cu ft and has the viscosity behind Re = 8.56 × in × fpm', () => {
  expect(standardAir.density).toBe(0.075);
  expect(1 / (12 * 60 * standardAir.viscosity)).toBeCloseTo(8.56, 12);
});

it('pressure with height is that of psychrolib 1.1.1, to five digits', () => {
  const atSea = psychrometrics.GetStandardAtmPressure(0);
  fc.assert(
    fc.property(altitudes, (altitude) => {
      const theirs = psychrometrics.GetStandardAtmPressure(altitude) / atSea;
      expect(pressureAt(altitude)).toBeCloseTo(theirs, 5);
    }),
    set,
  );
});

it('density is that of dry air in psychrolib 1.1.1 within 0.3 %: 0.075 and 460 are rounded', () => {
  fc.assert(
    fc.property(altitudes, temperatures, (altitude, temperature) => {
      const pressure = psychrometrics.GetStandardAtmPressure(altitude);
      const theirs = psychrometrics.GetDryAirDensity(temperature, pressure);
      expect(Math.abs(airAt(altitude, temperature).density / theirs - 1)).toBeLessThan(0.003);
    }),
    set,
  );
});

it('air is thinner higher up and when it is hotter', () => {
  fc.assert(
    fc.property(altitudes, temperatures, (altitude, temperature) => {
      const { density } = airAt(altitude, temperature);
      expect(airAt(feet(altitude + 1), temperature).density).toBeLessThan(density);
      expect(airAt(altitude, fahrenheit(temperature + 1)).density).toBeLessThan(density);
    }),
    set,
  );
});

it('height alone leaves the stickiness of air as it is: viscosity over density is what grows', () => {
  const { viscosity, relativeDensity } = airAt(feet(5000), fahrenheit(70));
  expect(viscosity * relativeDensity).toBeCloseTo(standardAir.viscosity, 15);
});
