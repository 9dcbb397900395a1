import { done } from '../../base/outcome.ts';
import { beadsFor } from '../../trade/seal/mastic.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayCount, sayFeet } from '../say.ts';
import { filmCautions, masticLength, masticWaste } from './mastic-arguments.ts';

/** Cartridges of sealant for a bead. A whole number. Source: volume; a data sheet prints a little less. */
export const sealCartridges = defineFunction({
  name: 'SEAL.CARTRIDGES',
  says: 'Cartridges of sealant to buy for a bead along a length.',
  words: ['cartridge', 'caulk', 'tube of sealant', 'bead', 'caulking gun', 'duct sealant'],
  gives: { label: 'Cartridges', unit: 'count' },
  arguments: {
    length: masticLength,
    bead: optional(
      quantity('in', {
        says: 'how thick the round bead is',
        least: 0.05,
        most: 1,
        why: 'no gun lays a finer or thicker bead',
      }),
      0.25,
      'a data sheet gives lengths for 1/4 and 1/8 in; this is the one that buys enough',
    ),
    cartridge: optional(
      quantity('floz', {
        says: 'the sealant in one cartridge',
        least: 1,
        most: 40,
        why: 'cartridges and sausages hold that much',
      }),
      10.5,
      'the data sheet that was read is for cartridges of 10.5 fl oz',
    ),
    waste: masticWaste,
  },
  formula: [
    String.raw`\text{bead length} = \frac{231 / 128 \times \text{cartridge}}{\frac{\pi}{4} \times \text{bead}^2}`,
    String.raw`\text{cartridges} = \left\lceil \frac{\text{length} \times (1 + \text{waste})}{\text{bead length}} \right\rceil`,
  ],
  work: ({ length, bead, cartridge, waste }) => done(beadsFor(length, bead, cartridge, waste)),
  result: ({ cartridges }) => cartridges,
  steps: ({ volume, across, perCartridge, exactly, cartridges }, { length, bead, cartridge, waste }) => [
    {
      label: 'In one cartridge, cubic inches',
      sum: `231 ÷ 128 × ${figure(cartridge)}`,
      value: volume,
      unit: 'ratio',
      source: 'mastic-volume',
    },
    {
      label: 'Across the bead, square inches',
      sum: `π ÷ 4 × ${figure(bead)}²`,
      value: across,
      unit: 'ratio',
      source: 'geometry',
    },
    {
      label: 'One cartridge lays',
      sum: `${figure(volume)} ÷ ${figure(across, 5)} = ${sayFeet(perCartridge)}`,
      value: perCartridge,
      unit: 'in',
      source: 'mastic-volume',
    },
    {
      label: 'Cartridges',
      sum: `${figure(length, 2)} × (1 + ${figure(waste)}) ÷ ${figure(perCartridge)} = ${figure(exactly)}, up to ${sayCount(cartridges, 'whole cartridge')}`,
      value: cartridges,
      unit: 'count',
    },
  ],
  cautions: () => [
    ...filmCautions,
    {
      level: 'look',
      sentence:
        'A data sheet promises 30 ft of 1/4 in bead from 10.5 fl oz, 7 % less than the volume gives. Keep some waste in.',
      source: 'mastic-data-sheet',
    },
  ],
  sources: ['mastic-volume', 'mastic-data-sheet'],
  examples: [
    {
      says: '70 ft of 1/4 in bead, 32.2 ft a cartridge, without waste',
      given: { length: 840, waste: 0 },
      gives: 3,
      source: 'mastic-volume',
    },
    {
      says: 'the 125 ft of 1/8 in bead that a data sheet promises of one',
      given: { length: 1500, bead: 0.125, waste: 0 },
      gives: 1,
      source: 'mastic-data-sheet',
    },
  ],
});
