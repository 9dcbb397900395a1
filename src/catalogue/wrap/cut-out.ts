import { done } from '../../base/outcome.ts';
import type { Inches } from '../../base/quantity.ts';
import type { TrunkFace } from '../../trade/seal/tap.ts';
import { type CutOut, cutOut, halfAround } from '../../trade/wrap/cut-out.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Point } from '../drawing.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Step } from '../working.ts';
import { exampleWraps } from '../wraps.ts';
import { installedOf, wrapArguments } from './arguments.ts';
import { handlingFibers, sharpDuct } from './cautions.ts';

/** Hole in the wrap of a trunk where a branch leaves. Inches. Faults: `tap_wider_than_trunk`, those of a section,
 *  `installed_over_thickness`. Source: geometry; the order of work is from memory. */
export const wrapCutOut = defineFunction({
  name: 'WRAP.CUTOUT',
  says: 'How large a hole to cut in the wrap of a trunk where a branch leaves it square and on center.',
  words: ['cut-out', 'cutout', 'hole in wrap', 'hole for a tap', 'takeoff', 'branch hole', 'collar'],
  gives: { label: 'Hole in the wrap', unit: 'in' },
  arguments: {
    ...sectionArguments,
    ...wrapArguments,
    trunk: optional<Inches | null>(
      quantity('in', {
        says: 'the bare diameter of a round trunk; blank where the branch stands on a flat side',
        least: 2,
        most: 120,
        why: 'trunks under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
      }),
      null,
      'the branch then stands on a flat side',
    ),
    across: optional(
      choice(['around', 'along'], {
        says: 'the size of the hole around the trunk, or along it; the width of a rectangular branch lies along',
      }),
      'around',
      'on a round trunk this is the one that is not the size of the branch',
    ),
    ease: optional(
      quantity('in', {
        says: 'what the hole is larger than the branch, on each side',
        least: 0,
        most: 2,
        why: 'a gap wider than 2 in would leave bare metal that tape does not bridge',
      }),
      0,
      'the hole is cut snug; no source gives an ease',
    ),
  },
  formula: [
    String.raw`\text{along} = \text{width} + 2 \times \text{ease}`,
    String.raw`\text{around} = \text{depth} + 2 \times \text{ease} \quad \text{(flat side)}`,
    String.raw`\text{around} = F \arcsin\frac{\text{depth} + 2 \times \text{ease}}{F}, \quad F = \text{trunk} + 2 \times \text{installed} \quad \text{(round trunk)}`,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const trunk: TrunkFace =
      given.trunk === null ? { type: 'flat' } : { type: 'round', diameter: given.trunk };
    const hole = fromTrade(cutOut(section.value, trunk, row.value.installed, given.ease));
    if (!hole.ok) return hole;
    const asked = given.across === 'around' ? hole.value.around : hole.value.along;
    return done({ section: section.value, installed: row.value.installed, hole: hole.value, asked });
  },
  result: ({ asked }) => asked,
  steps: ({ installed, hole, asked }, { trunk, across, ease }): readonly Step[] => {
    const along = {
      label: 'Along the trunk',
      sum: `${figure(hole.along - 2 * ease)} + 2 × ${figure(ease)}`,
      value: hole.along,
      unit: 'in',
      source: 'geometry',
    } as const;
    const face =
      hole.face === null || trunk === null
        ? []
        : [
            {
              label: 'Across the facing of the trunk',
              sum: `${figure(trunk)} + 2 × ${figure(installed)}`,
              value: hole.face,
              unit: 'in',
            } as const,
          ];
    const around = {
      label: 'Around the trunk, on the facing',
      sum:
        hole.face === null
          ? `${figure(hole.branch.around - 2 * ease)} + 2 × ${figure(ease)}`
          : `${figure(hole.face)} × arcsin(${figure(hole.branch.around)} ÷ ${figure(hole.face)})`,
      value: hole.around,
      unit: 'in',
      source: 'geometry',
    } as const;
    const last = across === 'around' ? [along, ...face, around] : [...face, around, along];
    return last.map((step, index) => (index === last.length - 1 ? { ...step, value: asked } : step));
  },
  drawing: ({ section, hole }) =>
    holeDrawing(
      hole,
      section.shape === 'round',
      `The hole for a branch of ${saySection(section)}, in the facing laid flat: ${figure(hole.along, 2)} in along the trunk and ${figure(hole.around, 2)} in around it.`,
    ),
  cautions: () => [
    ...handlingFibers,
    sharpDuct,
    {
      level: 'look',
      sentence:
        'Usual order of work, from memory: wrap the trunk, cut the hole snug, butt the branch wrap against the trunk’s facing, tape the ring on both facings. An open ring on cold duct wets the wrap.',
      source: 'safety-from-memory',
    },
    {
      level: 'look',
      sentence:
        'This is for a branch that leaves square and on center. Others are marked from the branch itself.',
    },
  ],
  sources: ['geometry'],
  examples: [
    {
      says: 'an 8 in branch on a 16 in trunk in wrap 2 1/4 in thick as installed, around the trunk',
      given: { shape: 'round', width: 8, wrap: 'R-8 wrap', wraps: exampleWraps, trunk: 16 },
      gives: 20.5 * Math.asin(8 / 20.5),
      tolerance: 1e-9,
      source: 'geometry',
    },
    {
      says: 'a 12 × 6 in branch on a flat side with 1/8 in of ease, along the trunk',
      given: {
        shape: 'rectangular',
        width: 12,
        depth: 6,
        wrap: 'R-5 wrap',
        wraps: exampleWraps,
        across: 'along',
        ease: 0.125,
      },
      gives: 12.25,
      source: 'geometry',
    },
  ],
});

/** The hole in the facing laid flat, the trunk running from left to right. */
function holeDrawing(hole: CutOut, isRound: boolean, describes: string): Drawing {
  const center = { x: 150, y: 96 };
  const scale = Math.min(150 / hole.along, 96 / hole.around);
  const [halfWide, halfHigh] = [(hole.along * scale) / 2, (hole.around * scale) / 2];
  const places = Array.from({ length: 33 }, (_, index) =>
    isRound ? -Math.cos((index / 32) * Math.PI) : index < 16 ? -1 : 1,
  );
  const edge = (place: number, side: number): Point => ({
    x: center.x + place * halfWide,
    y: center.y + side * scale * halfAround(hole, isRound, place),
  });
  const right = center.x + halfWide;
  return {
    title: 'The hole in the wrap, laid flat',
    describes,
    height: 190,
    marks: [
      {
        type: 'outline',
        closed: true,
        role: 'wrap',
        points: [
          { x: 20, y: 38 },
          { x: 340, y: 38 },
          { x: 340, y: 154 },
          { x: 20, y: 154 },
        ],
      },
      {
        type: 'outline',
        closed: true,
        role: 'cut',
        points: [
          ...places.map((place) => edge(place, -1)),
          ...[...places].reverse().map((place) => edge(place, 1)),
        ],
      },
      {
        type: 'measure',
        from: { x: center.x - halfWide, y: 28 },
        to: { x: right, y: 28 },
        text: sayInches(hole.along),
      },
      {
        type: 'measure',
        from: { x: right + 24, y: center.y + halfHigh },
        to: { x: right + 24, y: center.y - halfHigh },
        text: sayInches(hole.around),
      },
      { type: 'label', at: { x: 20, y: 178 }, text: 'facing up, trunk from left to right', anchor: 'start' },
    ],
  };
}
