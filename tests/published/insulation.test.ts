import { expect } from 'vitest';
import type { Outcome } from '../../src/base/outcome.ts';
import { airflow, inches, inchesOfWater, squareFeet, thermalResistance } from '../../src/base/quantity.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';
import { classLeakage, expectedClass, pascalsPerInch, testedClass } from '../../src/trade/air/leakage.ts';
import type { TradeFault } from '../../src/trade/fault.ts';
import { facingTape } from '../../src/trade/seal/facing.ts';
import { leastInRound } from '../../src/trade/seal/screws.ts';
import { seamStaples } from '../../src/trade/seal/staples.ts';
import type { DuctSection } from '../../src/trade/section.ts';
import { type CornerRule, geometryStretchOut } from '../../src/trade/wrap/geometry.ts';
import { runPieces } from '../../src/trade/wrap/pieces.ts';
import {
  type AllowanceColumn,
  type AllowanceTable,
  publishedAllowance,
} from '../../src/trade/wrap/published.ts';
import { rLeft } from '../../src/trade/wrap/r-left.ts';
import { type StretchOutMethod, stretchOut } from '../../src/trade/wrap/stretch-out.ts';
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
    'CM-13': () => leastInRound,
    'AP-09': ({ number }) => seamStaples(inches(number('seam_in')), inches(number('spacing_in'))).staples,
    'AP-12': ({ number }) =>
      facingTape(
        round(number('D_in')),
        inches(12 * number('L_ft')),
        inches(number('t_installed_in')),
        inches(number('roll_width_in')),
        0,
      ).length / 12,
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
      why: 'squeezed R is figured from the two R figures of the wrap itself, not from its density',
      ids: ['RV-11', 'RV-12', 'RV-13'],
    },
    {
      why: 'conductivity and R in SI, round layers, flex and board come with surface temperature and dew point',
      ids: ['RV-14', 'RV-15', 'RV-16', 'RV-18', 'RV-19', 'RV-20', 'RV-21', 'RV-22', 'RV-23', 'RV-25'],
    },
    {
      why: 'needed R and leakage by place and code edition are functions of their own, not there yet',
      ids: ['CM-02', 'CM-03', 'CM-05', 'CM-07', 'CM-08', 'CM-09', 'CM-10', 'CM-11', 'CM-12'],
    },
    { why: 'mastic by film and band is not there yet', ids: ['AP-02', 'AP-03', 'AP-04', 'AP-06', 'AP-07'] },
    { why: 'pins under wide duct are not there yet', ids: ['AP-10', 'AP-11'] },
    {
      why: 'closure marks of tape for board, and flex on a collar, are practice and no figure of the product',
      ids: ['AP-14', 'AP-15'],
    },
    {
      why: 'dew point is not there yet',
      ids: ['DP-01', 'DP-04', 'DP-05', 'DP-06', 'DP-07', 'DP-09', 'DP-10', 'DP-12', 'DP-13', 'DP-14'],
    },
    {
      why: 'thickness against sweating is not there yet',
      ids: ['CO-01', 'CO-02', 'CO-03', 'CO-05', 'CO-07', 'CO-08', 'CO-09', 'CO-11', 'CO-12'],
    },
    {
      why: 'heat gain through y and U is worked by the exponential form, which the airflow list holds',
      ids: ['HT-01', 'HT-02', 'HT-03', 'HT-04', 'HT-05', 'HT-06', 'HT-07', 'HT-08', 'HT-10'],
    },
    { why: 'leakage classes are shown in inch-pound only', ids: ['LK-11'] },
  ],
);
