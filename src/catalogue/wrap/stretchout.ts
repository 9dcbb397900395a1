import { assertNever, done } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { DuctSection } from '../../trade/section.ts';
import type { AllowanceDocument } from '../../trade/wrap/published.ts';
import { type StretchOut, stretchOut, stretchOutMethods } from '../../trade/wrap/stretch-out.ts';
import { thicknessFromCut } from '../../trade/wrap/thickness.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCut, sayInches } from '../say.ts';
import { perimeterFormula, perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';
import type { SourceId } from '../sources.ts';
import type { Step } from '../working.ts';
import { exampleWraps } from '../wraps.ts';
import { cornersArgument, installedOf, lapArgument, wrapArguments } from './arguments.ts';
import { codeDecides, handlingFibers, sharpDuct } from './cautions.ts';
import { cornerSum } from './corner-sum.ts';
import { wrappedDrawing } from './wrapped-drawing.ts';

/** Cut length of wrap once round a duct. Inches. Faults: `no_published_row`, `no_shop_figure`,
 *  `installed_over_thickness`. Sources: published stretch-out tables, geometry, or the shop's own figure. */
export const wrapStretchout = defineFunction({
  name: 'WRAP.STRETCHOUT',
  says: 'How far around to cut duct wrap: once round the duct, its thickness and the lap.',
  words: [
    'stretch-out',
    'how long to cut wrap',
    'wrap length',
    'around the duct',
    'insulation cut',
    'allowance',
  ],
  gives: { label: 'Cut the wrap', unit: 'in' },
  arguments: {
    ...sectionArguments,
    ...wrapArguments,
    method: optional(
      choice(stretchOutMethods, { says: 'where the allowance comes from' }),
      'published',
      'the makers’ table is what inspectors and suppliers go by',
    ),
    lap: lapArgument,
    corners: cornersArgument,
  },
  formula: [
    String.raw`\text{published, shop} = P + (\text{figure} - 2) + \text{lap}, \quad \text{figure} = \text{table}(\text{shape}, \text{thickness}) \text{ or the shop’s own}`,
    String.raw`\text{geometry} = P + c \times \text{installed} + \text{lap}, \quad c = 2\pi \text{ (round, bent)},\ 8 \text{ (sharp)},\ 4 \text{ (middle)}`,
    perimeterFormula,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const { thickness, installed, shop_round, shop_square, shop_rectangular } = row.value;
    const wrap = {
      name: given.wrap,
      thickness,
      installed,
      shop: { round: shop_round, square: shop_square, rectangular: shop_rectangular },
    };
    const cut = fromTrade(stretchOut(section.value, wrap, given.method, given.lap, given.corners));
    if (!cut.ok) return cut;
    const left = thicknessFromCut(section.value, cut.value.cut, wrap, given.lap, given.corners);
    return done({ section: section.value, wrap, out: cut.value, left });
  },
  result: ({ out }) => out.cut,
  steps: ({ section, out }, { corners }): readonly Step[] => [
    perimeterStep(section),
    ...allowanceSteps(out, cornerSum(section, corners)),
    {
      label: 'Cut the wrap',
      sum: `${figure(out.perimeter)} + ${figure(out.cut - out.perimeter - out.lap)} + ${figure(out.lap)}, cut at ${sayCut(out.cut)}`,
      value: out.cut,
      unit: 'in',
    },
  ],
  drawing: ({ section, wrap, out }) =>
    wrappedDrawing({
      title: 'Wrap around the duct, and the wrap as cut',
      describes: `${saySection(section)} duct in wrap ${sayInches(wrap.installed)} thick as installed. Cut ${sayCut(out.cut)}, ${sayInches(out.lap)} of it for the lap.`,
      section,
      thickness: wrap.installed,
      cut: out.cut,
      lap: out.lap,
      beside: [`wrap ${sayInches(wrap.thickness)}`, `${sayInches(wrap.installed)} installed`],
    }),
  cautions: ({ section, wrap, left }) => [
    ...handlingFibers,
    sharpDuct,
    ...(left.ok && left.value.installed >= wrap.installed * (1 - 1e-9)
      ? []
      : [
          {
            level: 'look',
            sentence: squeezedSentence(
              section,
              wrap.installed,
              left.ok ? `${figure(left.value.installed, 2)} in` : 'less than half',
            ),
            source: 'geometry',
          } as const,
        ]),
    codeDecides,
  ],
  sources: ['geometry'],
  examples: [
    {
      says: '16 in round in 3 in wrap, by the published table',
      given: { shape: 'round', width: 16, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: 16 * Math.PI + 17,
      tolerance: 1e-9,
      source: 'stretch-out-permit-scan',
    },
    {
      says: 'the same by geometry',
      given: { shape: 'round', width: 16, wrap: 'R-8 wrap', wraps: exampleWraps, method: 'geometry' },
      gives: 66.4026,
      tolerance: 1e-4,
      source: 'geometry',
    },
    {
      says: '20 × 8 in in 2 in wrap, by the published table',
      given: { shape: 'rectangular', width: 20, depth: 8, wrap: 'R-5 wrap', wraps: exampleWraps },
      gives: 64,
      source: 'stretch-out-article-2019',
    },
    {
      says: '20 × 8 in in 2 in wrap, by the two-column table',
      given: {
        shape: 'rectangular',
        width: 20,
        depth: 8,
        wrap: 'R-5 wrap',
        wraps: exampleWraps,
        method: 'published two-column',
      },
      gives: 66,
      source: 'stretch-out-guide-2017',
    },
  ],
});

/** The tables for rectangular duct fall short of full thickness at the corners, and what they promise is an average. */
function squeezedSentence(section: DuctSection, installed: Inches, left: string): string {
  const rated = `it is rated at ${figure(installed)} in`;
  const means = 'Squeezed wrap insulates less: WRAP.RLEFT tells what is left.';
  return section.shape === 'round'
    ? `By geometry this cut leaves ${left} of the wrap, and ${rated}. ${means}`
    : `If the wrap kept one thickness all round, this cut would leave ${left} of it, and ${rated}. Tables for rectangular duct count on wrap that is pulled thinner at the corners, so their R is an average. ${means}`;
}

const documents: Readonly<Record<AllowanceDocument, SourceId>> = {
  'article of 2019': 'stretch-out-article-2019',
  'permit scan': 'stretch-out-permit-scan',
  'guide specification of 2017': 'stretch-out-guide-2017',
};

function allowanceSteps(out: StretchOut, around: string): readonly Step[] {
  switch (out.from) {
    case 'geometry':
      return [
        {
          label: 'Around the thickness',
          sum: `${around} × ${figure(out.installed)}`,
          value: out.aroundThickness,
          unit: 'in',
          source: 'geometry',
        },
        { label: 'Lap', sum: '', value: out.lap, unit: 'in' },
      ];
    case 'table':
      return [
        {
          label: out.document === null ? `The shop’s figure, ${out.column}` : `Table, ${out.column}`,
          sum: '',
          value: out.added,
          unit: 'in',
          source: out.document === null ? 'shop-figure' : documents[out.document],
        },
        {
          label: 'Without the lap in it',
          sum: `${figure(out.added)} − ${figure(out.lapInTable)}`,
          value: inches(out.added - out.lapInTable),
          unit: 'in',
        },
        { label: 'Lap', sum: '', value: out.lap, unit: 'in' },
      ];
    default:
      return assertNever(out);
  }
}
