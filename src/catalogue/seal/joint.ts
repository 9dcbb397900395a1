import { done } from '../../base/outcome.ts';
import { jointSeal } from '../../trade/seal/joint.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayFeet } from '../say.ts';
import { perimeterFormula, perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';
import { returnDucts, sealFirst, sharpMetal } from './cautions.ts';
import { jointDrawing } from './joint-drawing.ts';

/** How many joints are counted at once. */
export const jointsArgument = optional(
  quantity('count', {
    says: 'how many such joints there are',
    least: 0,
    most: 1000,
    why: 'a run with over 1,000 joints is most likely a slip',
    whole: true,
  }),
  1,
  'one joint is counted unless more are named',
);

/** Sealing length of joints between lengths of duct. Inches. Source: geometry. */
export const sealJoint = defineFunction({
  name: 'SEAL.JOINT',
  says: 'Length of tape or mastic for the joints between lengths of duct, once round the metal each.',
  words: ['seal a joint', 'tape a joint', 'mastic', 'foil tape', 'round the joint'],
  gives: { label: 'To seal', unit: 'in' },
  arguments: { ...sectionArguments, joints: jointsArgument },
  formula: [String.raw`\text{to seal} = \text{joints} \times P`, perimeterFormula],
  work: (given) => {
    const section = sectionOf(given);
    return section.ok ? done({ section: section.value, ...jointSeal(section.value, given.joints) }) : section;
  },
  result: ({ length }) => length,
  steps: ({ section, around, joints, length }) => [
    perimeterStep(section),
    {
      label: 'To seal',
      sum: `${figure(around, 2)} × ${joints} = ${sayFeet(length)}`,
      value: length,
      unit: 'in',
    },
  ],
  drawing: ({ section, around }) =>
    jointDrawing({
      title: 'Joint to seal',
      describes: `A joint of ${saySection(section)} duct, sealed once round: ${figure(around, 2)} in.`,
      section,
      around: `${figure(around, 2)} in round`,
    }),
  cautions: () => [sharpMetal, sealFirst, returnDucts],
  sources: ['geometry'],
  examples: [
    {
      says: 'one joint of a 12 in pipe',
      given: { shape: 'round', width: 12 },
      gives: 37.6991,
      tolerance: 1e-4,
    },
    {
      says: 'three joints of a 20 × 8 in duct',
      given: { shape: 'rectangular', width: 20, depth: 8, joints: 3 },
      gives: 168,
    },
  ],
});
