import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import { wholeDown } from '../whole.ts';

export const hungDucts = ['round', 'rectangular', 'flex'] as const;
export type HungDuct = (typeof hungDucts)[number];

export const hangRules = [
  'work specification',
  'duct standard',
  'older dwelling code',
  'older mechanical code',
  'flex standard',
  'older flex standard',
  'riser',
] as const;
export type HangRule = (typeof hangRules)[number];

/** What a rule says of the supports of one kind of duct. Null where it says nothing. */
export interface SupportRule {
  readonly spacing: Inches;
  readonly strapWidth: Inches | null;
  readonly strapGauge: number | null;
}

const rule = (feet: number, strapWidth: number | null = null, strapGauge: number | null = null) => ({
  spacing: inches(12 * feet),
  strapWidth: strapWidth === null ? null : inches(strapWidth),
  strapGauge,
});

const metal = (support: SupportRule) => ({ round: support, rectangular: support });

const supports: Readonly<Record<HangRule, Partial<Readonly<Record<HungDuct, SupportRule>>>>> = {
  // Standard work specifications of 2017, 3.1601.3, and of 2020, 6.0101.1g, read.
  'work specification': { ...metal(rule(10, 0.5, 18)), flex: rule(4, 1.5) },
  // Metal from memory; flex by the standard of 1995, S3.36, read on a copy of the page.
  'duct standard': { round: rule(12), rectangular: rule(10), flex: rule(10, 1) },
  // Residential code of 2003 to 2012, from memory.
  'older dwelling code': metal(rule(10, 0.5, 18)),
  // Mechanical code 603.10 of older editions, from memory: some say 12 ft, and the closer one is kept.
  'older mechanical code': metal(rule(10)),
  // Flexible duct standard, 5th ed. 2010, 4.6, as a guide of a national laboratory quotes it.
  'flex standard': { flex: rule(4, 1.5) },
  // Its 4th edition, from memory.
  'older flex standard': { flex: rule(5) },
  // Metal: a contractor's note, one- or two-story intervals of 12 to 24 ft, the closer one kept. Flex: from memory.
  riser: { ...metal(rule(12)), flex: rule(6) },
};

/** A support is wanted within this distance of each elbow and of each branch of a level metal duct: duct standard of
 *  2005, 4.1, read in a third-party copy. */
export const nearElbow = inches(24);
export const nearBranch = inches(48);

/** More sections than this never hang between two supports: two trade articles. */
const mostSections = 2;

export interface Spacing extends SupportRule {
  readonly rule: HangRule;
  /** Whole sections between two supports, where the joints decide; otherwise null. */
  readonly sections: number | null;
  /** What is kept: the least of what the rule, the sections and the shop allow. */
  readonly kept: Inches;
}

/** The rule that is taken where none is named: of those that were not only remembered, the closest spacing. */
export function usualRule(duct: HungDuct): HangRule {
  return duct === 'flex' ? 'flex standard' : 'work specification';
}

/** How far apart supports may stand (in): by a rule, brought down to whole sections of duct where their length is given,
 *  and to the shop's own limit. A section longer than the rule allows leaves the rule as it is. Faults:
 *  `not_in_the_table`. Sources: beside each rule. */
export function hangerSpacing(
  duct: HungDuct,
  by: HangRule,
  section: Inches | null,
  own: Inches | null,
): Outcome<Spacing, TradeFault> {
  const support = supports[by][duct];
  if (support === undefined) {
    return failed({ code: 'not_in_the_table', table: by, what: `${duct} duct` });
  }
  const limit = own === null ? support.spacing : inches(Math.min(own, support.spacing));
  const whole = section === null ? 0 : Math.min(mostSections, wholeDown(limit / section));
  const sections = whole === 0 ? null : whole;
  const kept = section === null || sections === null ? limit : inches(Math.min(limit, sections * section));
  return done({ ...support, rule: by, sections, kept });
}
