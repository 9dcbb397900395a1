import { columnName, writeAddress } from '../../base/address.ts';
import { readCheck } from '../../workbook/check.ts';
import { type Cell, isFormula } from '../../workbook/document.ts';
import { labelOf } from '../../workbook/label.ts';
import { type Shown, showValue } from '../../workbook/show.ts';
import { speakTape } from '../speak-tape.ts';
import { waitingSentence } from '../waiting/waiting-entries.ts';
import type { CellSight } from './cell-sight.ts';

/** What a screen reader says of a cell: its value first, then what it is called, what it is for and where it stands. */
export function cellName(sight: CellSight): string {
  const { cell, sheet, values, address, covering } = sight;
  const place = writeAddress(address);
  const isCovered = covering !== null && covering.cell !== cell;
  if (isCovered)
    return `empty, ${covering.cell.content} of ${writeAddress(covering.head)} goes across, ${place}`;
  const waits = sight.waits ? waitingSentence(sight.waits) : '';
  if (!cell) return [waits, `empty, ${place}`].filter(Boolean).join(' ');
  const label = cell.role === 'heading' || cell.role === 'text' ? '' : labelOf(sheet, address, values);
  return [
    waits,
    spoken(sight, cell),
    label,
    roleWords[cell.role],
    sight.unitBelow ? `in ${sight.unitBelow}` : '',
    covering ? `across to column ${columnName(covering.lastColumn)}` : '',
    sight.lock ? lockWords[sight.lock] : '',
    cell.note ? `note: ${cell.note}` : '',
    place,
  ]
    .filter(Boolean)
    .join(', ');
}

/** Whether the sheet waits for this cell to be filled in. */
export function mustBeFilled(cell: Cell): boolean {
  return (
    cell.role === 'given' && cell.question !== undefined && !cell.question.mayBeBlank && cell.content === null
  );
}

const lockWords = { hold: 'locked', set: 'locked in jobs' } as const;

const roleWords = {
  given: 'given',
  figured: 'figured',
  check: 'check',
  text: '',
  heading: 'heading',
} as const;

function spoken({ value }: CellSight, cell: Cell): string {
  if (mustBeFilled(cell)) return `to fill: ${cell.question?.asks ?? ''}`;
  const shown = showValue(value, cell.unit, cell.format);
  if (cell.role === 'check' && shown.type !== 'fault') {
    const said = readCheck(value);
    return said === null ? 'no answer yet' : [said.verdict, said.sentence].filter(Boolean).join(': ');
  }
  return isFormula(cell.content) && shown.type === 'blank' ? 'blank' : spokenValue(shown, cell);
}

function spokenValue(shown: Shown, cell: Cell): string {
  switch (shown.type) {
    case 'blank':
      return 'empty';
    case 'tape':
      return speakTape(shown.parts);
    case 'number':
      return cell.unit === 'r' ? `R ${shown.text}` : shown.text;
    case 'fault':
      return `${shown.text}: ${shown.fault.sentence}`;
    case 'text':
      return shown.text;
  }
}
