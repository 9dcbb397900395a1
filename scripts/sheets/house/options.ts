import type { HouseOption, HouseResult } from '../../../src/workbook/document.ts';
import { blanks, branches, rooms } from './plan.ts';

type PlaceOf = (name: string) => string;

/** Options that every house type has. */
export function mirrored(placeOf: PlaceOf): HouseOption {
  return {
    name: 'Mirrored',
    usual: 'as drawn',
    choices: ['as drawn', 'mirrored'].map((name) => ({ name, sets: { [placeOf('hand')]: name } })),
  };
}

export function insulation(placeOf: PlaceOf): HouseOption {
  return {
    name: 'Insulation',
    usual: 'R-8',
    choices: [8, 6].map((r) => ({
      name: `R-${r}`,
      sets: { [placeOf('job_wrap')]: `R-${r} wrap`, [placeOf('flex_r')]: r },
    })),
  };
}

export function trunkShape(placeOf: PlaceOf): HouseOption {
  return {
    name: 'Trunk',
    usual: 'round',
    choices: [
      { name: 'round', sets: { [placeOf('trunk_shape')]: 'round', [placeOf('wrap_method')]: 'published' } },
      // By the published table a thin wrap lies on a flat trunk with less R than its label has.
      {
        name: 'rectangular',
        sets: { [placeOf('trunk_shape')]: 'rectangular', [placeOf('wrap_method')]: 'geometry' },
      },
    ],
  };
}

/** What a lot table shows of every house, in the order of its columns: what it comes to before how it comes to that. */
export function results(placeOf: PlaceOf, rates: readonly HouseResult[]): readonly HouseResult[] {
  const total = { room: rooms.last + 1, branch: branches.last + 1, blank: blanks.last + 1 };
  return [
    { name: 'Price', place: placeOf('price') },
    { name: 'Hours', place: placeOf('labor_hours') },
    { name: 'Sheets', place: blanks.from('sheets', total.blank) },
    { name: 'Rolls of wrap', place: placeOf('wrap_rolls') },
    { name: 'Sheet metal, lb', place: blanks.from('weight', total.blank) },
    { name: 'Flex, ft', place: branches.from('bought', total.branch) },
    { name: 'Branches', place: branches.from('branches', total.branch) },
    { name: 'Air, cfm', place: rooms.from('airflow', total.room) },
    ...rates,
    { name: 'Handed fittings', place: placeOf('fittings_hand') },
  ];
}
