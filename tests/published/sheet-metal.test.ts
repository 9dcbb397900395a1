import {
  inches,
  inchesOfWater,
  millimetresFromInches,
  poundsPerSquareFoot,
} from '../../src/base/quantity.ts';
import { ductArea } from '../../src/trade/area/duct.ts';
import { bend, printedRule } from '../../src/trade/blank/bend.ts';
import { type BootSizes, bootCorner, bootMouth } from '../../src/trade/blank/boot.ts';
import { endCap } from '../../src/trade/blank/end-cap.ts';
import { type OffsetForm, offset } from '../../src/trade/blank/offset.ts';
import { blankSize, netArea } from '../../src/trade/blank/piece.ts';
import { plenum } from '../../src/trade/blank/plenum.ts';
import { type Make, rectangularParts } from '../../src/trade/blank/rectangular.ts';
import {
  type ElbowForm,
  type RectangularElbow,
  rectangularElbow,
} from '../../src/trade/blank/rectangular-elbow.ts';
import { type MeasuredAt, roundBlank } from '../../src/trade/blank/round.ts';
import { type Transition, transition } from '../../src/trade/blank/transition.ts';
import { lineBetween } from '../../src/trade/blank/unfold.ts';
import {
  type DuctMetal,
  type LeastTable,
  leastSheet,
  lightestGalvanized,
} from '../../src/trade/gauge/least.ts';
import { type Basis, type Material, sheetOf } from '../../src/trade/gauge/sheet.ts';
import type { DuctSection } from '../../src/trade/section.ts';
import { roundToTape } from '../../src/trade/tape/round.ts';
import { ductWeight } from '../../src/trade/weight/duct.ts';
import { blankWeight } from '../../src/trade/weight/sheet.ts';
import { holdAgainst, type NotYet, type Proof } from './checks.ts';
import { hangingProofs } from './hanging.ts';
import { roundPatternProofs } from './round-patterns.ts';

function sheet(material: Material, gauge: number, basis: Basis = 'nominal') {
  const outcome = sheetOf(material, gauge, basis);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const thickness =
  (material: Material, gauge: number, basis?: Basis): Proof =>
  () =>
    sheet(material, gauge, basis).thickness;
const sheetWeight =
  (material: Material, gauge: number): Proof =>
  () =>
    sheet(material, gauge).weight;

function pipe(diameter: number, measured: MeasuredAt, sheetThickness = 0, seam = 0) {
  return roundBlank(inches(diameter), inches(sheetThickness), measured, inches(seam));
}

function blanks(make: Make, width: number, depth: number, pocket: number, flange: number, deduction = 0) {
  const sizes = {
    width: inches(width),
    depth: inches(depth),
    pocket: inches(pocket),
    flange: inches(flange),
    bendDeduction: inches(deduction),
  };
  return rectangularParts(make, sizes).map((part) => part.width);
}

function bent(angle: number, radius: number, sheetThickness: number, k: number) {
  return bend(angle, inches(radius), inches(sheetThickness), { by: 'K factor', k });
}

/** Flat width of a channel by its outside sizes, in the sheet and radius of the handbook's sample. */
function channel(first: number, web: number, second: number, allowance: number) {
  const { setBack } = bent(90, 0.16, 0.04, 0.5);
  return first + web + second - 4 * setBack + 2 * allowance;
}

/** Reads a row such as `round, 14 in, 1.0 in w.g., galvanised`. */
const dwellingCode: Proof = (_, { inputs }) => {
  const pressure = Number(/([0-9.]+) in w\.g\./.exec(inputs)?.[1]);
  const metal = inputs.includes('aluminium') ? 'aluminum' : 'galvanized';
  return leastBy('dwelling code', inputs, pressure, metal).thickness;
};

function leastBy(
  table: LeastTable,
  inputs: string,
  pressure: number,
  metal: DuctMetal,
): { readonly thickness: number | string; readonly gauge: number | null } {
  const outcome = leastSheet(table, {
    shape: inputs.startsWith('round') ? 'round' : 'rectangular',
    size: inches(Number(/(\d+) in/.exec(inputs)?.[1])),
    pressure: inchesOfWater(pressure),
    metal,
    isExposed: false,
  });
  if (outcome.ok) return outcome.value;
  if (outcome.fault.code !== 'past_the_table') throw new Error(outcome.fault.code);
  return { thickness: 'no value: the duct standard applies', gauge: null };
}

const lightestGauge: Proof = (_, { inputs }) =>
  lightestGalvanized(inches(Number(/[0-9.]+/.exec(inputs)?.[0]))) ?? Number.NaN;

function taper(
  [firstWidth, firstDepth]: readonly [number, number],
  [secondWidth, secondDepth]: readonly [number, number],
  length: number,
  isFlush: boolean,
): Transition {
  return transition({
    firstWidth: inches(firstWidth),
    firstDepth: inches(firstDepth),
    secondWidth: inches(secondWidth),
    secondDepth: inches(secondDepth),
    length: inches(length),
    sideways: isFlush ? 'flush right' : 'centered',
    upright: isFlush ? 'flush bottom' : 'centered',
    shiftAcross: inches(0),
    shiftUp: inches(0),
    firstNeck: inches(0),
    secondNeck: inches(0),
    pocket: inches(0),
    flange: inches(0),
  });
}

const centeredTransition = taper([20, 12], [14, 8], 12, false);
const flushTransition = taper([24, 10], [16, 8], 18, true);

function panelOf(made: Transition, name: string) {
  const found = made.panels.find((panel) => panel.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
}

const areaOfPanels = (made: Transition) =>
  made.panels.reduce((sum, panel) => sum + 144 * netArea(panel.piece), 0);

function elbow(
  width: number,
  depth: number,
  throatRadius: number,
  angle: number,
  form: ElbowForm = 'radius',
) {
  const none = inches(0);
  const outcome = rectangularElbow({
    form,
    width: inches(width),
    depth: inches(depth),
    angle,
    throatRadius: inches(throatRadius),
    firstNeck: none,
    secondNeck: none,
    pocket: none,
    flange: none,
    divisions: 24,
  });
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

function cheekArea({ pieces: [cheek] }: RectangularElbow): number {
  return cheek === undefined ? Number.NaN : 144 * netArea(cheek);
}

const offsetOf = (form: OffsetForm, shift: number, length: number | null, angle: number | null) => {
  const outcome = offset({
    form,
    width: inches(8),
    depth: inches(8),
    shift: inches(shift),
    length: length === null ? null : inches(length),
    angle,
    firstNeck: inches(0),
    secondNeck: inches(0),
    pocket: inches(0),
    flange: inches(0),
    divisions: 12,
  });
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
};

const ogee = (length: number, shift: number) => offsetOf('ogee', shift, length, null);

function angledOffset(shift: number, angle: number): readonly number[] {
  const { travel, run, turn } = offsetOf('angled', shift, null, angle);
  return [travel, run, turn / 2];
}

function plenumOf(width: number, depth: number, height: number) {
  const outcome = plenum({
    made: 'one piece',
    width: inches(width),
    depth: inches(depth),
    height: inches(height),
    pocket: inches(1),
    flange: inches(0.25),
    topEdge: inches(0),
    bottomEdge: inches(0),
    lidEdge: inches(1),
    openings: [],
  });
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

/** Rectangle 10 × 4 in, 6 in round; the round end in an upright plane 8 in to the front, its middle 5 in up. */
const rightAngleBoot: BootSizes = {
  made: 'two halves',
  width: inches(10),
  depth: inches(4),
  diameter: inches(6),
  height: inches(5),
  reach: inches(8),
  shift: inches(0),
  turn: 90,
  divisions: 12,
  stepped: 'chords',
  squareEnd: inches(0),
  roundEnd: inches(0),
  seam: inches(0),
};

const sixRound: DuctSection = { shape: 'round', diameter: inches(6) };
const twentyByEight: DuctSection = { shape: 'rectangular', width: inches(20), depth: inches(8) };
const aFoot = inches(12);

function weightOfAFoot(section: DuctSection, seam = 0, waste = 0) {
  return ductWeight(section, aFoot, sheet('galvanized', 26).weight, inches(seam), waste).weight;
}

function weightOfBlank(width: number, length: number, gauge: number) {
  return blankWeight(inches(width), inches(length), sheet('galvanized', gauge).weight).weight;
}

const proofs: Readonly<Record<string, Proof>> = {
  ...roundPatternProofs,
  G30T: thickness('galvanized', 30),
  G22T: thickness('galvanized', 22),
  G20T: thickness('galvanized', 20),
  G18T: thickness('galvanized', 18),
  G16T: thickness('galvanized', 16),
  G30M: thickness('galvanized', 30, 'minimum'),
  G26M: thickness('galvanized', 26, 'minimum'),
  G24M: thickness('galvanized', 24, 'minimum'),
  G22M: thickness('galvanized', 22, 'minimum'),
  G30W: sheetWeight('galvanized', 30),
  G28W: sheetWeight('galvanized', 28),
  G26W: sheetWeight('galvanized', 26),
  G22W: sheetWeight('galvanized', 22),
  G18W: sheetWeight('galvanized', 18),
  G20X: sheetWeight('galvanized', 20),
  G26X: sheetWeight('galvanized', 26),
  G24X: sheetWeight('galvanized', 24),
  MSG26: thickness('bare steel', 26),
  MSG24: thickness('bare steel', 24),
  AL30T: thickness('aluminum', 30),
  AL26T: thickness('aluminum', 26),
  AL24T: thickness('aluminum', 24),
  AL22T: thickness('aluminum', 22),
  AL20T: thickness('aluminum', 20),
  AL26W: sheetWeight('aluminum', 26),
  SS26W: sheetWeight('stainless', 26),
  RP1: () => pipe(6, 'ignored').girth,
  RP2: () => pipe(6, 'ignored', 0, 1).width,
  RP3: () => pipe(7, 'ignored').girth,
  RP4: () => pipe(12, 'inside', 0.0276).girth,
  RP5: () => pipe(12, 'outside', 0.0276).girth,
  RP8: () => pipe(48, 'outside', 0.5).girth,
  RP10: () => pipe(6, 'inside', 0.0217).girth - pipe(6, 'outside', 0.0217).girth,
  RD1: () => blanks('one piece', 20, 8, 1, 0.25),
  RD2: () => blanks('two L halves', 20, 8, 1, 0.25),
  RD4: () => blanks('four pieces', 20, 8, 1, 0.25)[1] ?? Number.NaN,
  RD6: () => blanks('U and flat', 20, 8, 1, 0.25)[1] ?? Number.NaN,
  RD7: () => blanks('one piece', 14, 10, 1.25, 0.25),
  RD8: () => blanks('two L halves', 14, 10, 1.25, 0.25),
  // 0.0527 is the bend deduction for that sheet, radius and K, worked out beside the row.
  RD9: () => blanks('one piece', 20, 8, 1, 0.25, 0.0527),
  ...Object.fromEntries(
    ['IMC1', 'IMC2', 'IMC3', 'IMC4', 'IMC5', 'IMC6', 'IMC7', 'IMC9', 'IMC10', 'IMC11', 'IMC12', 'IMC13'].map(
      (id): [string, Proof] => [id, dwellingCode],
    ),
  ),
  ...Object.fromEntries(['GS1', 'GS2', 'GS3', 'GS4'].map((id): [string, Proof] => [id, lightestGauge])),
  WT12: (_, row) => leastBy('estimating handbook', row.inputs, 1, 'galvanized').gauge ?? Number.NaN,
  BA1: () => bent(90, 0.0276, 0.0276, 0.33).allowance,
  BA3: () => bent(90, 0.16, 0.04, 0.5).setBack,
  BA4: () => bent(90, 0.16, 0.04, 0.5).allowance,
  // The handbook rounds the allowance to 0.28 before it adds up.
  BA6: () => channel(1, 2, 1, Math.round(100 * bent(90, 0.16, 0.04, 0.5).allowance) / 100),
  BA7: () => channel(1, 2, 1, bent(90, 0.16, 0.04, 0.5).allowance),
  BA8: () => (printedRule.perThickness * 180) / Math.PI,
  BA9: () => bent(45, 1 / 16, 0.0396, 0.4).allowance,
  BA10: () => bent(45, 1 / 16, 0.0396, 0.4).deduction,
  RT1: () => panelOf(centeredTransition, 'top').slant,
  RT2: () => panelOf(centeredTransition, 'left').slant,
  RT4: () => areaOfPanels(centeredTransition),
  RT5: () => panelOf(flushTransition, 'top').slant,
  RT6: () => panelOf(flushTransition, 'left').slant,
  RT7: () => {
    const { leftBottom, leftTop, rightBottom, rightTop } = flushTransition.corners;
    return [leftBottom, leftTop, rightBottom, rightTop];
  },
  RT8: () => areaOfPanels(flushTransition),
  RE1a: () => elbow(12, 8, 6, 90).throatLength,
  RE1b: () => elbow(12, 8, 6, 90).heelLength,
  RE1c: () => cheekArea(elbow(12, 8, 6, 90)),
  RE2a: () => elbow(20, 10, 10, 45).throatLength,
  RE2b: () => elbow(20, 10, 10, 45).heelLength,
  RE2c: () => cheekArea(elbow(20, 10, 10, 45)),
  RE2d: () =>
    elbow(20, 10, 10, 45).pieces.reduce((sum, piece) => sum + 144 * piece.pieces * netArea(piece), 0),
  // The miter line of a square pipe that turns square is the diagonal of its side: throat corner to heel corner.
  RE3: () => {
    const { heelLength } = elbow(3, 3, 0, 90, 'mitered');
    return Math.hypot(3, heelLength / 2);
  },
  OF1: () => ogee(24, 8).radius ?? Number.NaN,
  OF2: () => ogee(24, 8).turn,
  OF3: () => ogee(24, 8).travel,
  OF4: () => [ogee(18, 4).radius ?? Number.NaN, ogee(18, 4).turn, ogee(18, 4).travel],
  OF5: () => angledOffset(10, 45),
  OF6: () => angledOffset(10, 30),
  CP2: () => {
    const { width, length } = blankSize(endCap(inches(20), inches(8), inches(1), inches(0)));
    return [width, length];
  },
  PL1: () => {
    const [walls] = plenumOf(20, 24, 36);
    return walls ? blankSize(walls).width : Number.NaN;
  },
  BT1: () => lineBetween(bootCorner(rightAngleBoot, 'front right'), bootMouth(rightAngleBoot, 0)),
  BT2: () => lineBetween(bootCorner(rightAngleBoot, 'front right'), bootMouth(rightAngleBoot, Math.PI / 2)),
  PL2: () => plenumOf(20, 24, 36).reduce((sum, piece) => sum + 144 * netArea(piece), 0),
  WT1: () => ductArea(sixRound, aFoot).area,
  WT2: () => weightOfAFoot(sixRound),
  WT3: () => weightOfAFoot(sixRound, 1),
  WT4: () => ductArea(twentyByEight, aFoot).area,
  WT5: () => weightOfAFoot(twentyByEight),
  WT6: () => weightOfAFoot(twentyByEight, 0, 0.1),
  WT7: () => weightOfBlank(57.25, 60, 26),
  WT9: () => weightOfBlank(48, 120, 24),
  WT10: () => weightOfBlank(60, 120, 26),
  WT11: () => blankWeight(inches(68), inches(44), poundsPerSquareFoot(0.284 * 144 * 0.5)).weight,
  RO1: () => roundToTape(inches(19.8496), 16, 'nearest').rounded,
  RO2: () => roundToTape(inches(37.7858), 16, 'up').rounded,
  RO3: () => millimetresFromInches(inches(0.0276)),
};

const notYet: readonly NotYet[] = [
  { why: 'No function lets one pipe slip into another by the old rule of 7 thicknesses.', ids: ['RP9'] },
  { why: 'Copper and lead pipe, weighed by the old rule for tinmen, are no duct.', ids: ['RP11', 'RP12'] },
  {
    why: 'No function plans cuts from stock yet.',
    ids: ['CU1', 'CU2', 'CU3', 'CU5', 'CU6', 'CU7', 'CU8', 'CU9', 'CU10'],
  },
];

holdAgainst('sheet-metal-checks.csv', { ...proofs, ...hangingProofs }, notYet);
