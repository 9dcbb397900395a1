import { done } from '../../base/outcome.ts';
import { rLeft } from '../../trade/wrap/r-left.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCut } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Caution, Step } from '../working.ts';
import { exampleWraps } from '../wraps.ts';
import { cornersArgument, cutArgument, installedOf, lapArgument, wrapArguments } from './arguments.ts';
import { codeDecides, handlingFibers, sharpDuct } from './cautions.ts';
import { leftFormulas, leftSteps, looseSentence } from './left-steps.ts';
import { wrappedDrawing } from './wrapped-drawing.ts';

/** R that is really left on the duct for a cut length. h·ft²·°F/Btu, flat. Faults: those of WRAP.THICKNESS, and
 *  `no_squeeze_figures`. Source: the two R figures of the wrap, and geometry. */
export const wrapRLeft = defineFunction({
  name: 'WRAP.RLEFT',
  says: 'What R the wrap really has on the duct when it is cut this long.',
  words: ['r-value left', 'installed r', 'real r', 'squeezed', 'compression', 'how much insulation is left'],
  gives: { label: 'R left', unit: 'r' },
  arguments: {
    ...sectionArguments,
    cut: cutArgument,
    ...wrapArguments,
    lap: lapArgument,
    corners: cornersArgument,
  },
  formula: [
    String.raw`R = \text{label R} \times \left(\frac{t}{T}\right)^{n}, \quad n = \frac{\ln(\text{label R} / \text{installed R})}{\ln(T / \text{installed})}`,
    ...leftFormulas,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const { thickness, installed, label_r: labelR, installed_r: installedR } = row.value;
    const wrap = { name: given.wrap, thickness, installed, labelR, installedR };
    const left = fromTrade(rLeft(section.value, given.cut, wrap, given.lap, given.corners));
    return left.ok ? done({ section: section.value, wrap, ...left.value }) : left;
  },
  result: ({ r }) => r,
  steps: ({ section, wrap, thickness, exponent, r }, given): readonly Step[] => [
    ...leftSteps(section, thickness, given),
    {
      label: 'How fast R falls',
      sum: `ln(${figure(wrap.labelR)} ÷ ${figure(wrap.installedR)}) ÷ ln(${figure(wrap.thickness)} ÷ ${figure(wrap.installed)})`,
      value: exponent,
      unit: 'ratio',
      source: 'squeeze-rule',
    },
    {
      label: 'R left',
      sum: `${figure(wrap.labelR)} × (${figure(thickness.installed)} ÷ ${figure(wrap.thickness)})^${figure(exponent)}`,
      value: r,
      unit: 'r',
      source: 'squeeze-rule',
    },
  ],
  drawing: ({ section, thickness, r }, { cut, lap }) =>
    wrappedDrawing({
      title: 'What the cut leaves of the R',
      describes: `${saySection(section)} duct with wrap cut ${figure(cut)} in: ${figure(thickness.installed)} in thick on the duct, which is R ${figure(r, 2)}.`,
      section,
      thickness: thickness.installed,
      cut,
      lap,
      beside: [`${figure(thickness.installed, 2)} in on the duct`, `R ${figure(r, 2)}`],
    }),
  cautions: ({ wrap, thickness, r, isBelowRated, leastCut }): readonly Caution[] => [
    ...handlingFibers,
    sharpDuct,
    ...(isBelowRated
      ? [
          {
            level: 'look',
            sentence: `This cut leaves R ${figure(r, 2)} at ${figure(thickness.installed, 2)} in, not the rated R ${figure(wrap.installedR)} at ${figure(wrap.installed)} in. The shortest cut that keeps the rated R is ${sayCut(leastCut)}. No R is published for wrap this far squeezed, so the figure is carried on from its two published ones, and may be too high.`,
            source: 'squeeze-rule',
          } as const,
        ]
      : []),
    ...(thickness.slack > 0 ? [{ level: 'look', sentence: looseSentence(thickness) } as const] : []),
    codeDecides,
  ],
  sources: ['squeeze-rule', 'wrap-r-table'],
  examples: [
    {
      says: 'the cut that geometry gives keeps the rated R',
      given: { shape: 'round', width: 16, cut: Math.PI * 20.5 + 2, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: 8.3,
      tolerance: 1e-9,
      source: 'wrap-r-table',
    },
    {
      says: '64 in around 16 in round keeps less',
      given: { shape: 'round', width: 16, cut: 64, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: 7.3567,
      tolerance: 0.001,
      source: 'squeeze-rule',
    },
  ],
});
