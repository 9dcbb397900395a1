import { houseWorkbook } from '../house/workbook.ts';
import { drawn } from './drawn.ts';
import { examples } from './examples.ts';

export const singleStorey = houseWorkbook({
  id: 'single-storey',
  title: 'Single-storey house',
  plan: {
    extra: 'bonus room',
    systems: [{ name: 'The system', prefix: '', place: 'attic', airflow: 1000, measured: 65, fittings: 190 }],
  },
  drawn,
  examples,
  house: (placeOf) => ({
    options: [
      {
        name: 'Mirrored',
        usual: 'as drawn',
        choices: [
          { name: 'as drawn', sets: { [placeOf('hand')]: 'as drawn' } },
          { name: 'mirrored', sets: { [placeOf('hand')]: 'mirrored' } },
        ],
      },
      {
        name: 'Bonus room',
        usual: 'no',
        choices: [
          { name: 'no', sets: { [placeOf('extra_room')]: 'no', [placeOf('airflow')]: 1000 } },
          { name: 'yes', sets: { [placeOf('extra_room')]: 'yes', [placeOf('airflow')]: 1150 } },
        ],
      },
      {
        name: 'Ducts in',
        usual: 'attic',
        choices: [
          { name: 'attic', sets: { [placeOf('duct_place')]: 'attic', [placeOf('difficulty')]: 1 } },
          {
            name: 'crawl space',
            sets: { [placeOf('duct_place')]: 'crawl space', [placeOf('difficulty')]: 1.15 },
          },
        ],
      },
      {
        name: 'Insulation',
        usual: 'R-8',
        choices: [
          { name: 'R-8', sets: { [placeOf('job_wrap')]: 'R-8 wrap', [placeOf('flex_r')]: 8 } },
          { name: 'R-6', sets: { [placeOf('job_wrap')]: 'R-6 wrap', [placeOf('flex_r')]: 6 } },
        ],
      },
      {
        name: 'Trunk',
        usual: 'round',
        choices: [
          { name: 'round', sets: { [placeOf('trunk_shape')]: 'round' } },
          { name: 'rectangular', sets: { [placeOf('trunk_shape')]: 'rectangular' } },
        ],
      },
    ],
    varies: [
      placeOf('plan_scale'),
      placeOf('airflow'),
      placeOf('external_static'),
      placeOf('fitting_way'),
      'Rooms!D2',
      'Rooms!B5',
      'Trunk!C2',
      placeOf('difficulty'),
    ],
    results: [
      { name: 'Handed fittings', place: placeOf('fittings_hand') },
      { name: 'Air', place: 'Rooms!H18' },
      { name: 'Friction rate', place: placeOf('friction_rate') },
      { name: 'Sheet metal, lb', place: 'Blanks!M10' },
      { name: 'Sheets', place: 'Blanks!L10' },
      { name: 'Rolls of wrap', place: placeOf('wrap_rolls') },
      { name: 'Branches', place: 'Branches!C18' },
      { name: 'Flex, ft', place: 'Branches!E18' },
      { name: 'Hours', place: placeOf('labor_hours') },
      { name: 'Price', place: placeOf('price') },
    ],
  }),
});
