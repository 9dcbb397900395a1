import { insulation, mirrored, results, trunkShape } from '../house/options.ts';
import { houseWorkbook } from '../house/workbook.ts';
import { drawn } from './drawn.ts';
import { examples } from './examples.ts';

export const townHouse = houseWorkbook({
  id: 'town-house',
  title: 'Two-storey town house',
  plan: {
    extra: 'loft',
    systems: [
      { name: 'downstairs', prefix: 'down_', place: 'basement', airflow: 600, measured: 65, fittings: 190 },
      { name: 'upstairs', prefix: 'up_', place: 'attic', airflow: 500, measured: 45, fittings: 145 },
    ],
  },
  drawn,
  examples,
  house: (placeOf) => ({
    options: [
      mirrored(placeOf),
      {
        name: 'Loft',
        usual: 'no',
        choices: [
          { name: 'no', sets: { [placeOf('extra_room')]: 'no', [placeOf('up_airflow')]: 500 } },
          { name: 'yes', sets: { [placeOf('extra_room')]: 'yes', [placeOf('up_airflow')]: 600 } },
        ],
      },
      {
        name: 'Lower ducts in',
        usual: 'basement',
        choices: [
          {
            name: 'basement',
            sets: { [placeOf('down_duct_place')]: 'basement', [placeOf('difficulty')]: 1 },
          },
          {
            name: 'crawl space',
            sets: { [placeOf('down_duct_place')]: 'crawl space', [placeOf('difficulty')]: 1.1 },
          },
        ],
      },
      {
        name: 'Upper blower',
        usual: 'usual',
        choices: [
          { name: 'usual', sets: { [placeOf('up_external_static')]: 0.5 } },
          { name: 'strong', sets: { [placeOf('up_external_static')]: 0.55 } },
        ],
      },
      insulation(placeOf),
      trunkShape(placeOf),
    ],
    varies: [
      placeOf('plan_scale'),
      placeOf('down_airflow'),
      placeOf('up_airflow'),
      placeOf('down_fitting_way'),
      placeOf('up_fitting_way'),
      'Rooms!C2',
      'Trunk!C2',
      placeOf('difficulty'),
    ],
    results: results(placeOf, [
      { name: 'Rate below', place: placeOf('down_friction_rate') },
      { name: 'Rate above', place: placeOf('up_friction_rate') },
    ]),
  }),
});
