import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductivity, inches, thermalResistance } from '../../../src/base/quantity.ts';
import { roundLayer, thicknessForFace } from '../../../src/trade/wrap/layer.ts';

const set = { numRuns: 200 };
const diameter = fc.double({ min: 2, max: 120, noNaN: true });
const thickness = fc.double({ min: 0.05, max: 12, noNaN: true });
const k = fc.double({ min: 0.1, max: 1, noNaN: true });

describe('a layer round a pipe', () => {
  test('has less R on the bare metal than flat, and more on its outer face', () => {
    fc.assert(
      fc.property(diameter, thickness, k, (d, t, conducts) => {
        const layer = roundLayer(inches(d), inches(t), conductivity(conducts));
        expect(layer.onBare).toBeLessThan(layer.flat);
        expect(layer.onFace).toBeGreaterThan(layer.flat);
        // The same heat goes through both faces: R over area is one figure.
        expect(layer.onBare / layer.inner).toBeCloseTo(layer.onFace / layer.outer, 9);
      }),
      set,
    );
  });

  test('in two layers has the R of one, when each is taken on the same area', () => {
    const whole = roundLayer(inches(8), inches(2), conductivity(0.27));
    const first = roundLayer(inches(8), inches(1), conductivity(0.27));
    const second = roundLayer(inches(10), inches(1), conductivity(0.27));
    expect(first.onBare / 4 + second.onBare / 5).toBeCloseTo(whole.onBare / 4, 12);
  });

  test('comes close to flat round a very large pipe', () => {
    const layer = roundLayer(inches(100_000), inches(1.5), conductivity(0.27));
    expect(layer.onBare / layer.flat).toBeCloseTo(1, 4);
    expect(layer.onFace / layer.flat).toBeCloseTo(1, 4);
  });

  test('is found again from the R on its face', () => {
    fc.assert(
      fc.property(diameter, thickness, k, (d, t, conducts) => {
        const layer = roundLayer(inches(d), inches(t), conductivity(conducts));
        expect(thicknessForFace(inches(d), conductivity(conducts), layer.onFace)).toBeCloseTo(t, 9);
      }),
      set,
    );
    expect(thicknessForFace(inches(8), conductivity(0.27), thermalResistance(0))).toBe(0);
  });
});
