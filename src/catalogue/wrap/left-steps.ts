import type { DuctSection } from '../../trade/section.ts';
import type { CornerRule } from '../../trade/wrap/geometry.ts';
import type { ThicknessFromCut } from '../../trade/wrap/thickness.ts';
import { figure, sayInches } from '../say.ts';
import { perimeterFormula, perimeterStep } from '../section.ts';
import type { Step } from '../working.ts';
import { cornerSum } from './corner-sum.ts';

/** The thickness t that a cut length leaves, for the manual. */
export const leftFormulas = [
  String.raw`t = \min\left(\frac{\text{cut} - P - \text{lap}}{c},\ T\right), \quad T = \text{thickness out of the package}`,
  String.raw`c = 2\pi \text{ (round, bent)},\ 8 \text{ (sharp)},\ 4 \text{ (middle)}`,
  perimeterFormula,
] as const;

/** From a cut length to the thickness that it leaves, which is the last step. */
export function leftSteps(
  section: DuctSection,
  left: ThicknessFromCut,
  given: { readonly cut: number; readonly lap: number; readonly corners: CornerRule },
): readonly Step[] {
  const around = cornerSum(section, given.corners);
  const isLoose = left.slack > 0;
  return [
    perimeterStep(section),
    {
      label: 'Left for the thickness',
      sum: `${figure(given.cut)} − ${figure(left.perimeter)} − ${figure(given.lap)}`,
      value: left.forThickness,
      unit: 'in',
    },
    {
      label: isLoose ? 'Would fill' : 'Thickness left',
      sum: `${figure(left.forThickness)} ÷ ${around}`,
      value: left.fills,
      unit: 'in',
      source: 'geometry',
    },
    ...(isLoose
      ? [
          {
            label: 'Thickness left',
            sum: `no more than its own ${sayInches(left.installed)}`,
            value: left.installed,
            unit: 'in',
          } as const,
        ]
      : []),
  ];
}

/** Said of a cut that is longer than the full thickness needs. */
export function looseSentence(left: ThicknessFromCut): string {
  return `The cut is ${figure(left.slack, 2)} in longer than the full thickness needs, so the wrap hangs loose and sags. Cut shorter, or take the slack up in the lap.`;
}
