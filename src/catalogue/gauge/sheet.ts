import type { Outcome } from '../../base/outcome.ts';
import {
  aluminumDensity,
  type Basis,
  bases,
  type Material,
  materials,
  type Sheet,
  sheetOf,
  stainlessPerInch,
  steelPerInch,
} from '../../trade/gauge/sheet.ts';
import { choice, optional, quantity } from '../argument.ts';
import type { Drawing } from '../drawing.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import type { Caution, Step } from '../working.ts';

/** The three arguments that tell one sheet from another. */
export const sheetArguments = {
  gauge: quantity('gauge', {
    says: 'the gauge number of the sheet',
    least: 14,
    most: 30,
    whole: true,
    why: 'duct is made of 14 to 30 ga sheet; figures are not held for others',
  }),
  material: optional(
    choice([...materials, 'galvanised', 'aluminium'], { says: 'the metal of the sheet' }),
    'galvanized',
    'most ducts are galvanized (common practice, no source)',
  ),
  basis: optional(
    choice(bases, { says: 'the sheet as it is named, or the thinnest that the tolerance lets through' }),
    'nominal',
    'layout and weight go by the nominal sheet; least thicknesses in codes go by the minimum',
  ),
};

/** Thickness t of a sheet, for the manual. */
export const thicknessFormulas = [
  String.raw`\text{galvanized:}\quad t = \text{table}(\mathrm{gauge}, \mathrm{basis}), \qquad \text{stainless:}\quad t = \text{table}(\mathrm{gauge})`,
  String.raw`\text{aluminum:}\quad t = 0.005 \times 92^{(36 - \mathrm{gauge}) / 39}`,
  String.raw`\text{bare steel:}\quad t = \frac{w}{${steelPerInch}}, \quad w = \frac{\text{ounces of the table}(\mathrm{gauge})}{16}`,
] as const;

/** Weight w of a sheet, on its thickness t, for the manual. */
export const weightFormulas = [
  String.raw`\text{galvanized:}\quad w = \text{table}(\mathrm{gauge}, \mathrm{basis})`,
  String.raw`\text{stainless:}\quad w = ${stainlessPerInch} \times t, \qquad \text{aluminum:}\quad w = 144 \times ${aluminumDensity} \times t`,
  ...thicknessFormulas,
] as const;

/** What a square foot of the sheet weighs, w, in the formula of something made of it. */
export const sheetWeightFormula = String.raw`w = \text{GAUGE.WEIGHT}(\mathrm{gauge}, \mathrm{material}, \mathrm{basis}) \quad \text{(lb/sq ft)}`;

interface SheetWords {
  readonly gauge: number;
  readonly material: Material | 'galvanised' | 'aluminium';
  readonly basis: Basis;
}

/** The sheet that the three arguments name. */
export function askedSheet(given: SheetWords): Outcome<Sheet, CallFault> {
  return fromTrade(sheetOf(materialOf(given.material), given.gauge, given.basis));
}

/** `26 ga galvanized`. */
export function saySheet(sheet: Sheet): string {
  return `${sheet.gauge} ga ${sheet.material}`;
}

/** How the thickness was found, ending in the thickness. */
export function thicknessSteps(sheet: Sheet): readonly Step[] {
  const step = { label: thicknessLabel(sheet), value: sheet.thickness, unit: 'in' } as const;
  switch (sheet.rule.from) {
    case 'galvanized table':
      return [{ ...step, sum: '', source: 'galvanized-gauge-table' }];
    case 'stainless table':
      return [{ ...step, sum: '', source: 'stainless-gauge-table' }];
    case 'wire gauge':
      return [{ ...step, sum: `0.005 × 92^((36 − ${sheet.gauge}) ÷ 39)`, source: 'wire-gauge-rule' }];
    case 'ounces':
      return [
        ...weightSteps(sheet),
        { ...step, sum: `${figure(sheet.weight, 4)} ÷ ${steelPerInch}`, source: 'steel-gauge-fact-sheet' },
      ];
  }
}

/** How the weight was found, ending in the weight. */
export function weightSteps(sheet: Sheet): readonly Step[] {
  const step = { label: weightLabel(sheet), value: sheet.weight, unit: 'lbPerSqFt' } as const;
  const thickness = figure(sheet.thickness, 5);
  switch (sheet.rule.from) {
    case 'galvanized table':
      return [{ ...step, sum: '', source: 'galvanized-gauge-table' }];
    case 'stainless table':
      return [
        ...thicknessSteps(sheet),
        { ...step, sum: `${stainlessPerInch} × ${thickness}`, source: 'stainless-gauge-table' },
      ];
    case 'wire gauge':
      return [
        ...thicknessSteps(sheet),
        { ...step, sum: `144 × ${aluminumDensity} × ${thickness}`, source: 'aluminum-density' },
      ];
    case 'ounces':
      return [
        {
          ...step,
          sum: `${sheet.rule.ounces} ÷ 16`,
          source: sheet.gauge <= 20 ? 'us-standard-gauge' : 'us-standard-gauge-light',
        },
      ];
  }
}

/** A corner of the sheet seen on its edge, magnified, beside a square foot of it. */
export function sheetDrawing(sheet: Sheet): Drawing {
  const edge = 8 + sheet.thickness * 500;
  const bottom = 70 + edge;
  const weight = `${figure(sheet.weight)} lb`;
  const thickness = `${figure(sheet.thickness, 4)} in`;
  const title = `${saySheet(sheet)} sheet, ${sheet.basis}`;
  return {
    title,
    describes: `${title}: ${thickness} thick, and a square foot of it weighs ${weight}.`,
    height: 160,
    marks: [
      { type: 'label', at: { x: 24, y: 30 }, text: 'edge, magnified', anchor: 'start' },
      {
        type: 'outline',
        points: [
          { x: 24, y: 70 },
          { x: 112, y: 70 },
          { x: 112, y: bottom },
          { x: 24, y: bottom },
        ],
        closed: true,
        role: 'metal',
      },
      { type: 'measure', from: { x: 124, y: 70 }, to: { x: 124, y: bottom }, text: thickness },
      {
        type: 'outline',
        points: [
          { x: 230, y: 50 },
          { x: 320, y: 50 },
          { x: 320, y: 140 },
          { x: 230, y: 140 },
        ],
        closed: true,
        role: 'metal',
      },
      { type: 'measure', from: { x: 230, y: 36 }, to: { x: 320, y: 36 }, text: '12″ × 12″' },
      { type: 'label', at: { x: 275, y: 99 }, text: weight, anchor: 'middle' },
    ],
  };
}

/** A gauge number alone is no thickness, and codes have the last word. */
export function gaugeCautions(sheet: Sheet): readonly Caution[] {
  const code: Caution = {
    level: 'care',
    sentence:
      'Which gauge a duct needs is for the local code and licensed practice to say. Codes give inches, and compare them with the minimum thickness.',
  };
  if (sheet.material === 'galvanized') return [code];
  return [
    code,
    {
      level: 'look',
      sentence: `The same gauge number means another thickness in ${sheet.material} than in galvanized. Check the mill certificate; supplier tables differ.`,
    },
  ];
}

function materialOf(material: SheetWords['material']): Material {
  if (material === 'galvanised') return 'galvanized';
  return material === 'aluminium' ? 'aluminum' : material;
}

function thicknessLabel(sheet: Sheet): string {
  return `Thickness of ${saySheet(sheet)}, ${sheet.basis}`;
}

function weightLabel(sheet: Sheet): string {
  return `Weight of ${saySheet(sheet)}, ${sheet.basis}`;
}
