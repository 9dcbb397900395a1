import { writeRange } from '../base/address.ts';
import { type OrderLine, orderBlock, orderLines, orderName, orderWarnings } from '../workbook/order.ts';
import { standingOf } from '../workbook/standing.ts';
import { refusal } from './answer.ts';
import type { Command } from './command.ts';
import { figured } from './figured-workbook.ts';
import { columns, fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';

export const takeoff: Command = {
  name: 'takeoff',
  form: 'takeoff FILE',
  says: 'Prints the order quantities of a workbook.',
  tells: [
    `They stand in the block of cells named “${orderName}”: a row of headings, then one row for each thing to buy, with what it is, how many and of what in its first three columns. Rows without a quantity, or with 0, are left out. A row with a check in place of a quantity is printed under the others when it does not hold.`,
    'The shell gets 1 when a quantity has no figure, or a check of the workbook says stop.',
  ],
  run: async (words) => {
    const read = readWords(words, []);
    if (!read.ok) return refusal(read.fault);
    const [path, ...more] = read.value.plain;
    if (path === undefined || more.length > 0) {
      return refusal(`One file is wanted. Write: stretchout ${takeoff.form}`);
    }
    const opened = await openFile(path);
    if (!opened.ok) return refusal(opened.fault);
    const { workbook, values } = await figured(opened.value.workbook);
    const order = orderBlock(workbook);
    if (!order) {
      return refusal(
        `This workbook has no order: no block of cells in it is named “${orderName}”. Name one, with what it is, how many and of what in its first three columns.`,
      );
    }
    const lines = orderLines({ workbook, values });
    const warnings = orderWarnings({ workbook, values }).map(({ verdict, sentence }) =>
      fold(sentence, `${verdict}: `, '  '),
    );
    const stops = workbook.sheets.reduce((sum, sheet) => sum + standingOf(sheet, values).stops, 0);
    const place = `from ${order.sheet.name}!${writeRange(order.range)}`;
    const parts = [`To order for ${workbook.title}\n${place}`, writeLines(lines), ...warnings];
    if (stops > 0) {
      const what = stops === 1 ? '1 cell of this workbook says' : `${stops} cells of this workbook say`;
      parts.push(fold(`${what} stop. Do not order yet: see “stretchout check” first.`));
    }
    return { text: parts.join('\n\n'), exit: stops > 0 || lines.some((line) => line.fault) ? 1 : 0 };
  },
};

function writeLines(lines: readonly OrderLine[]): string {
  if (lines.length === 0) return '  nothing to order';
  const widest = Math.max(...lines.map(({ shows }) => shows.length));
  const table = columns(lines.map(({ item, shows, unit }) => [shows.padStart(widest), unit, item]));
  const faults = lines.flatMap(({ item, fault }) =>
    fault === null ? [] : [fold(fault.sentence, `  ${item}: `, '    ')],
  );
  return [table, ...faults].join('\n');
}
