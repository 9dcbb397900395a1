/** Why a function of other calculators is not on offer here, and what to write in its place. */
export interface Refusal {
  readonly why: string;
  readonly instead: string;
}

const fills =
  'it fills more than its own cell, and inserting a row through such a block can spoil other cells';
const varies = 'its value changes by itself, and a job must come to the same figures whenever it is opened';
const stands = 'its value depends on where it stands, so the working of a cell could not be shown';

/** Functions that the calculator behind us has, or that people know, but that a workbook must not use. */
export const refusedFunctions: { readonly [name: string]: Refusal } = {
  SEQUENCE: {
    why: fills,
    instead: 'Type the numbers, or type the first one and fill down a formula such as A1+1.',
  },
  TRANSPOSE: { why: fills, instead: 'Point to each cell by itself, such as B1 in A2.' },
  FILTER: {
    why: fills,
    instead: 'Use SUMIF, COUNTIF or MAXIFS for the figure you want of the matching rows.',
  },
  SORT: { why: fills, instead: 'Use SMALL or LARGE for the first, second or third value.' },
  UNIQUE: { why: fills, instead: 'Use COUNTUNIQUE to count different values, or SUMIF for each of them.' },
  VSTACK: { why: fills, instead: 'Give the blocks one after the other, such as SUM(A1:A9, C1:C9).' },
  HSTACK: { why: fills, instead: 'Give the blocks one after the other, such as SUM(A1:A9, C1:C9).' },
  SPLIT: { why: fills, instead: 'Use LEFT, MID and RIGHT with FIND.' },
  MMULT: { why: fills, instead: 'Use SUMPRODUCT for one figure.' },
  MAXPOOL: { why: fills, instead: 'Use MAX over the cells you mean.' },
  MEDIANPOOL: { why: fills, instead: 'Use MEDIAN over the cells you mean.' },
  ARRAYFORMULA: { why: fills, instead: 'Fill the formula down, or use SUMPRODUCT for one figure.' },
  ARRAY_CONSTRAIN: { why: fills, instead: 'Use INDEX for a single cell.' },
  XLOOKUP: { why: fills, instead: 'Use INDEX with MATCH, such as INDEX(C2:C9, MATCH(A1, B2:B9, 0)).' },
  RAND: { why: varies, instead: 'Type the number.' },
  RANDBETWEEN: { why: varies, instead: 'Type the number.' },
  NOW: { why: varies, instead: 'Type the date.' },
  TODAY: { why: varies, instead: 'Type the date.' },
  ROW: { why: stands, instead: 'Use MATCH for the place in a block.' },
  COLUMN: { why: stands, instead: 'Use MATCH for the place in a block.' },
  SHEET: { why: stands, instead: 'Type the number.' },
  SHEETS: { why: stands, instead: 'Type the number.' },
  OFFSET: { why: 'it hides which cells it reads', instead: 'Use INDEX over the whole block.' },
  INDIRECT: { why: 'it hides which cells it reads', instead: 'Use INDEX over the whole block, or CHOOSE.' },
  ADDRESS: { why: 'it hides which cells are meant', instead: 'Use INDEX over the whole block.' },
  FORMULATEXT: {
    why: 'the working of a cell already shows its formula',
    instead: 'Open the working of that cell.',
  },
  HYPERLINK: { why: 'a workbook opens no addresses', instead: 'Type the address as text.' },
  REPT: { why: 'it can make a text too long for the workbook to open', instead: 'Type the text.' },
  TEXT: {
    why: 'it rounds shares wrongly (50 % comes out as 1 %)',
    instead: 'Set how the cell shows its number, or use ROUND.',
  },
};
