import { done } from '../../base/outcome.ts';
import { cubicInchesPerGallon, masticFor } from '../../trade/seal/mastic.ts';
import { optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayFeet, sayInches } from '../say.ts';
import { returnDucts, sealFirst } from './cautions.ts';
import { filmCautions, masticLength, masticWaste } from './mastic-arguments.ts';

/** Mastic for a length of joints. US gallons. Source: volume of the film; sealant sheets agree. */
export const sealMastic = defineFunction({
  name: 'SEAL.MASTIC',
  says: 'Gallons of mastic for a length of joints, by the width of the band and the wet film.',
  words: ['mastic', 'duct sealant', 'gallons', 'coverage', 'wet film', 'brush-on', 'how much mastic'],
  gives: { label: 'Mastic', unit: 'gal' },
  arguments: {
    length: masticLength,
    band: optional(
      quantity('in', {
        says: 'the width of the band over the joint',
        least: 0.5,
        most: 12,
        why: 'a band under 1/2 in does not hold, and over a foot is a coating',
      }),
      2,
      'sealant sheets ask for 2 in over a joint, and 3 in on duct board',
    ),
    film: optional(
      quantity('mil', {
        says: 'the wet film; 1/16 in is about 62 mil',
        least: 5,
        most: 250,
        why: 'thinner does not close a joint, and thicker than 1/4 in runs',
      }),
      32,
      'of the films that sealant sheets print, 20 and 32 mil, it is the thicker one',
    ),
    waste: masticWaste,
    solids: optional(
      quantity('percent', {
        says: 'the share of the mastic that stays when it is dry, by volume; 56 % is 0.56',
        least: 0.2,
        most: 1,
        why: 'a sealant is neither mostly water nor more than all solids',
      }),
      0.56,
      'one data sheet prints 56 % by volume; it changes only the dry film in the working',
    ),
  },
  formula: [
    String.raw`\text{gallons} = \frac{\text{length} \times \text{band}}{144} \div \frac{1604.17}{\text{film}} \times (1 + \text{waste})`,
  ],
  work: ({ length, band, film, waste, solids }) => done(masticFor(length, band, film, waste, solids)),
  result: ({ gallons }) => gallons,
  steps: ({ area, coverage, dryFilm, net, gallons }, { length, band, film, waste, solids }) => [
    {
      label: 'To cover',
      sum: `${figure(length, 2)} × ${figure(band)} ÷ 144`,
      value: area,
      unit: 'sqft',
      source: 'geometry',
    },
    {
      label: 'One gallon covers',
      sum: `${cubicInchesPerGallon} × 1000 ÷ ${figure(film)} ÷ 144`,
      value: coverage,
      unit: 'sqft',
      source: 'mastic-volume',
    },
    {
      label: 'Dry film',
      sum: `${figure(film)} × ${figure(solids * 100)} %`,
      value: dryFilm,
      unit: 'mil',
      source: 'mastic-data-sheet',
    },
    { label: 'Without waste', sum: `${figure(area)} ÷ ${figure(coverage)}`, value: net, unit: 'gal' },
    {
      label: 'Mastic',
      sum: `${figure(net)} × (1 + ${figure(waste)})`,
      value: gallons,
      unit: 'gal',
      source: 'mastic-volume',
    },
  ],
  drawing: ({ gallons, dryFilm }, { length, band, film }) => ({
    title: 'Band of mastic over a joint',
    describes: `A band ${sayInches(band)} wide and ${figure(film)} mil thick when wet, ${figure(dryFilm, 1)} mil when dry, along ${sayFeet(length)}: ${figure(gallons, 2)} gallons.`,
    height: 148,
    marks: [
      {
        type: 'outline',
        closed: false,
        role: 'metal',
        points: [
          { x: 20, y: 96 },
          { x: 190, y: 96 },
          { x: 190, y: 88 },
          { x: 340, y: 88 },
        ],
      },
      {
        type: 'outline',
        closed: true,
        role: 'tape',
        points: [
          { x: 130, y: 96 },
          { x: 150, y: 84 },
          { x: 230, y: 76 },
          { x: 250, y: 88 },
          { x: 190, y: 88 },
          { x: 190, y: 96 },
        ],
      },
      { type: 'measure', from: { x: 130, y: 54 }, to: { x: 250, y: 54 }, text: `band ${sayInches(band)}` },
      { type: 'label', at: { x: 20, y: 118 }, text: `wet film ${figure(film)} mil`, anchor: 'start' },
      { type: 'label', at: { x: 20, y: 138 }, text: `dry film ${figure(dryFilm, 1)} mil`, anchor: 'start' },
      { type: 'label', at: { x: 340, y: 138 }, text: `${figure(gallons, 2)} gal`, anchor: 'end' },
    ],
  }),
  cautions: () => [
    sealFirst,
    ...filmCautions,
    returnDucts,
    {
      level: 'look',
      sentence:
        'People lay mastic by eye at 1/16 in, about 62 mil, and that takes three times what a 20 mil sheet promises. See how your crew lays it before you buy by the sheet.',
      source: 'mastic-by-eye',
    },
  ],
  sources: ['mastic-volume', 'mastic-sheets'],
  examples: [
    {
      says: '200.5 ft of 3 in band at 32 mil takes one gallon without waste',
      given: { length: 200.52 * 12, band: 3, film: 32, waste: 0 },
      gives: 1,
      tolerance: 0.003,
      source: 'mastic-volume',
    },
    {
      says: '80 sq ft at 20 mil: about the gallon that sheets print',
      given: { length: 5760, band: 2, film: 20, waste: 0 },
      gives: 1,
      tolerance: 0.003,
      source: 'mastic-sheets',
    },
  ],
});
