import { numberColumn, optionalNumberColumn } from './table.ts';

const shopFigure = (shape: string) =>
  optionalNumberColumn('in', {
    says: `what this shop adds to the bare perimeter of a ${shape} duct, a 2 in lap included`,
    least: 2,
    most: 60,
  });

/** The columns of the `wraps` table. The first column of the table is the name of the wrap. */
export const wrapColumns = {
  thickness: numberColumn('in', { says: 'nominal thickness, out of the package', least: 0.25, most: 12 }),
  installed: numberColumn('in', { says: 'thickness it is rated at on the duct', least: 0.1, most: 12 }),
  label_r: numberColumn('r', { says: 'R out of the package', least: 0.5, most: 80 }),
  installed_r: numberColumn('r', { says: 'R at the installed thickness', least: 0.5, most: 80 }),
  shop_round: shopFigure('round'),
  shop_square: shopFigure('square'),
  shop_rectangular: shopFigure('rectangular'),
  roll_width: optionalNumberColumn('in', { says: 'width of the roll', least: 6, most: 144 }),
  roll_length: optionalNumberColumn('ft', { says: 'length of the roll', least: 1, most: 1000 }),
};

/** The table as examples and tests need it. Invented names; thicknesses and R are the published ones of wrap of 0.75
 *  and, where called dense, 1 lb/cu ft (duct-wrap data sheet); the shop's figures are invented. */
export const exampleWraps = [
  [
    'wrap',
    'thickness',
    'installed',
    'label r',
    'installed r',
    'shop round',
    'shop square',
    'shop rectangular',
    'roll width',
    'roll length',
  ],
  ['R-4 wrap', 1.5, 1.125, 5.1, 4.2, 9.5, 8, 7, 48, 100],
  ['R-5 wrap', 2, 1.5, 6.8, 5.6, 12, 10, 9, 48, 75],
  ['R-6 wrap', 2.2, 1.625, 7.4, 6, 13, 11, 9, 48, 75],
  ['R-8 wrap', 3, 2.25, 10, 8.3, 17, 14.5, null, 48, 50],
  ['Dense R-4 wrap', 1.5, 1.125, 5.6, 4.5, null, null, null, 48, 100],
  ['Dense R-6 wrap', 2, 1.5, 7.4, 6, null, null, null, 48, 75],
] as const;
