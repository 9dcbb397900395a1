import { done } from '../../base/outcome.ts';
import { thicknessFromCut } from '../../trade/wrap/thickness.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Caution } from '../working.ts';
import { exampleWraps } from '../wraps.ts';
import { cornersArgument, cutArgument, installedOf, lapArgument, wrapArguments } from './arguments.ts';
import { handlingFibers, sharpDuct } from './cautions.ts';
import { leftFormulas, leftSteps, looseSentence } from './left-steps.ts';
import { wrappedDrawing } from './wrapped-drawing.ts';

/** Installed thickness that a cut length leaves: the stretch-out turned round. Inches. Faults: `cut_too_short`,
 *  `squeezed_past_half`, `installed_over_thickness`. Source: geometry. */
export const wrapThickness = defineFunction({
  name: 'WRAP.THICKNESS',
  says: 'How thick the wrap really is on the duct when it is cut this long.',
  words: [
    'installed thickness',
    'how thick',
    'squeezed',
    'compression',
    'cut too short',
    'reverse stretch-out',
  ],
  gives: { label: 'Thickness left', unit: 'in' },
  arguments: {
    ...sectionArguments,
    cut: cutArgument,
    ...wrapArguments,
    lap: lapArgument,
    corners: cornersArgument,
  },
  formula: [...leftFormulas],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const wrap = { name: given.wrap, thickness: row.value.thickness, installed: row.value.installed };
    const left = fromTrade(thicknessFromCut(section.value, given.cut, wrap, given.lap, given.corners));
    return left.ok ? done({ section: section.value, wrap, left: left.value }) : left;
  },
  result: ({ left }) => left.installed,
  steps: ({ section, left }, given) => leftSteps(section, left, given),
  drawing: ({ section, left }, { cut, lap }) =>
    wrappedDrawing({
      title: 'What the cut leaves of the wrap',
      describes: `${saySection(section)} duct with wrap cut ${figure(cut)} in: ${figure(left.installed)} in thick on the duct.`,
      section,
      thickness: left.installed,
      cut,
      lap,
      beside: [`${figure(left.installed, 2)} in on the duct`],
    }),
  cautions: ({ wrap, left }): readonly Caution[] => [
    ...handlingFibers,
    sharpDuct,
    ...(left.slack > 0 ? [{ level: 'look', sentence: looseSentence(left) } as const] : []),
    ...(left.installed < wrap.installed * (1 - 1e-9)
      ? [
          {
            level: 'look',
            sentence: `That is less than the ${figure(wrap.installed)} in at which the wrap is rated. Squeezed wrap insulates less: WRAP.RLEFT tells what is left.`,
          } as const,
        ]
      : []),
  ],
  sources: ['geometry'],
  examples: [
    {
      says: 'the cut that geometry gives for 16 in round leaves the rated thickness',
      given: { shape: 'round', width: 16, cut: Math.PI * 20.5 + 2, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: 2.25,
      tolerance: 1e-9,
      source: 'geometry',
    },
    {
      says: '64 in around 16 in round squeezes the same wrap',
      given: { shape: 'round', width: 16, cut: 64, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: (62 - 16 * Math.PI) / (2 * Math.PI),
      tolerance: 1e-9,
      source: 'geometry',
    },
  ],
});
