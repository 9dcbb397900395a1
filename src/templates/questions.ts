import { type CellAddress, writeAddress } from '../base/address.ts';
import { cellsOf } from '../workbook/cells.ts';
import { type Cell, isFormula, type Question, type Workbook } from '../workbook/document.ts';
import { labelOf } from '../workbook/label.ts';

/** A given of a template, as a form asks for it. */
export interface AskedGiven {
  /** `Pieces!B4` */
  readonly place: string;
  readonly sheetId: string;
  readonly address: CellAddress;
  readonly cell: Cell;
  readonly question: Question;
  /** `Diameter of S1 trunk`: tells apart givens that ask the same; empty where the sheet gives the cell no name. */
  readonly label: string;
}

export interface QuestionSheet {
  readonly id: string;
  readonly name: string;
  readonly says: string;
  readonly asked: readonly AskedGiven[];
}

/** All that a template asks, sheet by sheet and row by row; a sheet that asks nothing is left out. A given that a formula
 *  answers already is not asked. */
export function questionsOf(template: Workbook): readonly QuestionSheet[] {
  return template.sheets.flatMap((sheet): readonly QuestionSheet[] => {
    const asked = [...cellsOf(sheet)].flatMap(({ address, cell }): readonly AskedGiven[] => {
      const { question } = cell;
      if (cell.role !== 'given' || !question || isFormula(cell.content)) return [];
      const place = `${sheet.name}!${writeAddress(address)}`;
      return [{ place, sheetId: sheet.id, address, cell, question, label: labelOf(sheet, address) }];
    });
    return asked.length === 0 ? [] : [{ id: sheet.id, name: sheet.name, says: sheet.says, asked }];
  });
}
