import { done, failed, type Outcome } from '../../base/outcome.ts';
import type { Inches } from '../../base/quantity.ts';
import {
  type HangRule,
  type HungDuct,
  hangerSpacing,
  hangRules,
  hungDucts,
  type Spacing,
  usualRule,
} from '../../trade/hang/spacing.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { CallFault } from '../fault.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCount, sayFeet, sayValue } from '../say.ts';
import type { SourceId } from '../sources.ts';
import type { Caution, Step } from '../working.ts';
import { codeDecides, nearFittings, overhead } from './cautions.ts';
import { runDrawing } from './run-drawing.ts';

interface Allowed extends Spacing {
  readonly asked: number;
}

const sourceOf: Readonly<Record<HangRule, Readonly<Record<'metal' | 'flex', SourceId>>>> = {
  'work specification': { metal: 'work-specification', flex: 'work-specification' },
  'duct standard': { metal: 'duct-standard-spacing', flex: 'duct-standard-1995-flex' },
  'older dwelling code': { metal: 'dwelling-code-older-hangers', flex: 'dwelling-code-older-hangers' },
  'older mechanical code': { metal: 'mechanical-code-older-hangers', flex: 'mechanical-code-older-hangers' },
  'flex standard': { metal: 'flex-standard-2010', flex: 'flex-standard-2010' },
  'older flex standard': { metal: 'flex-standard-older', flex: 'flex-standard-older' },
  riser: { metal: 'riser-note', flex: 'flex-riser' },
};

/** Spacing of supports by a named rule. Inches; a gauge where one is asked for. Faults: `not_in_the_table`. */
export const hangSpacing = defineFunction({
  name: 'HANG.SPACING',
  says: 'How far apart hangers may stand by a named rule, or the least strap that the rule names.',
  words: [
    'hanger spacing',
    'how far apart',
    'support spacing',
    'hang duct',
    'strap every',
    'flex support',
    'riser support',
  ],
  gives: { label: 'Spacing allowed', unit: 'in', orUnits: ['gauge'] },
  unitOf: ({ what }) => (what === 'strap gauge' ? 'gauge' : 'in'),
  arguments: {
    duct: choice(hungDucts, { says: 'what hangs: round or rectangular metal duct, or flex' }),
    rule: optional<HangRule | null>(
      choice(hangRules, {
        says: 'the rule: "work specification" is that for homes of 2017 and 2020, "duct standard" that of the contractors, "flex standard" that of 2010, "riser" for upright duct',
      }),
      null,
      'metal goes by the work specification and flex by the flex standard of 2010: both were read, and neither is the widest',
    ),
    section: optional<Inches | null>(
      quantity('in', {
        says: 'the length of one section of duct, where hangers stand at joints; blank where they need not',
        least: 12,
        most: 300,
        why: 'duct is made in sections of 1 to 25 ft',
      }),
      null,
      'joints then do not matter; 4 ft sections are mostly hung every 8 ft',
    ),
    own: optional<Inches | null>(
      quantity('in', {
        says: 'the widest spacing that the shop allows itself, or that the engineer wrote; blank for none',
        least: 12,
        most: 300,
        why: 'hangers stand between 1 and 25 ft apart',
      }),
      null,
      'the rule alone then decides; a wider figure than the rule changes nothing',
    ),
    what: optional(
      choice(['spacing', 'strap width', 'strap gauge'], {
        says: 'the spacing, or the least width or gauge of strap that the rule names',
      }),
      'spacing',
      'it is what a run is laid out by',
    ),
  },
  formula: [
    String.raw`\text{spacing} = \min(\text{rule},\ \text{own}), \quad \text{at joints: } n \times \text{section}, \quad n = \min\left(2, \left\lfloor \frac{\text{spacing}}{\text{section}} \right\rfloor\right)`,
  ],
  work: ({ duct, rule, section, own, what }): Outcome<Allowed, CallFault> => {
    const by = rule ?? usualRule(duct);
    const found = fromTrade(hangerSpacing(duct, by, section, own));
    if (!found.ok) return found;
    const { kept, strapWidth, strapGauge } = found.value;
    const asked = { spacing: kept, 'strap width': strapWidth, 'strap gauge': strapGauge }[what];
    return asked === null
      ? failed({ code: 'trade', fault: { code: 'not_in_the_table', table: by, what: `the ${what}` } })
      : done({ ...found.value, asked });
  },
  result: ({ asked }) => asked,
  steps: (allowed, given) => {
    const source = sourceFor(allowed.rule, given.duct);
    const { rule, spacing, sections, kept, asked } = allowed;
    if (given.what !== 'spacing') {
      const isWidth = given.what === 'strap width';
      return [
        {
          label: isWidth ? 'Least width of the strap' : 'Lightest gauge of the strap',
          sum: `by the ${rule}`,
          value: asked,
          unit: isWidth ? 'in' : 'gauge',
          source,
        },
      ];
    }
    const byRule: Step = { label: 'By the rule', sum: rule, value: spacing, unit: 'in', source };
    const own: readonly Step[] =
      given.own === null
        ? []
        : [{ label: 'The shop’s own limit', sum: '', value: given.own, unit: 'in' as const }];
    const last: Step = {
      label: 'Spacing allowed',
      sum:
        sections === null || given.section === null
          ? ''
          : `${sayCount(sections, 'section')} of ${figure(given.section, 4)} in, two at most`,
      value: kept,
      unit: 'in',
      ...(sections === null ? {} : { source: 'section-hanging' as const }),
    };
    return [byRule, ...own, last];
  },
  drawing: ({ kept, rule }, { duct }) =>
    runDrawing({
      title: `Hangers of ${duct} duct`,
      describes: `Two hangers of ${duct} duct at most ${sayFeet(kept)} apart, by the ${rule}.`,
      places: [0, 1],
      carriesStart: false,
      carriesEnd: false,
      note: `by the ${rule}`,
      length: `at most ${sayFeet(kept)}`,
    }),
  cautions: (allowed, given): readonly Caution[] => [
    codeDecides,
    overhead,
    ...(given.duct === 'flex' || allowed.rule === 'riser' ? [] : [nearFittings]),
    ...spacingLooks(allowed, given),
  ],
  sources: ['dwelling-code-2018-hangers'],
  examples: [
    {
      says: 'metal duct in a home, by the work specification',
      given: { duct: 'rectangular' },
      gives: 120,
      source: 'work-specification',
    },
    {
      says: 'flex, by the standard of 2010',
      given: { duct: 'flex' },
      gives: 48,
      source: 'flex-standard-2010',
    },
    {
      says: 'round pipe in sections of 4 ft, hung at joints',
      given: { duct: 'round', section: 48 },
      gives: 96,
      source: 'section-hanging',
    },
    {
      says: 'the least strap under flex',
      given: { duct: 'flex', what: 'strap width' },
      gives: 1.5,
      source: 'flex-standard-2010',
    },
  ],
});

function sourceFor(rule: HangRule, duct: HungDuct): SourceId {
  return sourceOf[rule][duct === 'flex' ? 'flex' : 'metal'];
}

function spacingLooks(
  { rule, spacing, sections }: Spacing,
  given: { readonly duct: HungDuct; readonly section: Inches | null; readonly own: Inches | null },
): readonly Caution[] {
  const source = sourceFor(rule, given.duct);
  const looks: Caution[] = [];
  const remembered: readonly SourceId[] = [
    'duct-standard-spacing',
    'dwelling-code-older-hangers',
    'mechanical-code-older-hangers',
    'flex-standard-older',
    'flex-riser',
  ];
  if (remembered.includes(source)) {
    looks.push({
      level: 'look',
      sentence:
        'This figure is from memory, not verified. Look it up in your own copy before you rely on it.',
      source,
    });
  }
  if (rule === 'older mechanical code') {
    looks.push({
      level: 'look',
      sentence: 'Some editions are remembered with 12 ft instead of 10 ft; the closer one is taken.',
      source,
    });
  }
  if (rule === 'riser' && given.duct !== 'flex') {
    looks.push({
      level: 'look',
      sentence: 'Risers are held at every floor or every second one, 12 to 24 ft; the closer one is taken.',
      source,
    });
  }
  if (rule === 'duct standard' && given.duct === 'flex') {
    looks.push({
      level: 'look',
      sentence: 'The makers of flex ask for 4 ft in their standard of 2010, far closer than this older page.',
      source: 'flex-standard-2010',
    });
  }
  if (given.section !== null && sections === null) {
    looks.push({
      level: 'look',
      sentence: `A section is longer than the ${sayValue(spacing, 'in')} of the rule, so hangers also stand between joints.`,
    });
  }
  if (given.own !== null && given.own > spacing) {
    looks.push({
      level: 'look',
      sentence: 'The shop’s own limit is wider than the rule allows, so the rule is kept.',
      source,
    });
  }
  return looks;
}
