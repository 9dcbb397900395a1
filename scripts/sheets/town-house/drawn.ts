import { linesOf } from '../house/lines-of.ts';

/** One invented house, the Finch plan of Larkspur Row: a system below for the living rooms, one above for the bedrooms
 *  and a loft. */
export const drawn = {
  ...linesOf('Rooms', [
    { A: 'Living room', B: 4000, C: 3, D: 150, E: 'D1' },
    { A: 'Entry', B: 1000, D: 120, E: 'D1' },
    { A: 'Study', B: 1760, D: 138, E: 'D1' },
    { A: 'Dining', B: 1800, D: 126, E: 'D2' },
    { A: 'Kitchen', B: 3000, C: 2, D: 144, E: 'D2' },
    { A: 'Powder room', B: 400, D: 84, E: 'D2' },
    { A: 'Laundry', B: 1000, D: 102, E: 'D2' },
    { A: 'Owner’s bedroom', B: 3200, C: 2, D: 150, E: 'U1' },
    { A: 'Owner’s bath', B: 1000, D: 114, E: 'U1' },
    { A: 'Closet', B: 420, D: 90, E: 'U1' },
    { A: 'Upper hall', B: 1620, D: 96, E: 'U2' },
    { A: 'Bedroom 2', B: 2000, D: 156, E: 'U2' },
    { A: 'Bedroom 3', B: 2000, D: 180, E: 'U3' },
    { A: 'Hall bath', B: 560, D: 84, E: 'U3' },
    { A: 'Loft', B: 2160, C: 2, D: 168, E: 'U2', L: 'loft' },
  ]),
  ...linesOf('Trunk', [
    { A: 'D1', B: 'downstairs', C: 132 },
    { A: 'D2', B: 'D1', C: 144 },
    { A: 'U1', B: 'upstairs', C: 126 },
    { A: 'U2', B: 'U1', C: 108 },
    { A: 'U3', B: 'U2', C: 96 },
  ]),
} as const;
