import { feet, inches, inchesFromFeet } from '../../src/base/quantity.ts';
import { exampleHangers } from '../../src/catalogue/hang/hangers.ts';
import { hangSize } from '../../src/catalogue/hang/size.ts';
import { runHangers } from '../../src/trade/hang/count.ts';
import { flexSag, sagPerFoot } from '../../src/trade/hang/sag.ts';
import {
  type HangRule,
  type HungDuct,
  hangerSpacing,
  nearBranch,
  nearElbow,
} from '../../src/trade/hang/spacing.ts';
import { jointScrews } from '../../src/trade/seal/screws.ts';
import type { Proof } from './checks.ts';

function support(duct: HungDuct, rule: HangRule) {
  const outcome = hangerSpacing(duct, rule, null, null);
  if (!outcome.ok) throw new Error(outcome.fault.code);
  return outcome.value;
}

/** The strap of a duct so far round, hung every 5 ft, by the table that a workbook begins with. */
const strapGauge: Proof = (_, { inputs }) => {
  const perimeter = Number(/perimeter ([0-9]+)/.exec(inputs)?.[1]);
  const side = perimeter / 4;
  const outcome = hangSize.call(['rectangular', side, side, 60, exampleHangers]);
  return outcome.ok ? outcome.value.value : Number.NaN;
};

const sagOf = (spacing: number) => flexSag(inchesFromFeet(feet(spacing)), sagPerFoot).sag;

/** Rows of the sheet-metal list on hangers and supports. */
export const hangingProofs: Readonly<Record<string, Proof>> = {
  HG2: () => runHangers(inches(480), inches(120), 'one carried', 0).hangers,
  HG4: () => support('rectangular', 'work specification').kept / 12,
  HG5: () => support('flex', 'flex standard').kept / 12,
  HG6: () => sagOf(4),
  HG7: () => support('flex', 'flex standard').strapWidth ?? Number.NaN,
  HG8: strapGauge,
  HG9: strapGauge,
  HG10: () => [nearElbow / 12, nearBranch / 12],
  HG12: () => jointScrews({ shape: 'round', diameter: inches(20) }, inches(12), 1).screws,
};

/** The row of the airflow list on the supports of flex. */
export const flexSupportProofs: Readonly<Record<string, Proof>> = {
  'FX-10': (given) => sagOf(given.number('support_spacing_ft')),
};
