import type { Line } from '../form.ts';
import { counted, thisShop } from './lines.ts';

/** What stands at the ends of a piece. */
export const ends: readonly Line[] = [
  counted(
    'end_joints',
    'Joints at the ends',
    1,
    'How many joints does a piece have besides those between its own sections?',
    { least: 0, most: 2, why: 'a piece has two ends' },
    thisShop,
  ),
];
