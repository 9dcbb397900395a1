import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductivity, fahrenheit, inches, thermalResistance } from '../../../src/base/quantity.ts';
import type { DuctSection } from '../../../src/trade/section.ts';
import { dewPointOf, saturationPressure } from '../../../src/trade/wrap/dew-point.ts';
import { filmOf, heatFlow } from '../../../src/trade/wrap/film.ts';
import { roundLayer } from '../../../src/trade/wrap/layer.ts';
import { type DuctWall, dryR, dryThickness, surfaceTemperature } from '../../../src/trade/wrap/sweating.ts';

/** The part of psychrolib 1.1.1 that is used here; the package brings no types of its own. */
interface Psychrometrics {
  readonly IP: number;
  readonly SetUnitSystem: (system: number) => void;
  readonly GetSatVapPres: (temperature: number) => number;
  readonly GetTDewPointFromRelHum: (temperature: number, humidity: number) => number;
}

const psychrometrics: Psychrometrics = createRequire(import.meta.url)('psychrolib');

const set = { numRuns: 200 };
const humidity = fc.double({ min: 0.05, max: 0.99, noNaN: true });
const air = fc.double({ min: 33, max: 150, noNaN: true });

const wall = (around: number, inside: number, outerFilm: number, innerFilm = 0): DuctWall => ({
  around: fahrenheit(around),
  inside: fahrenheit(inside),
  outerFilm: thermalResistance(outerFilm),
  innerFilm: thermalResistance(innerFilm),
});
const round = (diameter: number): DuctSection => ({ shape: 'round', diameter: inches(diameter) });

describe('the dew point', () => {
  // A psychrometric library (npm psychrolib 1.1.1) inverts the same equations its own way.
  test('is that of a psychrometric library, over water and over ice', () => {
    psychrometrics.SetUnitSystem(psychrometrics.IP);
    fc.assert(
      fc.property(air, humidity, (temperature, share) => {
        const { dewPoint } = dewPointOf(fahrenheit(temperature), share);
        expect(dewPoint).toBeCloseTo(psychrometrics.GetTDewPointFromRelHum(temperature, share), 2);
      }),
      set,
    );
    for (const temperature of [-40, 20, 32, 40, 77, 120, 200]) {
      const ours = saturationPressure(fahrenheit(temperature));
      expect(ours / psychrometrics.GetSatVapPres(temperature)).toBeCloseTo(1, 12);
    }
  });

  test('is never above the air, meets it when the air is saturated, and rises with the humidity', () => {
    fc.assert(
      fc.property(air, humidity, humidity, (temperature, one, other) => {
        const at = (share: number) => dewPointOf(fahrenheit(temperature), share).dewPoint;
        expect(at(1)).toBeCloseTo(temperature, 9);
        expect(at(one)).toBeLessThanOrEqual(temperature);
        if (one < other) expect(at(one)).toBeLessThanOrEqual(at(other));
      }),
      set,
    );
  });
});

describe('the film on the outer face', () => {
  test('of cold duct meets heat that rises into its underside and sinks into its top', () => {
    expect([heatFlow('underside', true), heatFlow('top', true), heatFlow('side', true)]).toEqual([
      'up',
      'down',
      'across',
    ]);
    expect([heatFlow('underside', false), heatFlow('top', false)]).toEqual(['down', 'up']);
  });
  test('holds more the brighter the face', () => {
    for (const flow of ['up', 'across', 'down'] as const) {
      expect(filmOf('dull', flow)).toBeLessThan(filmOf('dulled foil', flow));
      expect(filmOf('dulled foil', flow)).toBeLessThan(filmOf('bright foil', flow));
    }
  });
});

describe('wrap against sweating', () => {
  test('of exactly the R that is needed has its face at the dew point', () => {
    const cold = fc.double({ min: 38, max: 60, noNaN: true });
    fc.assert(
      fc.property(cold, fc.double({ min: 70, max: 120, noNaN: true }), humidity, (inside, around, share) => {
        const cold = wall(around, inside, 1.7, 0.37);
        const needed = dryR(cold, share);
        const { surface } = surfaceTemperature(cold, needed.r);
        if (needed.r > 0) expect(surface).toBeCloseTo(needed.dewPoint, 6);
        else expect(surface).toBeGreaterThanOrEqual(needed.dewPoint - 1e-9);
      }),
      set,
    );
  });

  test('is not needed where the duct is no colder than the dew point', () => {
    expect(dryR(wall(75, 60, 0.68), 0.5)).toMatchObject({ isNeverWet: true, r: 0 });
    expect(dryR(wall(75, 120, 0.68), 0.5)).toMatchObject({ isNeverWet: true, r: 0 });
  });

  // Worked apart from this code: 90 °F at 0.8 round a 55 °F duct, film 1.32, k 0.27.
  test.each([
    [24, 1.35],
    [12, 1.29],
    [8, 1.25],
    [6, 1.21],
  ])('round a %d in pipe is %d in thick, less than the flat 1.42 in', (diameter, thick) => {
    const dry = dryThickness(round(diameter), wall(90, 55, 1.32), 0.8, conductivity(0.27));
    if (!dry.ok) throw new Error(dry.fault.code);
    expect(dry.value.thickness).toBeCloseTo(thick, 1);
    expect(dry.value.flat).toBeCloseTo(1.42, 2);
    const face = roundLayer(inches(diameter), dry.value.thickness, conductivity(0.27)).onFace;
    expect(face).toBeCloseTo(dry.value.needed.r, 9);
  });

  test('is refused where none would be thick enough', () => {
    expect(dryThickness(round(12), wall(90, 40, 4.55), 0.99, conductivity(0.27))).toMatchObject({
      fault: { code: 'no_wrap_so_thick' },
    });
  });
});
