import { linesOf } from '../house/lines-of.ts';

/** One invented house, the Wren plan of Larkspur Lane: two arms of trunk in the attic, twelve rooms and a bonus room. */
export const drawn = {
  ...linesOf('Rooms', [
    { A: 'Great room', B: 5200, D: 3, E: 168, F: 'W1' },
    { A: 'Entry', B: 1000, E: 132, F: 'W1' },
    { A: 'Study', B: 1000, E: 144, F: 'W2' },
    { A: 'Owner’s bedroom', B: 3000, D: 2, E: 156, F: 'W2' },
    { A: 'Owner’s bath', B: 900, E: 120, F: 'W3' },
    { A: 'Closet', B: 400, E: 96, F: 'W3' },
    { A: 'Kitchen', B: 3000, D: 2, E: 168, F: 'E1' },
    { A: 'Dining', B: 1900, E: 150, F: 'E1' },
    { A: 'Laundry', B: 1100, E: 108, F: 'E1' },
    { A: 'Bedroom 2', B: 1800, E: 186, F: 'E2' },
    { A: 'Bedroom 3', B: 1700, E: 204, F: 'E2' },
    { A: 'Hall bath', B: 600, E: 84, F: 'E2' },
    { A: 'Bonus room', B: 3200, D: 2, E: 228, F: 'E1', G: 'bonus room' },
  ]),
  ...linesOf('Trunk', [
    { A: 'W1', C: 138 },
    { A: 'W2', B: 'W1', C: 126 },
    { A: 'W3', B: 'W2', C: 90 },
    { A: 'E1', C: 150 },
    { A: 'E2', B: 'E1', C: 132 },
  ]),
} as const;
