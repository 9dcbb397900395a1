import { expect } from 'vitest';
import type { Outcome } from '../../src/base/outcome.ts';
import {
  airflow,
  conductivity,
  fahrenheit,
  feet,
  inches,
  inchesOfWater,
  poundsPerCubicFoot,
  squareFeet,
  thermalResistance,
} from '../../src/base/quantity.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';
import { standardAir } from '../../src/trade/air/density.ts';
import { classLeakage, expectedClass, pascalsPerInch, testedClass } from '../../src/trade/air/leakage.ts';
import { leavingAir } from '../../src/trade/air/temperature.ts';
import type { TradeFault } from '../../src/trade/fault.ts';
import { facingTape } from '../../src/trade/seal/facing.ts';
import { leakageLimit, type TestStage } from '../../src/trade/seal/limit.ts';
import { beadsFor, masticCoverage, masticFor } from '../../src/trade/seal/mastic.ts';
import { leastInRound } from '../../src/trade/seal/screws.ts';
import { seamStaples } from '../../src/trade/seal/staples.ts';
import type { DuctSection } from '../../src/trade/section.ts';
import { dewPointOf, saturationPressure } from '../../src/trade/wrap/dew-point.ts';
import { type CornerRule, geometryStretchOut } from '../../src/trade/wrap/geometry.ts';
import { flatR, roundLayer } from '../../src/trade/wrap/layer.ts';
import { type DuctInPlace, type NeededCode, neededR } from '../../src/trade/wrap/needed.ts';
import { runPieces } from '../../src/trade/wrap/pieces.ts';
import { bottomPins } from '../../src/trade/wrap/pins.ts';
import {
  type AllowanceColumn,
  type AllowanceTable,
  publishedAllowance,
} from '../../src/trade/wrap/published.ts';
import { rLeft } from '../../src/trade/wrap/r-left.ts';
import { conductivityByDensity, squeezedByDensity } from '../../src/trade/wrap/squeezed.ts';
import { type StretchOutMethod, stretchOut } from '../../src/trade/wrap/stretch-out.ts';
import {
  type DuctWall,
  dryR,
  dryThickness,
  mostPermeance,
  surfaceTemperature,
} from '../../src/trade/wrap/sweating.ts';
import { holdAgainst, type Proof, type RowInputs } from './checks.ts';

function given<T>(outcome: Outcome<T, TradeFault>): T {
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

const round = (diameter: number): DuctSection => ({ shape: 'round', diameter: inches(diameter) });
const rectangular = ({ number }: RowInputs): DuctSection => ({
  shape: 'rectangular',
  width: inches(number('W_in')),
  depth: inches(number('H_in')),
});

const added =
  (table: AllowanceTable, column: AllowanceColumn): Proof =>
  ({ number }) =>
    given(publishedAllowance(table, column, inches(number('t_nominal_in')))).added;

function cutBy(section: DuctSection, method: StretchOutMethod, nominal: number): number {
  const wrap = {
    name: 'wrap',
    thickness: inches(nominal),
    installed: inches(0.75 * nominal),
    shop: { round: null, square: null, rectangular: null },
  };
  return given(stretchOut(section, wrap, method, inches(2), 'bent')).cut;
}

const geometry =
  (sectionOf: (inputs: RowInputs) => DuctSection, corners: CornerRule): Proof =>
  (inputs) => {
    const [installed, lap] = [inputs.number('t_installed_in'), inputs.number('lap_in')].map(inches);
    if (installed === undefined || lap === undefined) throw new Error('two lengths');
    return geometryStretchOut(sectionOf(inputs), installed, lap, corners).cut;
  };

const strips = ({ number }: RowInputs): number =>
  given(runPieces(inches(12 * number('L_ft')), inches(number('roll_width_in')), inches(0))).pieces;

/** The wraps that examples and manual show carry published figures; this finds the one of a row. */
function shownWrap(thickness: number, isDense: boolean) {
  const row = exampleWraps.find(
    (one) => one[1] === thickness && String(one[0]).startsWith('Dense') === isDense,
  );
  if (!row) throw new Error(`no example wrap of ${thickness} in`);
  return {
    name: String(row[0]),
    thickness: inches(Number(row[1])),
    installed: inches(Number(row[2])),
    labelR: thermalResistance(Number(row[3])),
    installedR: thermalResistance(Number(row[4])),
  };
}

/** R that is left when that wrap is cut by geometry for a thickness. */
function rAt(thickness: number, wrap: ReturnType<typeof shownWrap>): number {
  const cut = geometryStretchOut(round(12), inches(thickness), inches(2), 'bent').cut;
  return given(rLeft(round(12), cut, wrap, inches(2), 'bent')).r;
}

const installedR: Proof = ({ number }) =>
  rAt(number('t_installed_in'), shownWrap(number('t_nominal_in'), number('density_lb_ft3') === 1));

const perHundred: Proof = ({ number }) =>
  classLeakage(number('CL'), inchesOfWater(number('P_in_wg')), squareFeet(100)).perHundred;

const layerOf = ({ number }: RowInputs) =>
  roundLayer(inches(number('D_in')), inches(number('t_in')), conductivity(number('k')));

/** The core of flex: its rated R is flat, and its conductivity the one that the paper implies. */
const flexCore = ({ number }: RowInputs): number => {
  const k = number('k_implied');
  return roundLayer(inches(number('D_in')), inches(number('R_rated') * k), conductivity(k)).onBare;
};

const squeezedR: Proof = ({ number }) => {
  const thickness = inches(number('t_nominal_in'));
  const left = inches(thickness * (1 - number('compression')));
  return given(
    squeezedByDensity({ name: 'wrap', thickness }, left, poundsPerCubicFoot(number('density_lb_ft3'))),
  ).r;
};

const needed =
  (code: NeededCode, about: Partial<DuctInPlace>): Proof =>
  () =>
    given(
      neededR(code, {
        place: 'attic',
        size: inches(8),
        duty: 'supply',
        zone: null,
        difference: null,
        ...about,
      }),
    ).r;

const allowed =
  (stage: TestStage): Proof =>
  ({ number }) => {
    const limit = given(leakageLimit('IRC 2018', stage, squareFeet(number('floor_area_ft2'))));
    expect(limit.perHundred).toBe(number('rate_cfm_per_100ft2'));
    return limit.limit;
  };

const perGallon: Proof = ({ number }) =>
  1 / masticFor(inches(12), inches(number('band_in')), number('film_mil'), 0, 0.56).net;

const pins: Proof = ({ number }) =>
  bottomPins(
    inches(number('W_in')),
    inches(12 * number('L_ft')),
    inches(number('s_in')),
    inches(number('threshold_in')),
  ).pins;

const fahrenheitOf = (celsius: number) => fahrenheit(1.8 * celsius + 32);
const celsiusOf = (temperature: number) => (temperature - 32) / 1.8;
const dewPoint: Proof = ({ number }) => dewPointOf(fahrenheit(number('T_F')), number('RH')).dewPoint;
const dewPointCelsius: Proof = ({ number }) =>
  celsiusOf(dewPointOf(fahrenheitOf(number('T_C')), number('RH')).dewPoint);
const pascalsPerPsi = 6894.757;

/** 1 h·ft²·°F/Btu in m²·K/W, and 1 Btu·in/(h·ft²·°F) in W/(m·K). */
const metricR = 0.176_11;
const metricK = 1 / 6.933_47;

const wallOf = ({ number }: RowInputs): DuctWall => ({
  around: fahrenheit(number('T_air_F')),
  inside: fahrenheit(number('T_duct_F')),
  outerFilm: thermalResistance(number('Rs')),
  innerFilm: thermalResistance(0),
});
const dry: Proof = (inputs) => dryR(wallOf(inputs), inputs.number('RH')).r;
const face: Proof = (inputs) =>
  surfaceTemperature(wallOf(inputs), thermalResistance(inputs.number('R_ins'))).surface;
const isWet: Proof = (inputs, row) =>
  Number(face(inputs, row)) <= dewPointOf(wallOf(inputs).around, inputs.number('RH')).dewPoint ? 1 : 0;

/** The row is in SI; the product works in inches and °F. */
const dryMillimetres: Proof = ({ number }) => {
  const wall = {
    around: fahrenheitOf(number('T_air_C')),
    inside: fahrenheitOf(number('T_duct_C')),
    outerFilm: thermalResistance(1 / number('h_W_m2K') / metricR),
    innerFilm: thermalResistance(0),
  };
  const flat = { shape: 'rectangular', width: inches(20), depth: inches(8) } as const;
  const k = conductivity(number('k_W_mK') / metricK);
  return given(dryThickness(flat, wall, number('RH'), k)).thickness * 25.4;
};

/** A run that carries heat; one cfm of the rows' air carries 60 × rho × 0.24 Btu/h for each degree. */
function runHeat({ number }: RowInputs, section: DuctSection, wrap: number, films: number, entering: number) {
  const heat = leavingAir(
    fahrenheit(entering),
    fahrenheit(number('T_air_F')),
    airflow(number('cfm')),
    section,
    feet(number('L_ft')),
    thermalResistance(wrap),
    thermalResistance(films),
    standardAir,
    60 * number('rho') * 0.24,
  );
  return { ...heat, y: (2 * heat.carried) / (heat.transmittance * heat.surface) };
}

/** Bare metal: the share that is left at the end does not depend on the air, so the entering air follows from the leaving. */
function bareRun(inputs: RowInputs) {
  const { number } = inputs;
  const [leaving, around, films] = [number('T_leave_F'), number('T_air_F'), 1 / number('U')];
  const { kept } = runHeat(inputs, rectangular(inputs), 0, films, leaving);
  const entering = around + (leaving - around) / kept;
  return { entering, ...runHeat(inputs, rectangular(inputs), 0, films, entering) };
}

const wrappedRun = (inputs: RowInputs) => {
  const { number } = inputs;
  return runHeat(inputs, round(number('D_in')), number('R_ins'), number('R_films'), number('T_enter_F'));
};

holdAgainst(
  'insulation-checks.csv',
  {
    'SO-01': added('three-column', 'round'),
    'SO-02': added('three-column', 'round'),
    'SO-03': added('three-column', 'round'),
    'SO-04': added('three-column', 'round'),
    'SO-05': added('three-column', 'round'),
    'SO-06': added('three-column', 'square'),
    'SO-08': added('three-column', 'square'),
    'SO-09': added('three-column', 'square'),
    'SO-11': added('three-column', 'rectangular'),
    'SO-13': added('three-column', 'rectangular'),
    'SO-14': added('three-column', 'rectangular'),
    'SO-15': added('three-column', 'rectangular'),
    'SO-16': (inputs, row) => {
      expect(added('two-column', 'rectangular')(inputs, row)).toBe(
        added('two-column', 'square')(inputs, row),
      );
      return added('two-column', 'square')(inputs, row);
    },
    'SO-17': added('two-column', 'square'),
    'SO-18': ({ number }) => cutBy(round(number('D_in')), 'published', number('t_nominal_in')),
    'SO-19': geometry(({ number }) => round(number('D_in')), 'bent'),
    'SO-20': (inputs) => cutBy(rectangular(inputs), 'published', inputs.number('t_nominal_in')),
    'SO-21': (inputs) => cutBy(rectangular(inputs), 'published two-column', inputs.number('t_nominal_in')),
    'SO-22': geometry(rectangular, 'sharp'),
    'SO-23': geometry(rectangular, 'bent'),
    'SO-25': strips,
    'SO-26': (inputs) =>
      (strips(inputs) * cutBy(round(inputs.number('D_in')), 'published', inputs.number('t_nominal_in'))) / 12,
    'RV-02': installedR,
    'RV-03': installedR,
    'RV-04': installedR,
    'RV-05': installedR,
    'RV-06': installedR,
    'RV-07': ({ number }) => rAt(number('t_nominal_in'), shownWrap(number('t_nominal_in'), false)),
    'RV-08': ({ number }) => {
      const wrap = shownWrap(1.5, false);
      expect([wrap.labelR, wrap.installedR]).toEqual([number('R_label'), number('R_installed')]);
      return rAt(wrap.installed, wrap) / rAt(wrap.thickness, wrap);
    },
    'RV-09': ({ number }) => number('t_nominal_in') / rAt(number('t_nominal_in'), shownWrap(1.5, false)),
    'RV-10': ({ number }) => number('t_installed_in') / rAt(number('t_installed_in'), shownWrap(1.5, false)),
    'RV-11': ({ number }) => given(conductivityByDensity(poundsPerCubicFoot(number('density_lb_ft3')))),
    'RV-12': squeezedR,
    'RV-13': squeezedR,
    'RV-18': (inputs) => layerOf(inputs).onFace,
    'RV-19': ({ number }) => flatR(inches(number('t_in')), conductivity(number('k'))),
    'RV-20': (inputs) => layerOf(inputs).onBare,
    'RV-21': flexCore,
    'RV-22': flexCore,
    'RV-23': (inputs) => flexCore(inputs) + inputs.number('R_films'),
    'RV-25': ({ number }) => flatR(inches(number('t_in')), conductivity(number('k'))),
    'CM-02': needed('IECC 2015 homes', { size: inches(2.5) }),
    'CM-03': needed('IECC 2015 homes', { place: 'crawl space' }),
    'CM-05': needed('Washington 2021 homes', { place: 'crawl space' }),
    'CM-07': needed('IECC 2015 commercial', { zone: 5 }),
    'CM-08': needed('IECC 2015 commercial', { place: 'outdoors', zone: 5 }),
    'CM-09': needed('IECC 2015 commercial', { place: 'outdoors', zone: 3 }),
    'CM-10': allowed('rough-in'),
    'CM-11': allowed('rough-in without air handler'),
    'CM-12': () => mostPermeance,
    'CM-13': () => leastInRound,
    'AP-02': ({ number }) => masticCoverage(number('film_mil')),
    'AP-03': perGallon,
    'AP-04': perGallon,
    'AP-06': ({ number }) => beadsFor(inches(1), inches(number('bead_in')), 10.5, 0).perCartridge / 12,
    'AP-07': ({ number }) =>
      masticFor(inches(1), inches(2), number('film_mil'), 0, number('solids_by_volume')).dryFilm,
    'AP-10': pins,
    'AP-11': pins,
    'DP-01': dewPoint,
    'DP-04': dewPoint,
    'DP-05': dewPoint,
    'DP-06': dewPoint,
    'DP-07': dewPointCelsius,
    'DP-09': dewPointCelsius,
    'DP-10': dewPointCelsius,
    'DP-12': dewPointCelsius,
    'DP-13': ({ number }) => saturationPressure(fahrenheitOf(number('T_C'))) * pascalsPerPsi,
    // The row is the two-constant form; the product has the full equations, which agree within the tolerance of the row.
    'DP-14': dewPointCelsius,
    'CO-01': dry,
    'CO-02': dry,
    'CO-03': dry,
    'CO-05': face,
    'CO-07': isWet,
    'CO-08': isWet,
    'CO-09': (inputs) => {
      const { number } = inputs;
      const thickness = dryThickness(
        round(number('D_in')),
        wallOf(inputs),
        number('RH'),
        conductivity(number('k')),
      );
      return given(thickness).thickness;
    },
    'CO-11': dryMillimetres,
    'CO-12': dryMillimetres,
    'AP-09': ({ number }) => seamStaples(inches(number('seam_in')), inches(number('spacing_in'))).staples,
    'AP-12': ({ number }) =>
      facingTape(
        round(number('D_in')),
        inches(12 * number('L_ft')),
        inches(number('t_installed_in')),
        inches(number('roll_width_in')),
        0,
      ).length / 12,
    'HT-01': (inputs) => bareRun(inputs).y,
    'HT-02': (inputs) => bareRun(inputs).entering,
    'HT-03': (inputs) => -bareRun(inputs).gain,
    'HT-04': (inputs) => wrappedRun(inputs).y,
    // The rows by the mean difference: the product has the exponential form, within 0.001 °F of it here.
    'HT-05': (inputs) => wrappedRun(inputs).leaving,
    'HT-06': (inputs) => wrappedRun(inputs).leaving,
    'HT-07': (inputs) => wrappedRun(inputs).gain,
    'HT-08': (inputs) => wrappedRun(inputs).leaving,
    'LK-01': perHundred,
    'LK-02': perHundred,
    'LK-03': perHundred,
    'LK-04': perHundred,
    'LK-06': perHundred,
    'LK-07': ({ number }) =>
      classLeakage(number('CL'), inchesOfWater(number('P_Pa') / pascalsPerInch), squareFeet(100)).perHundred,
    'LK-09': ({ number }) =>
      classLeakage(number('CL'), inchesOfWater(number('P_in_wg')), squareFeet(number('A_ft2'))).leakage,
    'LK-10': ({ number }) =>
      testedClass(airflow(number('cfm')), squareFeet(number('A_ft2')), inchesOfWater(number('P_in_wg')))
        .leakageClass,
    'LK-12': () => given(expectedClass('C', 'rectangular', 1985)),
    'LK-13': () => given(expectedClass('A', 'round', 1985)),
  },
  [
    {
      why: 'nothing is read between the rows of a published table, so 5T + 2 is not used: the function refuses',
      ids: ['SO-24'],
    },
    {
      why: 'conductivity and R are shown in inch-pound only; the published points in SI stand in the test of squeezed wrap',
      ids: ['RV-14', 'RV-15', 'RV-16'],
    },
    {
      why: 'closure marks of tape for board, and flex on a collar, are practice and no figure of the product',
      ids: ['AP-14', 'AP-15'],
    },
    {
      why: 'the constant of y is not used: heat along a run is worked by the exponential form',
      ids: ['HT-10'],
    },
    { why: 'leakage classes are shown in inch-pound only', ids: ['LK-11'] },
  ],
);
