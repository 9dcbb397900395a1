import { done, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { type Offset, offset, offsetForms } from '../../trade/blank/offset.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayInches, sayValue } from '../say.ts';
import type { Caution, Step } from '../working.ts';
import {
  askPattern,
  ductSide,
  flangeArgument,
  neckArgument,
  type Pattern,
  patternArguments,
  patternCautions,
  patternGives,
  patternSteps,
  patternUnit,
  pocketArgument,
  slantSum,
} from './pattern.ts';
import { patternDrawing } from './pattern-drawing.ts';

interface OffsetPattern extends Pattern {
  readonly made: Offset;
}

export const blankOffset = defineFunction({
  name: 'BLANK.OFFSET',
  says: 'The cheek and the two sides of a rectangular offset: an ogee, two mitered elbows, or a plain slant.',
  words: ['offset', 'ogee', 's offset', 'double offset', 'jog', 'two elbows', 'travel', 'slant'],
  gives: { label: 'Offset', ...patternGives },
  unitOf: patternUnit,
  arguments: {
    width: ductSide('the width of the duct in the plane of the offset'),
    depth: ductSide('the depth of the duct, which its two sides are wide'),
    shift: quantity('in', {
      says: 'how far the duct moves over, center to center',
      least: 0.25,
      most: 120,
      why: 'under 1/4 in the duct is pushed over, and over 10 ft an offset is two elbows and a run of duct',
    }),
    length: optional<Inches | null>(
      quantity('in', {
        says: 'the length along the duct: of the sweep of an ogee, of the slant, or between the two bends on the centerline',
        least: 1,
        most: 240,
        why: 'under 1 in there is no room to turn, and over 20 ft it is a run of duct',
      }),
      null,
      'the angled form may be given its angle in place of a length',
    ),
    ...patternArguments(3, '1 is the cheek, 2 the side towards which the duct moves, 3 the other side'),
    form: optional(
      choice(offsetForms, {
        says: '"ogee" has two equal arcs, "angled" two mitered elbows of one angle, "slant" runs straight and gets narrower across',
      }),
      'ogee',
      'it turns the air without a corner',
    ),
    angle: optional<number | null>(
      quantity('deg', {
        says: 'the angle of each of the two elbows, for the angled form in place of its length',
        least: 1,
        most: 90,
        why: 'under 1° there is no bend, and past 90° the duct would turn back',
      }),
      null,
      'it follows from shift and length',
    ),
    first_neck: neckArgument('first'),
    second_neck: neckArgument('second'),
    pocket: pocketArgument('what the pocket takes on each edge of the two sides'),
    flange: flangeArgument('what the flange takes on the two long edges of each cheek'),
    divisions: optional(
      quantity('count', {
        says: 'into how many steps each arc of an ogee is divided for its points; lengths and areas are exact with any',
        least: 4,
        most: 48,
        whole: true,
        why: 'under 4 the arc is no curve, and over 48 the points lie closer than a scriber marks',
      }),
      12,
      'an arc of an ogee is mostly a short one',
    ),
  },
  formula: [
    String.raw`\text{ogee:}\quad R = \frac{\mathrm{length}^2 + \mathrm{shift}^2}{4 \times \mathrm{shift}}, \quad v = 2 \arctan\frac{\mathrm{shift}}{\mathrm{length}}, \quad \text{travel} = 2 R v \quad \text{(} v \text{ in radians)}`,
    String.raw`\text{angled, slant:}\quad v = \arctan\frac{\mathrm{shift}}{\mathrm{length}}, \quad \text{travel} = \sqrt{\mathrm{shift}^2 + \mathrm{length}^2}`,
    String.raw`\text{by its angle:}\quad \mathrm{length} = \frac{\mathrm{shift}}{\tan \mathrm{angle}}`,
    String.raw`\text{side} = \mathrm{first\_neck} + \text{travel} + m + \mathrm{second\_neck} \quad \text{by} \quad \mathrm{depth} + 2 \times \mathrm{pocket}, \quad m = \mathrm{width} \times \tan\frac{v}{2} \text{ (angled)},\ 0 \text{ (others)}`,
  ],
  work: (given): Outcome<OffsetPattern, CallFault> => {
    const { form, width, depth, shift, length, angle, pocket, flange, divisions } = given;
    const made = fromTrade(
      offset({
        form,
        width,
        depth,
        shift,
        length,
        angle,
        firstNeck: given.first_neck,
        secondNeck: given.second_neck,
        pocket,
        flange,
        divisions,
      }),
    );
    if (!made.ok) return made;
    const pattern = askPattern(made.value.pieces, given);
    return pattern.ok ? done({ ...pattern.value, made: made.value }) : pattern;
  },
  result: ({ asked }) => asked,
  steps: (pattern, { shift, width, length }) => [
    ...(pattern.made.radius === null
      ? legSteps(pattern.made, shift, length !== null)
      : sweepSteps(pattern.made, pattern.made.radius, shift, width)),
    ...patternSteps(pattern),
  ],
  drawing: ({ pieces, made }, { form, width, depth, shift }) =>
    patternDrawing(
      `Offset of ${sayInches(shift)}, ${form}, ${sayInches(width)} × ${sayInches(depth)}`,
      pieces,
      [turnNote(made, width)],
    ),
  cautions: (pattern, { width }) => [
    ...patternCautions(pattern),
    ...narrowCautions(pattern.made.throughShare, width),
  ],
  sources: ['geometry', 'pittsburgh-how-to', 'sheet-shop-practice'],
  examples: [
    {
      says: 'either side of an ogee, 8 in over in 24 in, without straight ends: its length along the metal',
      given: { width: 12, depth: 8, shift: 8, length: 24, part: 2, first_neck: 0, second_neck: 0 },
      gives: 25.74,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the cheek of an offset of 10 in with two elbows of 45° and 1 in straight ends: its blank length',
      given: {
        width: 12,
        depth: 8,
        shift: 10,
        what: 'length',
        form: 'angled',
        angle: 45,
      },
      gives: 16.9706,
      tolerance: 0.0001,
      source: 'geometry',
    },
    {
      says: 'the side of a slant, 4 in over in 18 in, with straight ends of 1 in',
      given: { width: 12, depth: 8, shift: 4, length: 18, part: 3, form: 'slant' },
      gives: 20.4391,
      tolerance: 0.0001,
      source: 'geometry',
    },
  ],
});

function step(label: string, sum: string, value: number, unit: 'in' | 'deg' = 'in'): Step {
  return { label, sum, value, unit, source: 'geometry' };
}

function sweepSteps(made: Offset, radius: Inches, shift: Inches, width: Inches): readonly Step[] {
  const [l, e, r, w, v] = [made.run, shift, radius, width, made.turn].map((one) => figure(one, 4));
  return [
    step('Radius of the centerline', `(${l}² + ${e}²) ÷ (4 × ${e})`, radius),
    step('Turn of each arc', `2 × arctan(${e} ÷ ${l})`, made.turn, 'deg'),
    step('Centerline of the sweep', `2 × ${r} × ${v}° × π ÷ 180`, made.travel),
    step('Inner radius', `${r} − ${w} ÷ 2`, radius - width / 2),
    step('Outer radius', `${r} + ${w} ÷ 2`, radius + width / 2),
  ];
}

function legSteps(made: Offset, shift: Inches, byLength: boolean): readonly Step[] {
  const [l, e, v] = [made.run, shift, made.turn].map((one) => figure(one, 4));
  const turn = byLength
    ? [step('Turn at each bend', `arctan(${e} ÷ ${l})`, made.turn, 'deg')]
    : [step('Run along the duct', `${e} ÷ tan ${v}°`, made.run)];
  return [
    ...turn,
    byLength
      ? step('Travel', slantSum(made.run, shift), made.travel)
      : step('Travel', `${e} ÷ sin ${v}°`, made.travel),
    step('Miter', `${v}° ÷ 2`, made.turn / 2, 'deg'),
  ];
}

function turnNote({ turn, radius, travel }: Offset, width: Inches): string {
  const angle = `${figure(turn, 2)}°`;
  if (radius === null) return `each bend ${angle}, travel ${sayInches(travel)}`;
  const [inner, outer] = [inches(radius - width / 2), inches(radius + width / 2)];
  return `arcs of ${angle}, radii ${sayInches(inner)} and ${sayInches(outer)}`;
}

function narrowCautions(share: number, width: Inches): readonly Caution[] {
  if (share > 0.95) return [];
  return [
    {
      level: 'look',
      sentence: `Square across, the slant is only ${figure(share * width, 2)} in wide in place of ${sayValue(width, 'in')}. Make it longer, or use the form "angled" or "ogee", which keep the width.`,
      source: 'geometry',
    },
  ];
}
