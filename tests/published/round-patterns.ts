import type { Outcome } from '../../src/base/outcome.ts';
import { inches, poundsPerSquareFoot } from '../../src/base/quantity.ts';
import { type Cone, cone } from '../../src/trade/blank/cone.ts';
import { type EccentricCone, eccentricCone } from '../../src/trade/blank/eccentric-cone.ts';
import { type GoredElbow, goredElbow } from '../../src/trade/blank/gore.ts';
import { blankSize } from '../../src/trade/blank/piece.ts';
import { roundCap } from '../../src/trade/blank/round-cap.ts';
import { type RoundTap, roundTap, type TapStation } from '../../src/trade/blank/round-tap.ts';
import { type SquareToRound, squareToRound } from '../../src/trade/blank/square-to-round.ts';
import { sheetOf } from '../../src/trade/gauge/sheet.ts';
import type { Proof } from './checks.ts';

const none = inches(0);
/** So many divisions stand for a smooth curve. */
const smooth = 20000;

function given<T>(outcome: Outcome<T, { readonly code: string }>): T {
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

function bareCone(first: number, second: number, height: number): Cone {
  const [firstDiameter, secondDiameter] = [inches(first), inches(second)];
  const bare = { pieces: 1, seam: none, largeEnd: none, smallEnd: none };
  return given(cone({ ...bare, firstDiameter, secondDiameter, height: inches(height) }));
}

/** A pointed cone by its slant, as textbooks give it. */
function pointed(base: number, slant: number): Cone {
  return bareCone(base, 0, Math.sqrt(slant ** 2 - base ** 2 / 4));
}

/** Rows are written `D1 = 10, D2 = 8, H = 6 in`. */
const coneOf =
  (figures: (made: Cone) => number | readonly number[]): Proof =>
  ({ number }) =>
    figures(bareCone(number('D1'), number('D2'), number('H')));

const bounds = ({ piece }: Cone) => {
  const { width, length } = blankSize(piece);
  return [width, length];
};

function twelveToEight(divisions: number): EccentricCone {
  return given(
    eccentricCone({
      firstDiameter: inches(12),
      secondDiameter: inches(8),
      height: inches(12),
      offset: inches(2),
      divisions,
      stepped: 'chords',
      pieces: 1,
      seamOn: 'short line',
      seam: none,
      firstEnd: none,
      secondEnd: none,
    }),
  );
}

function element(degrees: number): number {
  return twelveToEight(12).lines[degrees / 30] ?? Number.NaN;
}

function toRound(
  width: number,
  depth: number,
  diameter: number,
  height: number,
  across: number,
  divisions: number,
): SquareToRound {
  return given(
    squareToRound({
      width: inches(width),
      depth: inches(depth),
      diameter: inches(diameter),
      height: inches(height),
      offsetAcross: inches(across),
      offsetBack: none,
      divisions,
      stepped: 'chords',
      pieces: 1,
      seamOn: 'right',
      seam: none,
      squareEnd: none,
      roundEnd: none,
    }),
  );
}

const centered = (divisions: number) => toRound(12, 12, 8, 8, 0, divisions);
const shifted = toRound(16, 10, 10, 12, 3, 12);

function elbow(diameter: number, radius: number, angle: number, pieces: number): GoredElbow {
  return given(
    goredElbow({
      diameter: inches(diameter),
      radius: inches(radius),
      angle,
      pieces,
      divisions: 12,
      seamAt: 'throat',
      seam: none,
      singleEdge: none,
      doubleEdge: none,
      firstCollar: none,
      lastCollar: none,
    }),
  );
}

const widths = ({ throat, middle, heel }: GoredElbow) => [throat, middle, heel];
const risePerInch = (pieces: number) => elbow(10, 10, 90, pieces).rise / 10;

function tap(branch: number, trunk: number | null, angle: number, offset = 0, divisions = 12): RoundTap {
  return given(
    roundTap({
      branch: inches(branch),
      trunk: trunk === null ? null : inches(trunk),
      angle,
      offset: inches(offset),
      divisions,
    }),
  );
}

/** Rows are written `trunk 12, branch 8, 90 deg`; the first half of the marks, or all of them where the branch is off center. */
const tapOf =
  (figure: (station: TapStation) => number): Proof =>
  (_, { inputs }) => {
    const [, trunk, branch, angle] = /trunk (\d+), branch (\d+), (\d+) deg/.exec(inputs)?.map(Number) ?? [];
    const offset = Number(/off centre (\d+)/.exec(inputs)?.[1] ?? 0);
    const { stations } = tap(branch ?? 0, trunk ?? 0, angle ?? 0, offset);
    return stations.slice(0, offset === 0 ? 7 : 13).map(figure);
  };
const reach = tapOf((station) => station.reach);
const along = tapOf((station) => station.along);
const around = tapOf((station) => station.around);

/** Proofs of the rows on cones, transitions to round, gored elbows, taps and round caps. */
export const roundPatternProofs: Readonly<Record<string, Proof>> = {
  CR1a: coneOf((made) => made.slant),
  CR1b: coneOf((made) => made.outerRadius),
  CR1c: coneOf((made) => made.innerRadius),
  CR1d: coneOf((made) => made.angle),
  CR1e: coneOf((made) => made.chord),
  CR1g: coneOf(bounds),
  CR2a: coneOf((made) => made.slant),
  CR2b: coneOf((made) => made.outerRadius),
  CR2e: coneOf((made) => made.chord),
  CR2f: coneOf((made) => 144 * made.area),
  CR2g: coneOf(bounds),
  CR3a: coneOf((made) => made.slant),
  CR3b: coneOf((made) => made.outerRadius),
  CR3d: coneOf((made) => made.angle),
  CR3e: coneOf((made) => made.chord),
  CR3g: coneOf(bounds),
  CR4a: () => bareCone(6, 3, 3).slant,
  CR4b: () => 144 * bareCone(6, 3, 3).area,
  CR5: () => 144 * pointed(5, 12).area,
  // A sector of radius 7 whose arc is 14 belongs to the cone with 14 once round its base.
  CR6: () => 144 * pointed(14 / Math.PI, 7).area,
  CR8: () => pointed(2, 6).angle,
  ER1: () => {
    const { apex } = twelveToEight(12);
    return [apex?.height ?? Number.NaN, apex?.offset ?? Number.NaN];
  },
  ER2: () => element(0),
  ER3: () => element(90),
  ER4: () => element(180),
  // To the apex the line is longer as the apex is higher than the second end.
  ER5: () => (element(90) * 36) / 12,
  ER7: () => twelveToEight(12).turn,
  ER9: () => twelveToEight(smooth).turn,
  SR1: () => centered(12).corners[0]?.lines ?? [],
  SR2: () => centered(12).step,
  SR3: () => centered(12).flats[0]?.height ?? Number.NaN,
  SR4: () => 144 * centered(12).area,
  SR5: () => [12, 24].map((divisions) => centered(divisions).corners[0]?.turn ?? Number.NaN),
  SR6: () => 144 * centered(smooth).area,
  SR8: () => shifted.corners.find((corner) => corner.name === 'back left')?.lines ?? [],
  SR9: () => shifted.flats.map((flat) => flat.height),
  SR10: () => 144 * shifted.area,
  EL3n: () => risePerInch(3),
  EL4n: () => risePerInch(4),
  EL5n: () => risePerInch(5),
  EL7n: () => risePerInch(7),
  EL8: () => elbow(8, 12, 90, 5).joints,
  EL9: () => widths(elbow(8, 12, 90, 5)),
  EL13: () => elbow(8, 12, 90, 5).centerline,
  EL14: () => elbow(8, 12, 90, 5).arc,
  EL15: () => widths(elbow(10, 10, 45, 3)),
  EL17: () => 144 * elbow(10, 10, 45, 3).surface,
  EL18: () => widths(elbow(6, 9, 90, 4)),
  EL19: () => 144 * elbow(6, 9, 90, 4).surface,
  EL20: () => elbow(10, 15, 75, 4).miter,
  WT8: () => {
    const sheet = given(sheetOf('galvanized', 26, 'nominal'));
    return elbow(8, 12, 90, 5).surface * poundsPerSquareFoot(sheet.weight);
  },
  SA1a: reach,
  SA1b: along,
  SA1c: around,
  SA2a: reach,
  SA2b: along,
  SA2c: around,
  SA3a: reach,
  SA3b: along,
  SA3c: around,
  SA4a: reach,
  SA4b: along,
  SA4c: around,
  SA5b: along,
  SA5c: around,
  SA6: () => tap(8, 12, 90).saddle,
  SA7: () => blankSize(tap(8, null, 45).hole).length,
  CP1: () => roundCap(inches(8), inches(0.375), none).disc,
};
