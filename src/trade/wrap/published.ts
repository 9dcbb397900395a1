import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Inches, inches } from '../../base/quantity.ts';
import type { TradeFault } from '../fault.ts';
import type { DuctSection } from '../section.ts';

/** The document a row was read in. */
export type AllowanceDocument = 'article of 2019' | 'permit scan' | 'guide specification of 2017';

/** What is added to the bare perimeter, a 2 in lap included; in inches, by nominal thickness. */
interface AllowanceRow {
  readonly thickness: number;
  readonly round: number;
  readonly square: number;
  readonly rectangular: number;
  readonly document: AllowanceDocument;
}

export type AllowanceTable = 'three-column' | 'two-column';
export type AllowanceColumn = 'round' | 'square' | 'rectangular';

/** The lap that every published figure includes: note to the table, article of 2019. */
export const lapInTable = inches(2);

// Rows 1 to 2.2: maker article on installed R, 2019. Row 3: maker sheet in a city permit scan. Both read at source.
const threeColumn: readonly AllowanceRow[] = [
  { thickness: 1, round: 7, square: 6, rectangular: 5, document: 'article of 2019' },
  { thickness: 1.5, round: 9.5, square: 8, rectangular: 7, document: 'article of 2019' },
  { thickness: 2, round: 12, square: 10, rectangular: 8, document: 'article of 2019' },
  { thickness: 2.2, round: 13, square: 11, rectangular: 8.5, document: 'article of 2019' },
  { thickness: 3, round: 17, square: 14.5, rectangular: 11.5, document: 'permit scan' },
];

// Maker guide specification 23 07 13 of 2017, appendix table 2, read at source. Square and rectangular share a column.
const twoColumn: readonly AllowanceRow[] = [
  { thickness: 1.5, round: 9.5, square: 8, rectangular: 8, document: 'guide specification of 2017' },
  { thickness: 2, round: 12, square: 10, rectangular: 10, document: 'guide specification of 2017' },
  { thickness: 2.2, round: 13, square: 11, rectangular: 11, document: 'guide specification of 2017' },
  { thickness: 3, round: 17, square: 14.5, rectangular: 14.5, document: 'guide specification of 2017' },
];

export interface PublishedAllowance {
  readonly added: Inches;
  readonly document: AllowanceDocument;
}

/** Length added to the bare perimeter (in, 2 in lap included) by the published stretch-out tables for duct wrap.
 *  Nothing is read between the rows. Faults: `no_published_row`. */
export function publishedAllowance(
  table: AllowanceTable,
  column: AllowanceColumn,
  thickness: Inches,
): Outcome<PublishedAllowance, TradeFault> {
  const rows = table === 'three-column' ? threeColumn : twoColumn;
  const row = rows.find((one) => Math.abs(one.thickness - thickness) < 1e-9);
  if (!row) {
    return failed({
      code: 'no_published_row',
      table: `${table} stretch-out table`,
      got: thickness,
      rows: rows.map((one) => one.thickness),
    });
  }
  return done({ added: inches(row[column]), document: row.document });
}

/** The column that a section is looked up in: a duct is square when its sides agree. */
export function allowanceColumn(section: DuctSection): AllowanceColumn {
  if (section.shape === 'round') return 'round';
  return Math.abs(section.width - section.depth) < 1e-9 ? 'square' : 'rectangular';
}
