import { describe, expect, test } from 'vitest';
import { inches, poundsPerCubicFoot, thermalResistance } from '../../../src/base/quantity.ts';
import {
  conductivityByDensity,
  squeezedByDensity,
  squeezedByFigures,
} from '../../../src/trade/wrap/squeezed.ts';

const wrap = {
  name: 'wrap',
  thickness: inches(2),
  installed: inches(1.5),
  labelR: thermalResistance(6.8),
  installedR: thermalResistance(5.6),
};
const light = poundsPerCubicFoot(0.75);

describe('the R of squeezed wrap', () => {
  test('by its two figures is the printed one at either thickness', () => {
    const at = (left: number) => squeezedByFigures(wrap, inches(left));
    expect(at(2)).toMatchObject({ ok: true, value: { r: 6.8 } });
    const installed = at(1.5);
    expect(installed.ok && installed.value.r).toBeCloseTo(5.6, 12);
  });

  // Duct-wrap data sheet, R table at 75 °F mean: density, nominal, installed, R out of the package, R installed.
  test.each([
    [0.75, 1.5, 1.125, 5.1, 4.2],
    [0.75, 2, 1.5, 6.8, 5.6],
    [0.75, 2.2, 1.625, 7.4, 6],
    [0.75, 3, 2.25, 10, 8.3],
    [1, 1.5, 1.125, 5.6, 4.5],
    [1, 2, 1.5, 7.4, 6],
    [1.5, 1.5, 1.125, 6, 4.8],
    [1.5, 2, 1.5, 8, 6.4],
  ])(
    'by the density of %d lb/cu ft, %d in squeezed to %d in, is within 2 %% of print',
    (density, nominal, left, label, installed) => {
      const rAt = (to: number): number => {
        const squeezed = squeezedByDensity(
          { name: 'wrap', thickness: inches(nominal) },
          inches(to),
          poundsPerCubicFoot(density),
        );
        if (!squeezed.ok) throw new Error(squeezed.fault.code);
        return squeezed.value.r;
      };
      expect(Math.abs(rAt(nominal) / label - 1)).toBeLessThan(0.02);
      expect(Math.abs(rAt(left) / installed - 1)).toBeLessThan(0.02);
    },
  );

  test('is not given past half, above the package, or outside of the fitted densities', () => {
    const by = (left: number, density = light) => squeezedByDensity(wrap, inches(left), density);
    expect(by(1)).toMatchObject({ ok: true });
    expect(by(0.99)).toMatchObject({ fault: { code: 'left_under_half' } });
    expect(by(2.01)).toMatchObject({ fault: { code: 'left_over_thickness' } });
    expect(by(1, poundsPerCubicFoot(2))).toMatchObject({ fault: { code: 'past_the_fit', density: 4 } });
    expect(squeezedByFigures(wrap, inches(0.99))).toMatchObject({ fault: { code: 'left_under_half' } });
    expect(squeezedByFigures({ ...wrap, installedR: wrap.labelR }, inches(1.5))).toMatchObject({
      fault: { code: 'no_squeeze_figures' },
    });
  });
});

// Duct-wrap product information, k at 24 °C mean, density in kg/m³.
test.each([
  [20, 0.037],
  [24, 0.036],
  [32, 0.034],
  [40, 0.033],
  [48, 0.032],
])(
  'wrap of %d kg/m³ conducts %d W/(m·K) by the fit, within 0.005 Btu·in/(h·ft²·°F)',
  (density, published) => {
    const k = conductivityByDensity(poundsPerCubicFoot(Math.min(3, density / 16.018_463)));
    expect(k.ok && Math.abs(k.value - published * 6.933_47)).toBeLessThan(0.005);
  },
);
