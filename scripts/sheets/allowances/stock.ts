import type { Line } from '../form.ts';
import { counted, length, practice } from './lines.ts';

/** The stock sheet. */
export const stockSheet: readonly Line[] = [
  length(
    'sheet_width',
    'Stock sheet, width',
    48,
    'How wide is a stock sheet?',
    { least: 12, most: 72, why: 'sheets for duct are 1 to 6 ft wide' },
    practice,
  ),
  length(
    'sheet_length',
    'Stock sheet, length',
    120,
    'How long is a stock sheet?',
    { least: 24, most: 240, why: 'sheets for duct are 2 to 20 ft long' },
    practice,
  ),
];

/** Stock sheet, and how a length on it is cut. */
export const stock: readonly Line[] = [
  counted(
    'fraction',
    'Finest mark used',
    16,
    'To which part of an inch is a cut rounded up: 16 for sixteenths?',
    { least: 1, most: 64, why: 'tapes are marked in halves down to 64ths' },
    'most tapes: sixteenths',
  ),
  length(
    'section_length',
    'Longest section',
    46,
    'How long is a section at most, joint to joint?',
    { least: 6, most: 240, why: 'no section is made shorter than 6 in or longer than 20 ft' },
    '48 in sheet less the joints',
  ),
  ...stockSheet,
];
