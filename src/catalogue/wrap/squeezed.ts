import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { PoundsPerCubicFoot } from '../../base/quantity.ts';
import {
  densityFit,
  fittedDensities,
  type SqueezedByDensity,
  type SqueezedByFigures,
  squeezedByDensity,
  squeezedByFigures,
  squeezeMethods,
} from '../../trade/wrap/squeezed.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import { exampleWraps } from '../wraps.ts';
import { installedOf, type WrapRow, wrapArguments } from './arguments.ts';
import { codeDecides, handlingFibers } from './cautions.ts';
import { layerThickness } from './layer-arguments.ts';

interface Squeezed {
  readonly row: WrapRow;
  readonly asked: SqueezedByFigures | SqueezedByDensity;
  /** By the other method, where it gives a figure too. */
  readonly beside: SqueezedByFigures | SqueezedByDensity | null;
}

/** R of wrap that is squeezed to a thickness. h·ft²·°F/Btu, flat. Faults: `left_over_thickness`, `left_under_half`,
 *  `no_squeeze_figures`, `needs_density`, `past_the_fit`. Sources: the two R figures of the wrap, or its density. */
export const wrapSqueezed = defineFunction({
  name: 'WRAP.SQUEEZED',
  says: 'What R wrap has when it is squeezed to a thickness, by its two R figures or by its density.',
  words: ['squeezed', 'compression', 'compressed insulation', 'installed r', 'density', 'r-value left'],
  gives: { label: 'R, squeezed', unit: 'r' },
  arguments: {
    left: { ...layerThickness, says: 'the thickness that is left of the wrap on the duct' },
    ...wrapArguments,
    method: optional(
      choice(squeezeMethods, {
        says: 'by the two R figures in the row of the wrap, or by its density and a fit to published wrap',
      }),
      'two figures',
      'they are the maker’s own for this very wrap',
    ),
    density: optional<PoundsPerCubicFoot | null>(
      quantity('lbPerCuFt', {
        says: 'the density out of the package; only the method "density" asks for it',
        least: fittedDensities.least,
        most: fittedDensities.most,
        why: 'the conductivity is fitted to wrap of these densities',
      }),
      null,
      'the two R figures do not need it',
    ),
    still: optional(
      quantity('ratio', {
        says: 'the part of the conductivity that density does not change',
        least: 0.1,
        most: 0.4,
        why: 'still air alone conducts 0.18, and no wrap twice as much',
      }),
      densityFit.still,
      'it is fitted to 21 published points; take your own for other fiber',
    ),
    per_density: optional(
      quantity('ratio', {
        says: 'the part of the conductivity that falls with density, at 1 lb/cu ft',
        least: 0,
        most: 0.3,
        why: 'it lies near 0.07 for glass fiber',
      }),
      densityFit.perDensity,
      'it is fitted to the same points',
    ),
  },
  formula: [
    String.raw`\text{two figures:}\quad R = \text{label R} \times \left(\frac{\text{left}}{T}\right)^{n}, \quad n = \frac{\ln(\text{label R} / \text{installed R})}{\ln(T / \text{installed})}`,
    String.raw`\text{density:}\quad R = \frac{\text{left}}{\text{still} + \text{per density} / \rho}, \quad \rho = \text{density} \times \frac{T}{\text{left}}`,
  ],
  work: (given): Outcome<Squeezed, CallFault> => {
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const { thickness, installed, label_r: labelR, installed_r: installedR } = row.value;
    const wrap = { name: given.wrap, thickness, installed, labelR, installedR };
    const figures = fromTrade(squeezedByFigures(wrap, given.left));
    const { density } = given;
    const byDensity: Outcome<SqueezedByDensity, CallFault> =
      density === null
        ? failed({ code: 'trade', fault: { code: 'needs_density' } })
        : fromTrade(
            squeezedByDensity(wrap, given.left, density, {
              still: given.still,
              perDensity: given.per_density,
            }),
          );
    const [asked, other] = given.method === 'density' ? [byDensity, figures] : [figures, byDensity];
    if (!asked.ok) return asked;
    return done({ row: row.value, asked: asked.value, beside: other.ok ? other.value : null });
  },
  result: ({ asked }) => asked.r,
  steps: ({ row, asked, beside }, { left, density }): readonly Step[] => [
    {
      label: 'Squeezed by',
      sum: `1 − ${figure(left)} ÷ ${figure(row.thickness)}`,
      value: 1 - left / row.thickness,
      unit: 'percent',
    },
    ...(beside === null ? [] : stepsBy(beside, row, left, density ?? 0, true)),
    ...stepsBy(asked, row, left, density ?? 0, false),
  ],
  cautions: ({ row, asked }, { left, wrap }) => [
    ...handlingFibers,
    ...(left < row.installed * (1 - 1e-9)
      ? [
          {
            level: 'look',
            sentence: `“${wrap}” is rated at ${sayInches(row.installed)}, R ${figure(row.installed_r)}. No R is published for less, so R ${figure(asked.r, 2)} is carried on from what is.`,
            source: asked.from === 'density' ? 'density-fit' : 'squeeze-rule',
          } as const,
        ]
      : []),
    codeDecides,
  ],
  sources: ['wrap-r-table'],
  examples: [
    {
      says: '2 in wrap at its installed 1 1/2 in',
      given: { left: 1.5, wrap: 'R-5 wrap', wraps: exampleWraps },
      gives: 5.6,
      tolerance: 1e-9,
      source: 'wrap-r-table',
    },
    {
      says: '1 1/2 in wrap of 0.75 lb/cu ft squeezed by a quarter, by density',
      given: { left: 1.125, wrap: 'R-4 wrap', wraps: exampleWraps, method: 'density', density: 0.75 },
      gives: 4.15,
      tolerance: 0.01,
      source: 'density-fit',
    },
    {
      says: '2 in wrap of 0.75 lb/cu ft squeezed to half, by density',
      given: { left: 1, wrap: 'R-5 wrap', wraps: exampleWraps, method: 'density', density: 0.75 },
      gives: 4.05,
      tolerance: 0.01,
      source: 'density-fit',
    },
  ],
});

function stepsBy(
  squeezed: SqueezedByFigures | SqueezedByDensity,
  row: WrapRow,
  left: number,
  density: number,
  isBeside: boolean,
): readonly Step[] {
  if (squeezed.from === 'two figures') {
    return [
      {
        label: 'How fast R falls',
        sum: `ln(${figure(row.label_r)} ÷ ${figure(row.installed_r)}) ÷ ln(${figure(row.thickness)} ÷ ${figure(row.installed)})`,
        value: squeezed.exponent,
        unit: 'ratio',
        source: 'squeeze-rule',
      },
      {
        label: isBeside ? 'R by its two figures, to compare' : 'R by its two figures',
        sum: `${figure(row.label_r)} × (${figure(left)} ÷ ${figure(row.thickness)})^${figure(squeezed.exponent)}`,
        value: squeezed.r,
        unit: 'r',
        source: 'squeeze-rule',
      },
    ];
  }
  return [
    {
      label: 'Density on the duct',
      sum: `${figure(density)} × ${figure(row.thickness)} ÷ ${figure(left)}`,
      value: squeezed.density,
      unit: 'lbPerCuFt',
    },
    {
      label: 'Conductivity by that density',
      sum: '',
      value: squeezed.k,
      unit: 'k',
      source: 'density-fit',
    },
    {
      label: isBeside ? 'R by its density, to compare' : 'R by its density',
      sum: `${figure(left)} ÷ ${figure(squeezed.k, 4)}`,
      value: squeezed.r,
      unit: 'r',
      source: 'density-fit',
    },
  ];
}
