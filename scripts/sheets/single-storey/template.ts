import { insulation, mirrored, results, trunkShape } from '../house/options.ts';
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
      mirrored(placeOf),
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
      insulation(placeOf),
      trunkShape(placeOf),
    ],
    varies: [
      placeOf('plan_scale'),
      placeOf('airflow'),
      placeOf('external_static'),
      placeOf('fitting_way'),
      'Rooms!C2',
      'Rooms!B5',
      'Trunk!C2',
      placeOf('difficulty'),
    ],
    results: results(placeOf, [{ name: 'Friction rate', place: placeOf('friction_rate') }]),
  }),
});
