import type { Lot, LotTable } from '../../src/lots/lot-table.ts';
import { singleStorey } from './single-storey/template.ts';
import { townHouse } from './town-house/template.ts';

/** Twelve invented lots of Larkspur Lane: seven of the Wren plan, five of the Finch plan. */
const wren = 'Single-storey house';
const finch = 'Two-storey town house';

const rows: readonly (Partial<Lot> & Pick<Lot, 'name' | 'type'>)[] = [
  { name: 'Lot 1', type: wren },
  { name: 'Lot 2', type: wren, options: { Mirrored: 'mirrored' } },
  {
    name: 'Lot 3',
    type: wren,
    options: { 'Bonus room': 'yes' },
  },
  { name: 'Lot 4', type: wren, options: { 'Ducts in': 'crawl space', Insulation: 'R-6' } },
  {
    name: 'Lot 5',
    type: wren,
    options: { Mirrored: 'mirrored' },
    overrides: { 'House!B15': 1.05 },
    remark: 'wider lot, a twentieth longer',
  },
  { name: 'Lot 6', type: wren, options: { Trunk: 'rectangular' } },
  { name: 'Lot 7', type: wren, overrides: { 'Rooms!B5': 3400 }, remark: 'window to the west' },
  { name: 'Lot 8', type: finch },
  { name: 'Lot 9', type: finch, options: { Mirrored: 'mirrored' } },
  { name: 'Lot 10', type: finch, options: { Loft: 'yes' } },
  { name: 'Lot 11', type: finch, options: { 'Lower ducts in': 'crawl space' } },
  { name: 'Lot 12', type: finch, options: { Mirrored: 'mirrored', Trunk: 'rectangular' } },
];

export const larkspurLane: LotTable = {
  id: 'larkspur-lane',
  title: 'Larkspur Lane, lots 1 to 12',
  types: [singleStorey, townHouse],
  rows: rows.map((lot) => ({ options: {}, overrides: {}, ...lot })),
};
