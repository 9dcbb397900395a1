import { writeAddress } from '../../base/address.ts';
import { takesAnyWords } from '../../lots/house.ts';
import { cellsOf } from '../../workbook/cells.ts';
import type { Workbook } from '../../workbook/document.ts';
import { writeKeptPlace } from '../../workbook/kept-places.ts';
import { labelOf } from '../../workbook/label.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import type { Values } from '../../workbook/values.ts';

/** A cell of a template, as its author picks it from a list. */
export interface TemplateCell {
  /** `House!B12` */
  readonly place: string;
  readonly label: string;
  readonly shows: string;
  /** Whether any words can be filled in there. */
  readonly takesAnyWords: boolean;
}

/** The cells that a lot may fill, or the figures that it may show, sheet by sheet. */
export function templateCells(
  workbook: Workbook,
  values: Values,
  role: 'given' | 'figured',
): readonly TemplateCell[] {
  return workbook.sheets.flatMap((sheet) =>
    [...cellsOf(sheet)].flatMap(({ address, cell }) => {
      if (cell.role !== role) return [];
      const value = shownValue(sheet, address, cell, values);
      const label = labelOf(sheet, address, values) || cell.question?.asks || writeAddress(address);
      return [
        {
          place: writeKeptPlace({ sheet: sheet.name, ...address }),
          label,
          shows: showValue(value, cell.unit, cell.format).text,
          takesAnyWords: takesAnyWords(cell),
        },
      ];
    }),
  );
}
