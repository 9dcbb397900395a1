import {
  airflow,
  btuPerHour,
  type FeetPerMinute,
  fahrenheit,
  feet,
  feetPerMinute,
  frictionRate,
  type Inches,
  inches,
  inchesFromMillimetres,
  inchesOfWater,
  squareFeet,
  thermalResistance,
} from '../../src/base/quantity.ts';
import { type BranchPassage, branchCoefficient, enlargementCoefficient } from '../../src/trade/air/branch.ts';
import { airAt, densityAt, pressureAt, seaLevel, standardAir } from '../../src/trade/air/density.ts';
import {
  type ElbowMake,
  elbowAngles,
  elbowCoefficient,
  elbowRatios,
  miterCoefficient,
} from '../../src/trade/air/elbow.ts';
import {
  coefficientOfLength,
  coefficientOnVelocity,
  equivalentLength,
  fittingLoss,
} from '../../src/trade/air/fitting.ts';
import { compressionFactor, flexCompression, flexFriction } from '../../src/trade/air/flex.ts';
import { ductFriction, roundFriction } from '../../src/trade/air/friction.ts';
import { type FactorMethod, frictionFactor, reynoldsNumber } from '../../src/trade/air/friction-factor.ts';
import {
  classLeakage,
  expectedClass,
  leakageAt,
  pascalsPerInch,
  type SealClass,
} from '../../src/trade/air/leakage.ts';
import { airflowForLoad, roomAirflow } from '../../src/trade/air/load.ts';
import { availablePressure, designRate } from '../../src/trade/air/pressure.ts';
import { rectangularElbowCoefficient } from '../../src/trade/air/rectangular-elbow.ts';
import {
  type AirSection,
  equivalentDiameter,
  hydraulicDiameter,
  openArea,
  openSquareInches,
} from '../../src/trade/air/section.ts';
import { ductCapacity, roundSize, widthForDepth } from '../../src/trade/air/sizing.ts';
import { type DuctHeat, leavingAir } from '../../src/trade/air/temperature.ts';
import { airVelocity, velocityOfPressure, velocityPressure } from '../../src/trade/air/velocity.ts';
import { holdAgainst, type NotYet, type Proof, type RowInputs } from './checks.ts';
import { flexSupportProofs } from './hanging.ts';
import { pricingProofs } from './pricing.ts';

const galvanized = feet(0.0003);
const litresPerSecond = (flow: number) => airflow(flow / 0.47194744);

function value<T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!outcome.ok) throw new Error('A fault where a figure was wanted.');
  return outcome.value;
}

function roundOf(diameter: Inches): AirSection {
  return { shape: 'round', diameter };
}

function rectangle(given: RowInputs, width = 'a_in', depth = 'b_in'): AirSection {
  return {
    shape: 'rectangular',
    width: inches(given.number(width)),
    depth: inches(given.number(depth)),
  };
}

function oval(given: RowInputs): AirSection {
  return {
    shape: 'flat oval',
    major: inches(given.number('major_in')),
    minor: inches(given.number('minor_in')),
  };
}

const vp = (velocity: FeetPerMinute) => velocityPressure(velocity, standardAir);

const factor =
  (method: FactorMethod): Proof =>
  (given) =>
    frictionFactor(given.number('Re'), given.number('eps_over_D'), method);

const friction =
  (method: FactorMethod = 'colebrook'): Proof =>
  (given) => {
    const flow = airflow(given.number('Q_cfm'));
    const section = roundOf(inches(given.number('D_in')));
    return ductFriction(flow, section, feet(given.number('eps_ft')), standardAir, 'equal friction', method)
      .rate;
  };

const rectangularFriction: Proof = (given) =>
  ductFriction(airflow(given.number('Q_cfm')), rectangle(given), feet(given.number('eps_ft')), standardAir)
    .rate;

function size(given: RowInputs, mostVelocity: number | null = null, compression = 0, step = 0) {
  const limits = {
    rate: frictionRate(given.number('FR_inwg_100ft')),
    mostVelocity: mostVelocity === null ? null : feetPerMinute(mostVelocity),
  };
  const roughness = feet(given.number('eps_ft'));
  return roundSize(airflow(given.number('Q_cfm')), limits, roughness, standardAir, compression, inches(step));
}

const exactSize: Proof = (given) => size(given).exact;
const sizeByStep: Proof = (given) => size(given, null, 0, given.number('step_in')).diameter;
const sizeInLimits: Proof = (given) => size(given, given.number('V_max_fpm')).exact;

/** The sizes that the maker table steps through; its list stands in the row, after `sizes`. */
const stocked: Proof = (given) => {
  const sizes = [5, 6, 7, 8, 9, 10, 12, 14, 16];
  const limits = { rate: frictionRate(given.number('FR_inwg_100ft')), mostVelocity: null };
  const { exact } = roundSize(airflow(given.number('Q_cfm')), limits, galvanized, standardAir);
  return sizes.find((one) => one >= exact) ?? Number.NaN;
};

const capacity: Proof = (given) =>
  ductCapacity(
    roundOf(inches(given.number('D_in'))),
    frictionRate(given.number('FR_inwg_100ft')),
    feet(given.number('eps_ft')),
    standardAir,
  ).airflow;

const equivalent: Proof = (given) => equivalentDiameter(rectangle(given));

const compression: Proof = (given) =>
  value(compressionFactor(inches(given.number('D_in')), given.number('compression_pct') / 100, 'equation'));

const compressionInMillimetres: Proof = (given) =>
  value(
    compressionFactor(
      inchesFromMillimetres(given.number('D_mm')),
      given.number('compression_pct') / 100,
      'equation',
    ),
  );

const available =
  (...parts: readonly string[]): Proof =>
  (given) =>
    value(
      availablePressure(
        inchesOfWater(given.number('ESP_inwg')),
        parts.map((part) => inchesOfWater(given.number(part))),
      ),
    ).available;

const rateOverLength: Proof = (given) =>
  designRate(inchesOfWater(given.number('ASP_inwg')), feet(given.number('TEL_ft')), feet(0)).rate;

const fromLoad =
  (load: string, relativeDensity = 1): Proof =>
  (given) =>
    airflowForLoad(
      btuPerHour(given.number(load)),
      fahrenheit(given.number('dT_F')),
      { ...standardAir, relativeDensity },
      1.08,
    ).airflow;

const room: Proof = (given) =>
  value(
    roomAirflow(
      btuPerHour(given.number('room_Btuh')),
      btuPerHour(given.number('house_Btuh')),
      airflow(given.number('system_cfm')),
    ),
  ).airflow;

const inchesOfPascals = (pascals: number) => inchesOfWater(pascals / pascalsPerInch);

const toTwentyFivePascals = (given: RowInputs, flow = 1) =>
  leakageAt(airflow(flow), inchesOfPascals(given.number('P_Pa')), inchesOfPascals(25), given.number('n'));

const sealedClass =
  (shape: 'round' | 'rectangular'): Proof =>
  (given) => {
    const seals: Readonly<Record<string, SealClass>> = { A: 'A', B: 'B', C: 'C' };
    return value(expectedClass(seals[given.text('seal')] ?? 'unsealed', shape, 2012));
  };

function heat(given: RowInputs, resistance: string, films: number): DuctHeat {
  return leavingAir(
    fahrenheit(given.number('te_F')),
    fahrenheit(given.number('ta_F')),
    airflow(given.number('Q_cfm')),
    roundOf(inches(given.number('D_in'))),
    feet(given.number('L_ft')),
    thermalResistance(given.number(resistance)),
    thermalResistance(films),
    standardAir,
    1.08,
  );
}

const elbow =
  (make: ElbowMake): Proof =>
  (given) => {
    const ratio = elbowRatios.find((one) => one === given.number('r_over_D'));
    const angle = elbowAngles.find((one) => one === given.number('angle_deg'));
    if (ratio === undefined || angle === undefined) throw new Error('no such elbow');
    return value(elbowCoefficient(make, ratio, angle)).coefficient;
  };

const branch =
  (passage: BranchPassage): Proof =>
  (given) => {
    const main = { airflow: airflow(1000), diameter: inches(10) };
    const angle = passage === 'branch' ? given.number('angle_deg') : 45;
    const goesOff = {
      airflow: airflow(1000 * given.number('Qb_over_Qc')),
      diameter: inches(10 * given.number('Db_over_Dc')),
      angle,
    };
    return value(branchCoefficient(main, goesOff, passage)).onMain;
  };

const leaving: Proof = (given) => heat(given, 'R', given.number('films')).leaving;
const leavingThroughAll: Proof = (given) => heat(given, 'R_total', 0).leaving;

const proofs: Readonly<Record<string, Proof>> = {
  'VP-01': (given) => vp(feetPerMinute(given.number('V_fpm'))),
  'VP-03': (given) => vp(feetPerMinute(given.number('V_fpm'))),
  'VP-04': (given) =>
    velocityPressure(
      feetPerMinute(given.number('V_fpm')),
      standardAir,
      feetPerMinute(1097 / Math.sqrt(given.number('rho_lb_ft3'))),
    ),
  'VP-05': (given) => velocityOfPressure(inchesOfWater(given.number('VP_inwg')), standardAir),
  'VP-06': (given) => openArea(roundOf(inches(given.number('D_in')))),
  'VP-07': (given) =>
    airVelocity(airflow(given.number('Q_cfm')), openArea(roundOf(inches(given.number('D_in'))))),
  'S2-23': (given) => vp(airVelocity(airflow(given.number('Q_cfm')), squareFeet(given.number('A_ft2')))),
  'FF-01': factor('colebrook'),
  'FF-02': factor('haaland'),
  'FF-03': factor('swamee-jain'),
  'FF-04': factor('altshul-tsal'),
  'FF-05': factor('altshul-tsal'),
  'FF-06': factor('colebrook'),
  'FF-08': (given) => frictionFactor(given.number('Re'), 0, 'colebrook'),
  'FF-09': (given) =>
    reynoldsNumber(inches(given.number('D_in')), feetPerMinute(given.number('V_fpm')), standardAir),
  'FR-01': friction(),
  'FR-02': friction(),
  'FR-03': friction(),
  'FR-05': friction(),
  'FR-06': friction(),
  'FR-09': friction(),
  'FR-10': friction(),
  'FR-11': friction(),
  'FR-13': friction(),
  'FR-14': friction(),
  'FR-15': friction(),
  'FR-16': friction('haaland'),
  'FR-17': friction('swamee-jain'),
  'FR-18': friction('altshul-tsal'),
  'FR-19': friction(),
  'FR-20': (given) =>
    roundFriction(airflow(given.number('Q_cfm')), inches(given.number('D_in')), galvanized, standardAir).rate,
  // A run of straight duct is a fitting whose length is known: its loss is friction rate times length.
  'FR-22': (given) =>
    coefficientOfLength(
      feet(given.number('L_ft')),
      feetPerMinute(900),
      frictionRate(given.number('FR_inwg_100ft')),
      standardAir,
    ).loss,
  'DI-01': exactSize,
  'DI-02': exactSize,
  'DI-03': exactSize,
  'DI-04': exactSize,
  'DI-06': exactSize,
  'DI-07': exactSize,
  'DI-08': capacity,
  'DI-09': capacity,
  'DI-11': stocked,
  'DI-12': stocked,
  'DI-13': stocked,
  'DI-14': stocked,
  'DI-15': stocked,
  'DI-16': stocked,
  'S2-05': sizeByStep,
  'S2-07': sizeByStep,
  'S2-09': sizeByStep,
  'S2-11': sizeByStep,
  'S2-13': sizeByStep,
  'S2-15': sizeByStep,
  'S2-17': sizeByStep,
  'S2-19': rectangularFriction,
  'S2-21': sizeInLimits,
  'S2-22': sizeInLimits,
  'AC-02': (given) => pressureAt(feet(given.number('z_ft'))),
  // The standard atmosphere is 59 °F at sea level and cools by 3.566 °F in 1000 ft (from memory).
  'AC-04': (given) => {
    const height = given.number('z_ft');
    const outdoors = airAt(feet(height), fahrenheit(59 - 0.003566 * height));
    return outdoors.density / airAt(seaLevel, fahrenheit(59)).density;
  },
  'AC-08': (given) => airAt(seaLevel, fahrenheit(given.number('T_F'))).density,
  // 29.92 in Hg is the pressure of the standard atmosphere at sea level.
  'S2-28': (given) =>
    densityAt(given.number('B_inHg') / 29.92, fahrenheit(given.number('T_F'))) / standardAir.density,
  'ED-01': equivalent,
  'ED-02': equivalent,
  'ED-03': equivalent,
  'ED-04': equivalent,
  'ED-05': equivalent,
  'ED-07': equivalent,
  'ED-08': equivalent,
  'ED-09': equivalent,
  'ED-10': equivalent,
  'ED-11': equivalent,
  'ED-12': equivalent,
  'ED-14': (given) => value(widthForDepth(inches(given.number('De_in')), inches(given.number('height_in')))),
  'ED-15': (given) => hydraulicDiameter(rectangle(given)),
  'ED-16': (given) => openSquareInches(oval(given)),
  'ED-18': (given) => equivalentDiameter(oval(given)),
  'ED-20': (given) => hydraulicDiameter(oval(given)),
  'ED-21': rectangularFriction,
  'FT-21': (given) => fittingLoss(given.number('C'), feetPerMinute(given.number('V_fpm')), standardAir).loss,
  // Any velocity gives the same length where the factor is fixed: the friction rate is f × (1200 ÷ D) × VP.
  'FT-22': (given) => {
    const velocity = feetPerMinute(700);
    const rate = frictionRate(((given.number('f') * 1200) / given.number('D_in')) * vp(velocity));
    return equivalentLength(given.number('C'), velocity, rate, standardAir).length;
  },
  'FT-24': (given) => {
    const { coefficient } = coefficientOfLength(
      feet(given.number('Le_ref_ft')),
      feetPerMinute(given.number('V_ref_fpm')),
      frictionRate(given.number('FR_ref')),
      standardAir,
    );
    const velocity = feetPerMinute(given.number('V_fpm'));
    return equivalentLength(coefficient, velocity, frictionRate(given.number('FR')), standardAir).length;
  },
  'FT-30': (given) =>
    coefficientOnVelocity(
      given.number('C_up'),
      feetPerMinute(1000),
      feetPerMinute((1000 * given.number('Qb_over_Qc')) / given.number('Ab_over_Ac')),
    ),
  'FX-01': compression,
  'FX-02': compression,
  'FX-03': compression,
  'FX-05': compression,
  'FX-06': compression,
  'S2-34': compressionInMillimetres,
  'S2-36': compressionInMillimetres,
  'FX-07': friction(),
  'FX-08': (given) =>
    value(
      flexFriction(
        airflow(given.number('Q_cfm')),
        inches(given.number('D_in')),
        given.number('compression_pct') / 100,
        'equation',
        feet(given.number('eps_ft')),
        standardAir,
      ),
    ).rate,
  'FX-09': (given) =>
    100 * value(flexCompression(feet(given.number('L_installed_ft')), feet(given.number('L_stretched_ft')))),
  'FX-11': (given) => size(given, null, given.number('compression_pct') / 100).exact,
  'S2-37': (given) => {
    const rateOf = (roughness: string) =>
      roundFriction(
        litresPerSecond(given.number('Q_Ls')),
        inchesFromMillimetres(given.number('D_mm')),
        feet(given.number(roughness) / 304.8),
        standardAir,
      ).rate;
    return rateOf('eps_flex_mm') / rateOf('eps_spiral_mm');
  },
  'SZ-01': available('coil', 'filter', 'supply_outlet', 'return_grille', 'damper'),
  'S2-01': available('coil', 'filter', 'registers', 'grille'),
  'SZ-02': rateOverLength,
  'SZ-03': rateOverLength,
  'S2-02': (given) =>
    designRate(inchesOfWater(0.19), feet(given.number('measured_ft')), feet(given.number('fittings_ft')))
      .length,
  'SZ-04': fromLoad('sensible_Btuh'),
  'SZ-05': fromLoad('output_Btuh'),
  'SZ-06': fromLoad('sensible_Btuh', 0.832),
  'SZ-09': room,
  'S2-04': room,
  'LK-01': (given) => toTwentyFivePascals(given).factor,
  'LK-02': (given) => toTwentyFivePascals(given).factor,
  'LK-03': (given) => toTwentyFivePascals(given).factor,
  'LK-05': (given) => toTwentyFivePascals(given, given.number('Q_cfm')).leakage,
  'LK-08': (given) =>
    leakageAt(
      airflow(given.number('cfm25')),
      inchesOfPascals(25),
      inchesOfWater(given.number('P_inwg')),
      given.number('n'),
    ).leakage,
  'LK-09': (given) => inchesOfPascals(given.number('P_Pa')),
  'UN-01': () => pascalsPerInch,
  'S2-30': sealedClass('rectangular'),
  'S2-31': sealedClass('round'),
  'S2-32': (given) =>
    classLeakage(given.number('CL'), inchesOfWater(given.number('P_inwg')), squareFeet(100)).perHundred,
  'HT-01': (given) => {
    const { surface, carried } = leavingAir(
      fahrenheit(55),
      fahrenheit(130),
      airflow(given.number('Q_cfm')),
      roundOf(inches(given.number('D_in'))),
      feet(given.number('L_ft')),
      thermalResistance(1 / given.number('U')),
      thermalResistance(0),
      standardAir,
      1.08,
    );
    return (2 * carried) / (given.number('U') * surface);
  },
  'HT-02': leaving,
  'HT-03': leaving,
  'HT-04': (given) => heat(given, 'R', given.number('films')).gain,
  // The share that is kept of the difference does not depend on the temperatures, so the run can be walked back.
  'HT-05': (given) => {
    const around = given.number('ta_F');
    const { kept } = leavingAir(
      fahrenheit(120),
      fahrenheit(around),
      airflow(given.number('Q_cfm')),
      rectangle(given, 'W_in', 'H_in'),
      feet(given.number('L_ft')),
      thermalResistance(1 / given.number('U')),
      thermalResistance(0),
      standardAir,
      1.08,
    );
    return around + (given.number('tl_F') - around) / kept;
  },
  'S2-43': leavingThroughAll,
  'S2-45': leavingThroughAll,
  'SZ-07': () => 60 * standardAir.density * 0.24,
};

const fittings: Readonly<Record<string, Proof>> = {
  'FT-01': elbow('smooth'),
  'FT-02': elbow('smooth'),
  'FT-04': elbow('smooth'),
  'FT-05': elbow('5 pieces'),
  'FT-06': elbow('4 pieces'),
  'FT-07': elbow('3 pieces'),
  'FT-11': () => miterCoefficient(90, 1e6).plain,
  'FT-16': () => value(elbowCoefficient('smooth', 1, 45)).angleFactor,
  'FT-17': (given) => miterCoefficient(90, given.number('Re')).reynoldsFactor,
  'FT-18': elbow('smooth'),
  'FT-19': () => value(rectangularElbowCoefficient('radius', 1, 1)),
  'FT-25': (given) =>
    value(enlargementCoefficient(inches(given.number('D1_in')), inches(given.number('D2_in')))),
  'S2-38': branch('branch'),
  'S2-40': branch('branch'),
  'S2-42': branch('straight'),
};

const notYet: readonly NotYet[] = [
  {
    why: 'No function holds the handbook tables of elbows by diameter, or of entries: tables of handbooks differ, and a user types the figure of the fitting at hand.',
    ids: ['FT-13', 'FT-14', 'FT-15', 'FT-26', 'FT-27'],
  },
  {
    why: 'The open branch formula gives 0.588 here; the function says so beside its figure.',
    ids: ['FT-28'],
  },
  {
    why: 'Short factors for height and heat on friction; friction is worked again with the real density and viscosity instead, which comes within 1 % of them.',
    ids: ['AC-06', 'AC-07'],
  },
  {
    why: 'No function works on fans: their pressure at altitude, their total pressure, their laws of speed and power.',
    ids: ['AC-09', 'FL-01', 'FL-02', 'FL-04', 'FL-05', 'S2-24', 'S2-25', 'S2-26', 'S2-27'],
  },
  { why: 'Air is taken as dry; no function takes its moisture into account.', ids: ['S2-29'] },
  {
    why: 'Rules of thumb in one line, by the ton or by a fixed depth, are plain formulas in a cell.',
    ids: ['SZ-08', 'S2-20'],
  },
  {
    why: 'Limits by floor area or by the share of the fan are one multiplication, and the local code sets them.',
    ids: ['LK-06', 'LK-07', 'S2-33'],
  },
  {
    why: 'No function limits velocity by noise; the limit is typed in where a size is asked for.',
    ids: ['NV-01', 'NV-02', 'NV-03', 'NV-04'],
  },
  {
    why: 'Dew points and sweating belong to the wrap functions.',
    ids: ['DP-01', 'DP-02', 'DP-03', 'DP-04', 'DP-05', 'DP-06', 'DP-07', 'DP-08', 'S2-46'],
  },
  {
    why: 'Conversions that no function needs.',
    ids: ['UN-02', 'UN-03', 'UN-04', 'UN-05'],
  },
];

holdAgainst('airflow-checks.csv', { ...proofs, ...fittings, ...flexSupportProofs, ...pricingProofs }, notYet);
