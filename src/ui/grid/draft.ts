import type { CellAddress } from '../../base/address.ts';
import { cellAt } from '../../workbook/cells.ts';
import type { Sheet } from '../../workbook/document.ts';
import { textToEdit } from '../../workbook/text-to-edit.ts';

/** What is being typed into a cell and is not in the workbook yet. */
export interface Draft {
  readonly sheetId: string;
  readonly address: CellAddress;
  /** What the editor began with; an unchanged draft changes nothing. */
  readonly began: string;
  readonly typed: string;
  /** Why it was not taken, when it was offered as it now stands. */
  readonly refusal: string | null;
}

/** Starts a draft: with the first character typed over the cell, else with what waits in it or stands in it. */
export function beginDraft(
  sheet: Sheet,
  address: CellAddress,
  typed: string | null,
  waits: Pick<Draft, 'typed' | 'refusal'> | null = null,
): Draft {
  const began = textToEdit(cellAt(sheet, address));
  const stands = waits ?? { typed: began, refusal: null };
  return {
    sheetId: sheet.id,
    address,
    began,
    typed: typed ?? stands.typed,
    refusal: typed === null ? stands.refusal : null,
  };
}
