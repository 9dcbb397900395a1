import type { CellAddress } from '../../base/address.ts';
import { cellsOf } from '../../workbook/cells.ts';
import { isFormula, type Workbook } from '../../workbook/document.ts';
import { showValue } from '../../workbook/show.ts';
import { shownValue } from '../../workbook/standing.ts';
import { textToEdit } from '../../workbook/text-to-edit.ts';
import type { Values } from '../../workbook/values.ts';

/** What is looked for. */
export interface Quest {
  readonly text: string;
  /** In what cells show, or in the formulas behind them. */
  readonly where: 'values' | 'formulas';
  readonly isCaseKept: boolean;
  readonly isWholeCell: boolean;
}

/** A cell that holds what is looked for. */
export interface Found {
  readonly sheetId: string;
  readonly address: CellAddress;
  /** What holds it: the words that the cell shows, or its formula. */
  readonly text: string;
  /** What can be typed anew with something else in its place; null for a figured value, which only its formula changes. */
  readonly typed: string | null;
}

/** Every cell that holds what is looked for, sheet by sheet and row by row. */
export function findCells(workbook: Workbook, values: Values, quest: Quest): readonly Found[] {
  if (quest.text === '') return [];
  const holds = holder(quest);
  const found: Found[] = [];
  for (const sheet of workbook.sheets) {
    for (const { address, cell } of cellsOf(sheet)) {
      if (cell.content === null) continue;
      const isFigured = isFormula(cell.content);
      if (quest.where === 'formulas') {
        const typed = isFigured ? textToEdit(cell) : '';
        if (isFigured && holds(typed)) found.push({ sheetId: sheet.id, address, text: typed, typed });
        continue;
      }
      const shown = showValue(shownValue(sheet, address, cell, values), cell.unit, cell.format).text;
      const typed = isFigured ? '' : textToEdit(cell);
      const canRetype = !isFigured && holds(typed);
      if (!canRetype && !holds(shown)) continue;
      found.push({
        sheetId: sheet.id,
        address,
        text: holds(shown) ? shown : typed,
        typed: canRetype ? typed : null,
      });
    }
  }
  return found;
}

/** The text with something else in every place where it holds what is looked for. */
export function withReplaced(text: string, quest: Quest, by: string): string {
  if (quest.isWholeCell) return by;
  return text.replaceAll(pattern(quest), () => by);
}

/** The text cut where what is looked for begins and ends: every second piece is it. */
export function piecesOf(text: string, quest: Quest): readonly string[] {
  const pieces: string[] = [];
  let done = 0;
  for (const match of text.matchAll(pattern(quest))) {
    pieces.push(text.slice(done, match.index), match[0]);
    done = match.index + match[0].length;
  }
  return [...pieces, text.slice(done)];
}

function holder(quest: Quest): (text: string) => boolean {
  const fold = (text: string) => (quest.isCaseKept ? text : text.toLowerCase());
  const wanted = fold(quest.text);
  return quest.isWholeCell ? (text) => fold(text) === wanted : (text) => fold(text).includes(wanted);
}

function pattern({ text, isCaseKept }: Quest): RegExp {
  return new RegExp(text.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&'), isCaseKept ? 'gu' : 'giu');
}
