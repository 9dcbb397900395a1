import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { facingTape } from '../../trade/seal/facing.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount, sayFeet, sayInches } from '../say.ts';
import { perimeterStep, saySection, sectionArguments, sectionOf } from '../section.ts';
import { installedOf, rollSize, runLength, wrapArguments } from '../wrap/arguments.ts';
import { handlingFibers } from '../wrap/cautions.ts';
import { exampleWraps } from '../wraps.ts';
import { keepRetarder } from './cautions.ts';
import { facingDrawing } from './facing-drawing.ts';

/** Tape over the facing of a wrapped run. Inches. Faults: `installed_over_thickness`, `no_roll_size`. Source: geometry on
 *  the outer face of the installed wrap. */
export const sealFacing = defineFunction({
  name: 'SEAL.FACING',
  says: 'Length of facing tape for a straight wrapped run: its long seam and its ring joints.',
  words: ['facing tape', 'tape the wrap', 'vapor retarder tape', 'foil tape on wrap', 'close the facing'],
  gives: { label: 'Facing tape', unit: 'in' },
  arguments: {
    ...sectionArguments,
    length: runLength,
    ...wrapArguments,
    ends: optional(
      quantity('count', {
        says: 'how many ends of the run are closed with a ring of their own',
        least: 0,
        most: 2,
        why: 'a run has two ends',
        whole: true,
      }),
      0,
      'the rings between two runs are counted once, with whichever run you choose',
    ),
  },
  formula: [
    String.raw`\text{tape} = \text{length} + \text{rings} \times (\text{perimeter} + 2\pi \times \text{installed})`,
    String.raw`\text{rings} = \left\lceil \frac{\text{length}}{\text{roll width}} \right\rceil - 1 + \text{ends}`,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const wrap = installedOf(given.wrap, given.wraps);
    if (!wrap.ok) return wrap;
    const rollWidth = rollSize(given.wrap, 'roll_width', wrap.value.roll_width);
    if (!rollWidth.ok) return rollWidth;
    const { installed } = wrap.value;
    const tape = facingTape(section.value, given.length, installed, rollWidth.value, given.ends);
    return done({ section: section.value, installed, rollWidth: rollWidth.value, ...tape });
  },
  result: ({ length }) => length,
  steps: ({ section, installed, rollWidth, strips, rings, around, atRings, length }, given) => [
    {
      label: 'Pieces side by side',
      sum: `${figure(given.length)} ÷ ${figure(rollWidth)}, up to a whole piece`,
      value: strips,
      unit: 'count',
    },
    {
      label: 'Rings',
      sum: `${sayCount(Math.max(0, strips - 1), 'joint')} between pieces + ${sayCount(given.ends, 'closed end')}`,
      value: rings,
      unit: 'count',
    },
    perimeterStep(section),
    {
      label: 'Around the facing',
      sum: `${figure(around - 2 * Math.PI * installed)} + 2π × ${figure(installed)}`,
      value: around,
      unit: 'in',
      source: 'geometry',
    },
    { label: 'In the rings', sum: `${figure(rings)} × ${figure(around)}`, value: atRings, unit: 'in' },
    {
      label: 'Facing tape',
      sum: `${figure(given.length)} + ${figure(atRings)} = ${sayFeet(length)}`,
      value: length,
      unit: 'in',
      source: 'wrap-guide-specification',
    },
  ],
  drawing: ({ section, strips, rings, around }, { length }) =>
    facingDrawing({
      describes: `A wrapped run of ${saySection(section)} duct, ${sayFeet(length)} long: tape along its seam and on ${sayCount(rings, 'ring')} of ${sayInches(around)}.`,
      run: `run ${sayFeet(length)}`,
      ring: `ring ${sayInches(inches(around))}`,
      strips,
      rings,
    }),
  cautions: () => [...handlingFibers, keepRetarder],
  sources: ['geometry', 'wrap-guide-specification'],
  examples: [
    {
      says: '20 ft of 12 in pipe in wrap 1 1/8 in thick as installed: the seam and four rings',
      given: { shape: 'round', width: 12, length: 240, wrap: 'R-4 wrap', wraps: exampleWraps },
      gives: 240 + 4 * Math.PI * 14.25,
      tolerance: 1e-9,
      source: 'geometry',
    },
    {
      says: 'the same run with both ends closed',
      given: { shape: 'round', width: 12, length: 240, wrap: 'R-4 wrap', wraps: exampleWraps, ends: 2 },
      gives: 240 + 6 * Math.PI * 14.25,
      tolerance: 1e-9,
      source: 'geometry',
    },
  ],
});
