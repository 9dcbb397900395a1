import { inchesOfWater, share } from '../cells.ts';
import type { Line } from '../form.ts';
import { allowance, thisShop } from './lines.ts';

const standard = 'duct construction standard, table 1-2';
const aPressure = { least: 0.1, most: 20, why: 'it is a static pressure of duct' };

function from(name: string, label: string, content: number, letter: string, what: string): Line {
  return allowance(
    name,
    label,
    {
      asks: `From which static pressure on is seal class ${letter} asked for: ${what}?`,
      ...aPressure,
      usual: content,
    },
    { content, ...inchesOfWater },
    standard,
  );
}

const aShare = { least: 0.001, most: 0.5, why: 'a duct that leaks half of its air is open' };

/** What share of the air may leak, and from which pressure on which seal class is asked for. */
export const leakageLimits: readonly Line[] = [
  allowance(
    'leak_look',
    'Leakage, a look above',
    { asks: 'Above which share of the airflow is leakage worth a look?', ...aShare, usual: 0.05 },
    { content: 0.05, ...share },
    thisShop,
  ),
  allowance(
    'leak_stop',
    'Leakage, at most',
    { asks: 'Above which share of the airflow does leakage stop the work?', ...aShare, usual: 0.1 },
    { content: 0.1, ...share },
    thisShop,
  ),
  from('seal_c_from', 'Seal class C from', 2, 'C', 'cross joints'),
  from('seal_b_from', 'Seal class B from', 3, 'B', 'joints and seams'),
  from('seal_a_from', 'Seal class A from', 4, 'A', 'joints, seams and what goes through the walls'),
  allowance(
    'test_exponent',
    'Leakage grows with pressure by',
    {
      asks: 'With which exponent does leakage grow with pressure, to bring a test to the pressure of the duct?',
      least: 0.5,
      most: 1,
      why: 'leaks behave between a hole and a crack',
      usual: 0.6,
    },
    { content: 0.6, unit: 'ratio', format: { type: 'decimal', places: 2 } },
    'manual of a duct tester: 0.60',
  ),
];
