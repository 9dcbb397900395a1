import type { WorkedExample } from '../../../src/workbook/document.ts';

/** Every result below was worked by hand from the figures that its source names, never copied from the program. */
export const examples: readonly WorkedExample[] = [
  {
    name: 'What the blower leaves, and a kitchen’s part of the air, by a published sizing example',
    source:
      'Worked by hand from the contractors association’s duct sizing example: 0.50 less coil 0.10, filter 0.15, registers 0.03 and grille 0.03 leaves 0.19; 65 ft and 190 ft of fittings make 255 ft; 0.19 × 100 ÷ 255 = 0.0745; a room of 3,000 of 28,000 Btu/h gets 1,000 × 3 ÷ 28 = 107.14 cfm. By plain arithmetic: 28,000 ÷ (1.08 × 20) = 1,296.3 cfm; two kitchen branches of 14 ft at 4 % slack take 28 ÷ 0.96 = 29.17 ft of flex; 16 branches of 0.75 h take 12 h.',
    given: {
      'Air!B4': 1000,
      'Air!B5': 20,
      'Air!B8': 0.5,
      'Air!B9': 0.1,
      'Air!B10': 0.15,
      'Air!B11': 0.03,
      'Air!B12': 0.03,
      'Air!B13': 0,
      'Air!B15': 65,
      'Air!B16': 190,
      // The great room takes what the other rooms leave of 28,000.
      'Rooms!B2': 11600,
      'Rooms!B8': 3000,
      'House!B10': 'no',
      'House!B15': 1,
      'House!B16': 1,
    },
    gives: {
      'Air!B6': { value: 1296.3, tolerance: 0.05 },
      'Air!B14': { value: 0.19, tolerance: 0.000005 },
      'Air!B17': { value: 255 },
      'Air!B18': { value: 0.0745, tolerance: 0.00005 },
      'Air!B20': { value: 28000 },
      'Rooms!F8': { value: 107.14, tolerance: 0.005 },
      'Rooms!I8': { value: 53.57, tolerance: 0.005 },
      'Branches!E8': { value: 29.1667, tolerance: 0.0001 },
      'Branches!C18': { value: 16 },
      'Price!D6': { value: 12 },
    },
  },
  {
    name: 'A trunk of 800 cfm at a friction rate of 0.10, by a published size table',
    source:
      'Worked by hand from a trade parts catalogue of 2017, residential sizing guide at 0.10: 800 cfm takes 13 in. By plain arithmetic: 0.19 × 100 ÷ (65 + 125) = 0.10; 200 cfm of 1,000 go to six rooms with air of their own, so 800 are left for the west arm; π ÷ 4 × 13² ÷ 144 = 0.9218 sq ft, and 800 ÷ 0.9218 = 867.9 fpm.',
    given: {
      'Air!B4': 1000,
      'Air!B16': 125,
      'House!B10': 'no',
      'House!B13': 'round',
      'House!B15': 1,
      'Rooms!K8': 60,
      'Rooms!K9': 40,
      'Rooms!K10': 30,
      'Rooms!K11': 25,
      'Rooms!K12': 25,
      'Rooms!K13': 20,
    },
    gives: {
      'Air!B18': { value: 0.1, tolerance: 1e-9 },
      'Air!B21': { value: 800 },
      'Rooms!F18': { value: 1000, tolerance: 1e-6 },
      'Trunk!D2': { value: 800, tolerance: 1e-6 },
      'Trunk!E2': { value: 13 },
      'Trunk!H2': { value: 867.9, tolerance: 0.05 },
      'Trunk!D5': { value: 200 },
    },
  },
  {
    name: 'Section W1 made 16 in round and 14 ft 6 1/2 in long, in 3 in wrap by the published table',
    source:
      'Worked by hand from the published stretch-out table (round, 3 in: perimeter + 17 in), 26 ga galvanized of 0.0217 in and 0.906 lb/sq ft, and geometry: π × 16 + 17 = 67.2655, up to the next sixteenth 67 5/16; ⌈174.5 ÷ 46⌉ = 4 lengths; π × 16.0217 + 1 = 51.3337 across and 174.5 ÷ 4 + 1 1/2 = 45 1/8 along; two of these lie on a sheet of 48 × 120 in, so 2 sheets; 4 × 51.3337 × 45.125 ÷ 144 × 0.906 = 58.3 lb; ⌈174.5 ÷ 48⌉ = 4 pieces of wrap; 174.5 ÷ 6 makes 30 staples.',
    given: {
      'Trunk!C2': 174.5,
      'Trunk!J2': 'round',
      'Trunk!K2': 16,
      'House!B11': 'R-8 wrap',
      'House!B15': 1,
      'House!B19': 26,
      'House!B23': 'published',
    },
    gives: {
      'Blanks!L2': { value: 4 },
      'Blanks!B2': { value: 51.3337, tolerance: 0.0001 },
      'Blanks!C2': { value: 45.125, tolerance: 0.0001 },
      'Blanks!F2': { value: 2 },
      'Blanks!M2': { value: 58.3, tolerance: 0.05 },
      'Wrap!B2': { value: 67.2655, tolerance: 0.0001 },
      'Wrap!C2': { value: 67.3125 },
      'Wrap!D2': { value: 4 },
      'Seal and hang!H2': { value: 30 },
    },
  },
];
