import { done, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import {
  dropPoints,
  type HangerLength,
  type HangerMake,
  hangerLength,
  hangerMakes,
  usualMake,
} from '../../trade/hang/length.ts';
import type { DuctSection } from '../../trade/section.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCut, sayFeet, sayInches } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Caution, Step } from '../working.ts';
import { attachment, codeDecides, overhead, sharpStrap } from './cautions.ts';
import { hangerDrawing } from './hanger-drawing.ts';

interface Cut extends HangerLength {
  readonly section: DuctSection;
  readonly strip: Inches;
}

export const wrapArgument = optional(
  quantity('in', {
    says: 'the thickness of wrap between the duct and the hanger; 0 where the hanger holds the bare metal',
    least: 0,
    most: 12,
    why: 'no wrap for duct is thicker than a foot',
  }),
  0,
  'most duct is hung bare and wrapped afterwards',
);

/** Strap or rod of one hanger, or of so many alike. Inches. Faults: `hanger_not_for_shape`, `drop_too_short`. */
export const hangLength = defineFunction({
  name: 'HANG.LENGTH',
  says: 'How much strap or rod a hanger takes: half or all round a pipe, or down both sides of a rectangular duct.',
  words: [
    'strap length',
    'cut strap',
    'hanger strap',
    'rod length',
    'how long a strap',
    'trapeze',
    'wrap around strap',
  ],
  gives: { label: 'Strap or rod', unit: 'in' },
  arguments: {
    ...sectionArguments,
    drop: quantity('in', {
      says: 'from the structure down to the duct',
      least: 0,
      most: 600,
      why: 'a drop of more than 50 ft is most likely a slip of the unit',
    }),
    make: optional<HangerMake | null>(
      choice(hangerMakes, {
        says: 'how the hanger holds the duct: "half round" or "full round" for a pipe; "pair" of straps turned under, or one strap as a "cradle", for a rectangular duct; "trapeze" for two rods with a bar under either',
      }),
      null,
      'a strap under half of a round duct, a pair of straps for a rectangular one (common practice, no source)',
    ),
    drop_to: optional(
      choice(dropPoints, { says: 'whether the drop goes to the top or to the middle of the bare duct' }),
      'top',
      'the top is what a tape reaches from below the structure',
    ),
    wrap: wrapArgument,
    turn: optional(
      quantity('in', {
        says: 'what each strap of a pair turns under the duct, or what each rod reaches below the underside for bar and nuts',
        least: 0,
        most: 24,
        why: 'a turn of more than 2 ft is no turn',
      }),
      1.5,
      '1 to 2 in is common practice, no source',
    ),
    fixing: optional(
      quantity('in', {
        says: 'what each end takes above to be fastened to the structure',
        least: 0,
        most: 36,
        why: 'no fastening takes more than a yard of strap',
      }),
      0,
      'it depends on the fastening; the bare length is shown, so add your own',
    ),
    hangers: optional(
      quantity('count', {
        says: 'how many hangers alike',
        least: 1,
        most: 10_000,
        whole: true,
        why: 'more hangers than that is most likely a slip',
      }),
      1,
      'one hanger is what one cuts and tries first',
    ),
  },
  formula: [
    String.raw`\text{half round: } 2 (\text{drop} + \tfrac{D}{2}) + \frac{\pi (D + 2\,\text{wrap})}{2}`,
    String.raw`\text{full round: } \text{drop} - \text{wrap} + \pi (D + 2\,\text{wrap})`,
    String.raw`\text{pair, trapeze: } 2 (\text{drop} + \text{depth} + \text{wrap} + \text{turn})`,
    String.raw`\text{cradle: } 2 (\text{drop} + \text{depth} + \text{wrap}) + \text{width} + 2\,\text{wrap}`,
    String.raw`\text{each end adds fixing; a drop to the middle is shorter by half of the height}`,
  ],
  work: (given): Outcome<Cut, CallFault> => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const { drop, drop_to: dropTo, wrap, turn, fixing, hangers } = given;
    const make = given.make ?? usualMake(section.value);
    const length = fromTrade(hangerLength(section.value, make, { drop, dropTo, wrap, turn, fixing }));
    if (!length.ok) return length;
    return done({ section: section.value, ...length.value, strip: inches(length.value.all * hangers) });
  },
  result: ({ strip }) => strip,
  steps: ({ make, section, legs, leg, under, all, pieces, each, strip }, given): readonly Step[] => [
    {
      label: make === 'full round' ? 'Down to the pipe' : 'Down each side',
      sum: legSum(make, section, given),
      value: leg,
      unit: 'in',
      source: 'geometry',
    },
    {
      label:
        make === 'pair' ? 'Turned under' : make === 'trapeze' ? 'Below the duct' : 'Round or under the duct',
      sum: underSum(make, section, given),
      value: under,
      unit: 'in',
      source: make === 'pair' || make === 'trapeze' ? 'hanger-practice' : 'geometry',
    },
    {
      label: 'One hanger',
      sum: `${legs} × (${figure(leg, 4)} + ${figure(given.fixing, 4)}) + ${figure(under, 4)}`,
      value: all,
      unit: 'in',
      source: 'geometry',
    },
    ...(pieces === 1
      ? []
      : [
          {
            label: make === 'trapeze' ? 'Each of the two rods' : 'Each of the two straps',
            sum: `${figure(all, 4)} ÷ ${pieces}`,
            value: each,
            unit: 'in',
          } as const,
        ]),
    {
      label: 'Strap or rod',
      sum: `${figure(all, 4)} × ${figure(given.hangers)}`,
      value: strip,
      unit: 'in',
    },
  ],
  drawing: ({ section, make, pieces, each, all }, { drop, drop_to, wrap, hangers }) =>
    hangerDrawing({
      title: `Hanger of a ${saySection(section)} duct, ${make}`,
      describes: `A ${make} hanger ${sayInches(drop)} down to the ${drop_to} of a ${saySection(section)} duct takes ${sayCut(all)} of ${make === 'trapeze' ? 'rod' : 'strap'}${pieces === 1 ? '' : ', in two lengths'}.`,
      section,
      make,
      isWrapped: wrap > 0,
      notes: [
        `drop ${sayInches(drop)}`,
        `to the ${drop_to}`,
        pieces === 1 ? `cut ${sayCut(each)}` : `two of ${sayCut(each)}`,
        ...(hangers > 1 ? [`${figure(hangers)} hangers`] : []),
      ],
    }),
  cautions: ({ make, all, strip }, { fixing, hangers, wrap }): readonly Caution[] => [
    sharpStrap,
    codeDecides,
    overhead,
    attachment,
    ...(fixing === 0
      ? [
          {
            level: 'look',
            sentence:
              'Nothing is added for fastening the ends above: the strap is cut to the structure and no longer.',
          } as const,
        ]
      : []),
    ...(hangers > 1
      ? [
          {
            level: 'look',
            sentence: `All ${figure(hangers)} together take ${sayFeet(strip)}; each is cut ${sayCut(all)} in all, and ends of coils are not counted.`,
          } as const,
        ]
      : []),
    ...(wrap > 0 && make !== 'trapeze'
      ? [
          {
            level: 'look',
            sentence:
              'A narrow strap over wrap crushes it and cuts its facing. Lay a saddle or a plate between, and keep the facing closed.',
            source: 'safety-from-memory',
          } as const,
        ]
      : []),
  ],
  sources: ['geometry', 'hanger-practice'],
  examples: [
    {
      says: 'under half of a 12 in pipe, 6 in below the structure',
      given: { shape: 'round', width: 12, drop: 6 },
      gives: 42.8496,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'all round the same pipe',
      given: { shape: 'round', width: 12, drop: 6, make: 'full round' },
      gives: 43.6991,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'a pair of straps for a 20 × 8 in duct, 10 in below the structure',
      given: { shape: 'rectangular', width: 20, depth: 8, drop: 10 },
      gives: 39,
      source: 'geometry',
    },
    {
      says: 'rods of four trapezes under a wrapped 24 × 12 in duct',
      given: {
        shape: 'rectangular',
        width: 24,
        depth: 12,
        drop: 18,
        make: 'trapeze',
        wrap: 2,
        turn: 3,
        hangers: 4,
      },
      gives: 280,
      source: 'geometry',
    },
  ],
});

interface LegSizes {
  readonly drop: Inches;
  readonly drop_to: 'top' | 'middle';
  readonly wrap: Inches;
  readonly turn: Inches;
}

function legSum(make: HangerMake, section: DuctSection, { drop, drop_to, wrap }: LegSizes): string {
  const high = section.shape === 'round' ? section.diameter : section.depth;
  const half = `${figure(high, 4)} ÷ 2`;
  const above = figure(drop, 4);
  const isMiddle = drop_to === 'middle';
  if (make === 'half round') return isMiddle ? above : `${above} + ${half}`;
  if (make === 'full round') return `${above}${isMiddle ? ` − ${half}` : ''} − ${figure(wrap, 4)}`;
  return `${above} + ${isMiddle ? half : figure(high, 4)} + ${figure(wrap, 4)}`;
}

function underSum(make: HangerMake, section: DuctSection, { wrap, turn }: LegSizes): string {
  const wide = section.shape === 'round' ? section.diameter : section.width;
  const wrapped = `${figure(wide, 4)} + 2 × ${figure(wrap, 4)}`;
  if (make === 'half round') return `π × (${wrapped}) ÷ 2`;
  if (make === 'full round') return `π × (${wrapped})`;
  return make === 'cradle' ? wrapped : `2 × ${figure(turn, 4)}`;
}
