import { linesOf } from '../house/lines-of.ts';

/** One invented house, the Wren plan of Larkspur Lane: two arms of trunk in the attic, twelve rooms and a bonus room. */
export const drawn = {
  ...linesOf('Rooms', [
    { A: 'Great room', B: 5200, C: 3, D: 168, E: 'W1' },
    { A: 'Entry', B: 1000, D: 132, E: 'W1' },
    { A: 'Study', B: 1000, D: 144, E: 'W2' },
    { A: 'Owner’s bedroom', B: 3000, C: 2, D: 156, E: 'W2' },
    { A: 'Owner’s bath', B: 900, D: 120, E: 'W3' },
    { A: 'Closet', B: 400, D: 96, E: 'W3' },
    { A: 'Kitchen', B: 3000, C: 2, D: 168, E: 'E1' },
    { A: 'Dining', B: 1900, D: 150, E: 'E1' },
    { A: 'Laundry', B: 1100, D: 108, E: 'E1' },
    { A: 'Bedroom 2', B: 1800, D: 186, E: 'E2' },
    { A: 'Bedroom 3', B: 1700, D: 204, E: 'E2' },
    { A: 'Hall bath', B: 600, D: 84, E: 'E2' },
    { A: 'Bonus room', B: 3200, C: 2, D: 228, E: 'E1', L: 'bonus room' },
  ]),
  ...linesOf('Trunk', [
    { A: 'W1', C: 138 },
    { A: 'W2', B: 'W1', C: 126 },
    { A: 'W3', B: 'W2', C: 90 },
    { A: 'E1', C: 150 },
    { A: 'E2', B: 'E1', C: 132 },
  ]),
} as const;
