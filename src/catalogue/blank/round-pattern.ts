import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { Unit } from '../../base/unit.ts';
import { divisionsOfCircle, stepped } from '../../trade/blank/divisions.ts';
import type { Piece } from '../../trade/blank/piece.ts';
import { type MeasuredAt, measuredAt, roundBlank } from '../../trade/blank/round.ts';
import { choice, optional, quantity } from '../argument.ts';
import type { CallFault } from '../fault.ts';
import { figure, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import { askPattern, type Pattern, patternAnswers, patternSteps } from './pattern.ts';

/** A figure of a fitting beside those that every flat pattern has; `is` is the word by which it is asked for. */
export interface FittingFigure {
  readonly is: string;
  readonly label: string;
  readonly sum: string;
  readonly value: number;
  readonly unit: Unit;
}

/** Lengths by station; the first one belongs to station 1. */
export interface FittingTable {
  readonly is: string;
  readonly label: string;
  readonly sum: string;
  readonly values: readonly Inches[];
}

/** A round fitting in the flat. */
export interface RoundFitting {
  readonly pieces: readonly Piece[];
  readonly figures: readonly FittingFigure[];
  readonly tables: readonly FittingTable[];
  /** The outline is a fine curve: its tables tell where it runs, not its points. */
  readonly isCurve?: boolean;
}

export interface AskedFitting extends RoundFitting {
  readonly pattern: Pattern;
  readonly asked: number;
  /** The step of a figure or a table; null where the pattern itself answers. */
  readonly askedStep: Step | null;
}

/** Picks the one figure that was asked for. Faults: `no_such_piece`, `no_such_station`. */
export function askFitting(
  fitting: RoundFitting,
  question: { readonly what: string; readonly station: number; readonly part?: number },
): Outcome<AskedFitting, CallFault> {
  const { station, part = 1 } = question;
  const common = patternAnswers.find((answer) => answer === question.what);
  const pattern = askPattern(fitting.pieces, { part, station, what: common ?? 'width' });
  if (!pattern.ok) return pattern;
  const answer = { ...fitting, pattern: pattern.value };
  if (common) return done({ ...answer, asked: pattern.value.asked, askedStep: null });
  const hand = (step: Omit<Step, 'value' | 'source'>, value: number): Outcome<AskedFitting, CallFault> =>
    done({ ...answer, asked: value, askedStep: { ...step, value, source: 'geometry' } });
  const found = fitting.figures.find((one) => one.is === question.what);
  if (found) return hand({ label: found.label, sum: found.sum, unit: found.unit }, found.value);
  const table = fitting.tables.find((one) => one.is === question.what);
  const value = table?.values[station - 1];
  if (table && value !== undefined)
    return hand({ label: `${table.label}, station ${station}`, sum: table.sum, unit: 'in' }, value);
  return failed({
    code: 'trade',
    fault: {
      code: 'no_such_station',
      piece: pattern.value.chosen.name,
      what: 'point',
      got: station,
      most: table?.values.length ?? 0,
    },
  });
}

/** The figures and tables of the fitting, the pieces, and at the end the figure that was asked for. */
export function fittingSteps({
  figures,
  tables,
  pattern,
  askedStep,
  isCurve,
}: AskedFitting): readonly Step[] {
  const steps = [
    ...figures.map(({ label, sum, value, unit }): Step => ({ label, sum, value, unit, source: 'geometry' })),
    ...tables.map(
      ({ label, sum, values }): Step => ({
        label: `${label}, stations 1 to ${values.length}`,
        sum,
        value: values.map(sayOrdinate).join(' | '),
        unit: 'count',
        source: 'geometry',
      }),
    ),
    ...patternSteps(pattern).filter((step) => !(isCurve && step.label.includes(pointsLabel))),
  ];
  return askedStep ? [...steps.filter((step) => step.label !== askedStep.label), askedStep] : steps;
}

/** How the working of a pattern names the list of its points. */
const pointsLabel = ': points ';

/** What a pattern with a fine curve answers: its points are asked for by tables. */
export const curveAnswers = [
  'width',
  'length',
  'area',
  'side',
] as const satisfies readonly (typeof patternAnswers)[number][];

export const curveSays =
  'width or length of the blank with its seams, the area of the piece without them, or one side';

/** A length to either side of a line; the last binary digits do not show as less than nothing. */
function sayOrdinate(length: Inches): string {
  const whole = Math.abs(length) < 1 / 64 ? inches(0) : length;
  return whole < 0 ? `−${sayInches(inches(-whole))}` : sayInches(whole);
}

const byDegrees = ['angle', 'miter'];
const byArea = ['area', 'surface'];

export const fittingGives = { unit: 'in', orUnits: ['sqft', 'deg'] } as const;

export function fittingUnit({ what }: { readonly what: string }): Unit {
  if (byArea.includes(what)) return 'sqft';
  return byDegrees.includes(what) ? 'deg' : 'in';
}

/** What every flat pattern answers, in words for the argument that chooses. */
export const patternSays =
  'width or length of the blank with its seams, area of the piece without them, one side, or how far across or up a point of the outline lies from the lower left corner of the blank';

export function stationArgument(says: string) {
  return optional(
    quantity('count', {
      says: `which station, side or point: ${says}; the working lists them`,
      least: 1,
      most: 400,
      whole: true,
      why: 'no pattern here has more than 400 points',
    }),
    1,
    'it is the first station, side and point',
  );
}

export const divisionsArgument = optional(
  choice(divisionsOfCircle, {
    says: 'into how many equal parts the circle is divided, each quarter into whole parts',
  }),
  24,
  'it keeps the marks within 2 in up to 15 in of diameter; take more for a larger one (open course on the large round elbow)',
);

export const steppedArgument = optional(
  choice(stepped, {
    says: 'whether the parts of the circle are stepped off at their true length or as the straight line across',
  }),
  'arcs',
  'then the mouth has its full girth; 24 chords lose 0.29 % of it (geometry)',
);

/** A round end, as an argument. */
export const roundDiameter = (says: string) =>
  quantity('in', {
    says,
    least: 2,
    most: 120,
    why: 'pipe under 2 in or over 10 ft is not shop duct, so it is most likely a slip of the unit',
  });

export const heightArgument = quantity('in', {
  says: 'the length between the ends, square to them',
  least: 1,
  most: 120,
  why: 'under 1 in there is nothing to form, and over 10 ft no sheet is long enough',
});

export const seamInAll = optional(
  quantity('in', {
    says: 'what the lengthwise seam takes in all, both edges together',
    least: 0,
    most: 6,
    why: 'no seam of this kind takes more than a few inches of sheet',
  }),
  1,
  'a grooved lock made by hand takes 1 in in all (textbook of 1921); use your own figure for your machine',
);

/** Metal beyond a curve or an end. */
export const endArgument = (says: string, usual: number, why: string) =>
  optional(
    quantity('in', {
      says,
      least: 0,
      most: 6,
      why: 'no end joint of shop duct takes more than a few inches',
    }),
    usual,
    why,
  );

/** Where the diameters are measured, and the sheet thickness by which they are brought to its middle. */
export const thicknessArguments = {
  thickness: optional(
    quantity('in', {
      says: 'the thickness of the sheet; GAUGE.THICKNESS gives it',
      least: 0,
      most: 0.25,
      why: 'duct is made of sheet, and plate over 1/4 in is not rolled by this rule of thumb',
    }),
    0,
    'in light gauges the thickness adds less than 1/8 in to the girth and is mostly left out',
  ),
  measured: optional(
    choice(measuredAt, { says: 'where the diameters are measured, or "ignored" to leave the thickness out' }),
    'inside',
    'air ducts are sized by the clear inside (common practice, no source)',
  ),
};

interface Measured {
  readonly thickness: Inches;
  readonly measured: MeasuredAt;
}

/** A diameter at the middle of the sheet. */
export function middleOf(diameter: Inches, { thickness, measured }: Measured): Inches {
  return roundBlank(diameter, thickness, measured, inches(0)).middleDiameter;
}

/** The diameters at the middle of the sheet, where they are other than those typed. */
export function middleFigures(diameters: readonly Inches[], given: Measured): readonly FittingFigure[] {
  if (given.thickness === 0 || given.measured === 'ignored') return [];
  const sign = given.measured === 'inside' ? '+' : '−';
  return diameters.map((diameter) => ({
    is: '',
    label: `Diameter at the middle of the sheet, ${sayInches(diameter)} ${given.measured}`,
    sum: `${figure(diameter, 4)} ${sign} ${figure(given.thickness, 4)}`,
    value: middleOf(diameter, given),
    unit: 'in',
  }));
}
