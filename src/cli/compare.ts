import { type CellComparison, compareCells, compareOrders } from '../workbook/comparison.ts';
import { comparisonParts, isRewritten, sayBy, saySide } from '../workbook/comparison-parts.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import { refusal } from './answer.ts';
import type { Command } from './command.ts';
import { figured } from './figured-workbook.ts';
import { columns, fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';

export const compare: Command = {
  name: 'compare',
  form: 'compare FILE OTHER',
  says: 'Prints what differs between two workbooks: what was given, allowances, what was figured, the order.',
  tells: [
    'Both are figured anew from what was typed. Sheets go together by their name, rows by what stands first in them, so that a row put in does not make all rows below it look changed.',
    'The shell gets 1 when anything differs.',
  ],
  run: async (words) => {
    const read = readWords(words, []);
    if (!read.ok) return refusal(read.fault);
    const [path, otherPath, ...more] = read.value.plain;
    if (path === undefined || otherPath === undefined || more.length > 0) {
      return refusal(`Two files are wanted. Write: stretchout ${compare.form}`);
    }
    const opened = await openFile(path);
    if (!opened.ok) return refusal(opened.fault);
    const other = await openFile(otherPath);
    if (!other.ok) return refusal(other.fault);
    const [before, after] = [await figured(opened.value.workbook), await figured(other.value.workbook)];
    const parts = comparisonParts(compareCells(before, after)).map(
      ({ says, cells }) => `${says}\n${cells.map(writeCell).join('\n')}`,
    );
    const order = writeOrder(before, after);
    const isSame = parts.length === 0 && order === null;
    return {
      text: [
        `${before.workbook.title} beside ${after.workbook.title}`,
        ...(isSame ? ['Nothing differs.'] : []),
        ...parts,
        ...(order === null ? [] : [order]),
      ].join('\n\n'),
      exit: isSame ? 0 : 1,
    };
  },
};

function writeCell(cell: CellComparison): string {
  const name = [cell.place, cell.label].filter(Boolean).join(' ');
  if (isRewritten(cell)) {
    const formulas = `=${cell.before?.formula ?? ''} became =${cell.after?.formula ?? ''}`;
    return fold(`${name}: written otherwise, to the same end; ${formulas}`, '  ', '    ');
  }
  const by = sayBy(cell);
  const sides = `${saySide(cell.before)} became ${saySide(cell.after)}`;
  return fold(`${name}: ${sides}${by === '' ? '' : `, ${by}`}`, '  ', '    ');
}

function writeOrder(before: KeptWorkbook, after: KeptWorkbook): string | null {
  const lines = compareOrders(before, after).filter((line) => !line.isSame);
  if (lines.length === 0) return null;
  const rows = lines.map((line) => [
    line.before?.shows ?? '0',
    line.after?.shows ?? '0',
    [line.item, line.unit].filter(Boolean).join(', '),
  ]);
  return `To order, before and after\n${columns(rows)}`;
}
