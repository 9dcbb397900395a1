import { done } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import { type TrunkFace, tapSeal } from '../../trade/seal/tap.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayFeet, sayInches } from '../say.ts';
import { perimeterFormula, saySection, sectionArguments, sectionOf } from '../section.ts';
import type { Step } from '../working.ts';
import { returnDucts, sealFirst, sharpMetal } from './cautions.ts';
import { jointsArgument } from './joint.ts';
import { tapDrawing } from './tap-drawing.ts';

/** Sealing length of taps: two seams each. Inches. Faults: `tap_wider_than_trunk`. Source: geometry. */
export const sealTap = defineFunction({
  name: 'SEAL.TAP',
  says: 'Length of tape or mastic for a tap: where it meets the trunk, and its first joint.',
  words: ['seal a tap', 'takeoff', 'collar', 'branch', 'two seams', 'saddle'],
  gives: { label: 'To seal', unit: 'in' },
  arguments: {
    ...sectionArguments,
    trunk: optional<Inches | null>(
      quantity('in', {
        says: 'the diameter of a round trunk; blank where the tap stands on a flat side',
        least: 2,
        most: 120,
        why: 'trunks under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
      }),
      null,
      'the tap then stands on a flat side',
    ),
    taps: { ...jointsArgument, says: 'how many such taps there are' },
  },
  formula: [
    String.raw`\text{to seal} = \text{taps} \times (S + P), \quad S = P \text{ on a flat side}`,
    String.raw`\text{round on round:}\quad S = \int_0^{2\pi} \sqrt{r^2 + \frac{r^4 \sin^2\theta \cos^2\theta}{R^2 - r^2 \sin^2\theta}} \ d\theta, \quad r = \frac{\text{width}}{2}, \quad R = \frac{\text{trunk}}{2}`,
    String.raw`\text{rectangular on round:}\quad S = 2 \left(\text{width} + \text{trunk} \times \arcsin\frac{\text{depth}}{\text{trunk}}\right)`,
    perimeterFormula,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const trunk: TrunkFace =
      given.trunk === null ? { type: 'flat' } : { type: 'round', diameter: given.trunk };
    const seal = fromTrade(tapSeal(section.value, trunk));
    if (!seal.ok) return seal;
    return done({
      section: section.value,
      trunk,
      ...seal.value,
      all: inches(seal.value.length * given.taps),
    });
  },
  result: ({ all }) => all,
  steps: ({ section, trunk, atTrunk, atBranch, length, all }, { taps }): readonly Step[] => [
    {
      label: 'Where it meets the trunk',
      sum:
        trunk.type === 'flat'
          ? `once round ${saySection(section)}, on a flat side`
          : `the curve of ${saySection(section)} on a trunk of ${sayInches(trunk.diameter)}, added up in small steps`,
      value: atTrunk,
      unit: 'in',
      source: 'geometry',
    },
    {
      label: 'Its first joint',
      sum: `once round ${saySection(section)}`,
      value: atBranch,
      unit: 'in',
      source: 'geometry',
    },
    { label: 'One tap', sum: `${figure(atTrunk, 2)} + ${figure(atBranch, 2)}`, value: length, unit: 'in' },
    { label: 'To seal', sum: `${figure(length, 2)} × ${taps} = ${sayFeet(all)}`, value: all, unit: 'in' },
  ],
  drawing: ({ section, trunk, atTrunk, atBranch }) => tapDrawing(section, trunk, atTrunk, atBranch),
  cautions: () => [sharpMetal, sealFirst, returnDucts],
  sources: ['geometry'],
  examples: [
    {
      says: 'an 8 in round tap on a flat side',
      given: { shape: 'round', width: 8 },
      gives: 50.2655,
      tolerance: 1e-4,
    },
    {
      says: 'a 12 × 8 in tap along a 16 in round trunk',
      given: { shape: 'rectangular', width: 12, depth: 8, trunk: 16 },
      gives: 80.7552,
      tolerance: 1e-4,
    },
  ],
});
