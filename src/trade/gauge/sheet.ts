import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches, type PoundsPerSquareFoot, poundsPerSquareFoot } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';

export const materials = ['galvanized', 'stainless', 'aluminum', 'bare steel'] as const;
export type Material = (typeof materials)[number];

/** The sheet as it is named, or the thinnest sheet that the tolerance still lets through. */
export const bases = ['nominal', 'minimum'] as const;
export type Basis = (typeof bases)[number];

/** How thickness and weight of a sheet were found. */
export type SheetRule =
  | { readonly from: 'galvanized table' }
  | { readonly from: 'stainless table' }
  | { readonly from: 'wire gauge' }
  | { readonly from: 'ounces'; readonly ounces: number };

export interface Sheet {
  readonly material: Material;
  readonly gauge: number;
  readonly basis: Basis;
  readonly thickness: Inches;
  readonly weight: PoundsPerSquareFoot;
  readonly rule: SheetRule;
}

interface GalvanizedRow {
  readonly thickness: Readonly<Record<Basis, number>>;
  readonly weight: Readonly<Record<Basis, number>>;
}

const row = (least: number, nominal: number, leastWeight: number, weight: number): GalvanizedRow => ({
  thickness: { minimum: least, nominal },
  weight: { minimum: leastWeight, nominal: weight },
});

// Galvanized sheet gauge, coated thickness; tolerances of ASTM A924, coating of ASTM A653. Read in two copies.
const galvanized: ReadonlyMap<number, GalvanizedRow> = new Map([
  [14, row(0.0705, 0.0785, 2.8725, 3.281)],
  [16, row(0.0575, 0.0635, 2.342, 2.656)],
  [18, row(0.0466, 0.0516, 1.8974, 2.156)],
  [20, row(0.0356, 0.0396, 1.4486, 1.656)],
  [22, row(0.0296, 0.0336, 1.2038, 1.406)],
  [24, row(0.0236, 0.0276, 0.959, 1.156)],
  [26, row(0.0187, 0.0217, 0.7591, 0.906)],
  [28, row(0.0157, 0.0187, 0.6367, 0.781)],
  [30, row(0.0127, 0.0157, 0.5143, 0.656)],
]);

// U.S. standard gauge as a stainless table prints it (read at source), with the full figures of the sixty-fourths.
const stainless: ReadonlyMap<number, number> = new Map([
  [16, 1 / 16],
  [18, 0.05],
  [20, 0.0375],
  [22, 1 / 32],
  [24, 0.025],
  [26, 0.01875],
  [28, 1 / 64],
  [30, 0.0125],
]);

// Ounces per square foot, 15 U.S.C. 206: 16 to 20 ga read at source, 22 to 30 ga from memory.
const ounces: ReadonlyMap<number, number> = new Map([
  [16, 40],
  [18, 32],
  [20, 24],
  [22, 20],
  [24, 16],
  [26, 12],
  [28, 10],
  [30, 8],
]);

// 23 is what code tables name for aluminum beside the even gauges.
const wireGauges = [16, 18, 20, 22, 23, 24, 26, 28, 30];

/** lb/sq ft for each inch of thickness: 20.808 lb at half an inch in the stainless table, read at source. */
export const stainlessPerInch = 41.616;
/** lb/cu in of alloy 3003: supplier data, read at source. */
export const aluminumDensity = 0.0986;
/** lb/sq ft for each inch of nominal thickness: fact sheet on sheet steel gauges, read at source. */
export const steelPerInch = 41.82;

/** Thickness (in) and weight (lb/sq ft) of a sheet by its gauge number. Bare steel is by the manufacturers' standard
 *  gauge, aluminum by the wire gauge in alloy 3003. Only galvanized sheet has minimum figures.
 *  Faults: `no_gauge_row`, `no_minimum_sheet`. Sources: beside each table. */
export function sheetOf(material: Material, gauge: number, basis: Basis): Outcome<Sheet, TradeFault> {
  const gauges = gaugesOf(material);
  if (!gauges.includes(gauge)) return failed({ code: 'no_gauge_row', material, got: gauge, gauges });
  if (basis === 'minimum' && material !== 'galvanized') return failed({ code: 'no_minimum_sheet', material });
  return done({ material, gauge, basis, ...figuresOf(material, gauge, basis) });
}

/** The gauges for which figures are held. */
export function gaugesOf(material: Material): readonly number[] {
  switch (material) {
    case 'galvanized':
      return [...galvanized.keys()];
    case 'stainless':
      return [...stainless.keys()];
    case 'aluminum':
      return wireGauges;
    case 'bare steel':
      return [...ounces.keys()];
  }
}

/** Aluminum sheet by the Brown & Sharpe (American wire) gauge, in inches. Definition from memory, not verified; it agrees
 *  with the printed 0.0159, 0.0126 and 0.0100 in for 26, 28 and 30. */
export function wireGaugeThickness(gauge: number): Inches {
  return inches(0.005 * 92 ** ((36 - gauge) / 39));
}

function figuresOf(
  material: Material,
  gauge: number,
  basis: Basis,
): Pick<Sheet, 'thickness' | 'weight' | 'rule'> {
  switch (material) {
    case 'galvanized': {
      const { thickness, weight } = rowAt(galvanized, gauge);
      return {
        thickness: inches(thickness[basis]),
        weight: poundsPerSquareFoot(weight[basis]),
        rule: { from: 'galvanized table' },
      };
    }
    case 'stainless': {
      const thickness = inches(rowAt(stainless, gauge));
      return {
        thickness,
        weight: poundsPerSquareFoot(stainlessPerInch * thickness),
        rule: { from: 'stainless table' },
      };
    }
    case 'aluminum': {
      const thickness = wireGaugeThickness(gauge);
      return {
        thickness,
        weight: poundsPerSquareFoot(144 * aluminumDensity * thickness),
        rule: { from: 'wire gauge' },
      };
    }
    case 'bare steel': {
      const perSquareFoot = rowAt(ounces, gauge);
      const weight = poundsPerSquareFoot(perSquareFoot / 16);
      return {
        thickness: inches(weight / steelPerInch),
        weight,
        rule: { from: 'ounces', ounces: perSquareFoot },
      };
    }
  }
}

function rowAt<Row>(rows: ReadonlyMap<number, Row>, gauge: number): Row {
  const found = rows.get(gauge);
  if (found === undefined) throw new Error(`gauge ${gauge} was let through without a row`);
  return found;
}
