import { expect, it } from 'vitest';
import { type Basis, gaugesOf, type Material, materials, sheetOf } from '../../../src/trade/gauge/sheet.ts';

function sheet(material: Material, gauge: number, basis: Basis = 'nominal') {
  const outcome = sheetOf(material, gauge, basis);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

it.each(materials)('a higher gauge of %s is thinner and lighter', (material) => {
  const sheets = [...gaugesOf(material)].sort((one, other) => one - other).map((one) => sheet(material, one));
  for (const [index, thinner] of sheets.slice(1).entries()) {
    expect(thinner.thickness).toBeLessThan(sheets[index]?.thickness ?? 0);
    expect(thinner.weight).toBeLessThan(sheets[index]?.weight ?? 0);
  }
});

it('the thinnest galvanized sheet that passes is thinner and lighter than the nominal one', () => {
  for (const gauge of gaugesOf('galvanized')) {
    const [least, nominal] = [sheet('galvanized', gauge, 'minimum'), sheet('galvanized', gauge)];
    expect(least.thickness).toBeLessThan(nominal.thickness);
    expect(least.weight).toBeLessThan(nominal.weight);
  }
});

it('galvanized sheet weighs its steel and 2.5 oz of zinc on each square foot', () => {
  for (const gauge of gaugesOf('bare steel')) {
    const withZinc = sheet('bare steel', gauge).weight + 2.5 / 16;
    expect(Math.abs(sheet('galvanized', gauge).weight - withZinc)).toBeLessThan(0.001);
  }
});

it('the least weight of galvanized sheet is near 40.80 lb/sq ft for each inch, where the table rounds', () => {
  for (const gauge of gaugesOf('galvanized')) {
    const { thickness, weight } = sheet('galvanized', gauge, 'minimum');
    expect(Math.abs(weight / thickness - 40.8)).toBeLessThan(0.35);
  }
});

it('one gauge number is four different thicknesses', () => {
  expect(new Set(materials.map((material) => sheet(material, 26).thickness)).size).toBe(4);
});

it('a gauge that no table holds is refused with the gauges that there are', () => {
  expect(sheetOf('stainless', 25, 'nominal')).toEqual({
    ok: false,
    fault: { code: 'no_gauge_row', material: 'stainless', got: 25, gauges: gaugesOf('stainless') },
  });
});

it('no minimum is made up for a metal whose tolerance is not held', () => {
  expect(sheetOf('aluminum', 26, 'minimum')).toEqual({
    ok: false,
    fault: { code: 'no_minimum_sheet', material: 'aluminum' },
  });
});
