import { inches } from '../base/quantity.ts';
import type { Unit } from '../base/unit.ts';
import { type CellBlock, type CellValue, isFault } from '../base/value.ts';
import { isBlock } from '../catalogue/argument.ts';
import { findFunction } from '../catalogue/list.ts';
import { parseFormula } from '../formula/parse.ts';
import { explain, explainFormula } from '../session/explain.ts';
import { writeTape } from '../trade/tape/write.ts';
import { sheetNamed } from '../workbook/cells.ts';
import type { Sheet } from '../workbook/document.ts';
import { showValue } from '../workbook/show.ts';
import { type Answer, refusal } from './answer.ts';
import type { Command } from './command.ts';
import { type FiguredWorkbook, figured } from './figured-workbook.ts';
import { fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';
import { plainly, writeWorking } from './write-working.ts';

/** Whose allowances are at hand when no file is named. */
const usualFile = new URL('../../sheets/round-trunk.template.stretchout.json', import.meta.url);
const usualSheet = 'Allowances';

export const figure: Command = {
  name: 'figure',
  form: "figure '=FORMULA' [--in FILE [--sheet NAME]]",
  says: 'Figures one formula and prints the value with its unit and its working.',
  tells: [
    'Put the formula in single quotes, so that the shell leaves it alone.',
    `With --in, the formula is read as if it stood in that workbook, on its first sheet or on the one after --sheet. Without --in, the usual allowances of the round-trunk template are at hand: wraps, lap, corners and the other names of its ${usualSheet} sheet.`,
  ],
  run: async (words) => {
    const read = readWords(words, ['in', 'sheet']);
    if (!read.ok) return refusal(read.fault);
    const { plain, flags } = read.value;
    const [formula] = plain;
    if (formula === undefined) return refusal(`A formula is missing. Write: stretchout ${figure.form}`);
    if (plain.length > 1) {
      return refusal(
        `One formula is wanted, but ${plain.length} words came. Put the whole formula in single quotes.`,
      );
    }
    const opened = await openFile(flags.in ?? usualFile);
    if (!opened.ok) return refusal(opened.fault);
    const { workbook } = opened.value;
    const wanted = flags.sheet ?? (flags.in === undefined ? usualSheet : workbook.sheets[0]?.name);
    const sheet = sheetNamed(workbook, wanted ?? '');
    if (!sheet) {
      const names = workbook.sheets.map((one) => one.name).join(', ');
      return refusal(`There is no sheet “${wanted ?? ''}” in this workbook. Its sheets: ${names}.`);
    }
    return figureOn(await figured(workbook), sheet, formula.trim().replace(/^=/, '').trim());
  },
};

/** A formula that only points at a cell is answered with the working of that cell. */
async function figureOn(book: FiguredWorkbook, sheet: Sheet, formula: string): Promise<Answer> {
  const { workbook, values, calculator } = book;
  const [value = null] = await calculator.evaluate(sheet.name, [formula]);
  const parsed = parseFormula(formula);
  const pointed = parsed.ok && parsed.value.type === 'cell' ? parsed.value : null;
  const home = pointed?.sheet ? sheetNamed(workbook, pointed.sheet) : sheet;
  if (pointed && home) {
    const address = { row: pointed.row, column: pointed.column };
    const cell = await explain(workbook, values, calculator, home, address);
    const asked = [
      [cell.place, cell.label].filter(Boolean).join(', '),
      ...(cell.formula === null ? [] : [`=${cell.formula}`]),
    ];
    return answer(asked, value, cell.unit ?? undefined, writeWorking(cell));
  }
  const unit = parsed.ok && parsed.value.type === 'call' ? unitOf(parsed.value.name) : undefined;
  const working = await explainFormula(workbook, values, calculator, sheet, formula);
  return answer([`=${formula}`], value, unit, writeWorking(working));
}

function answer(
  asked: readonly string[],
  value: CellValue | CellBlock,
  unit: Unit | undefined,
  working: string,
): Answer {
  const parts = [asked.map((line) => fold(line)).join('\n')];
  if (isBlock(value)) {
    const size = `${value.length} × ${value[0]?.length ?? 0}`;
    parts.push(
      fold(`This gives a block of ${size} cells. Ask for one figure, such as SUM or INDEX of it.`, '  '),
    );
  } else if (isFault(value)) {
    parts.push(fold(value.sentence, '  No figure: ', '    '));
  } else {
    parts.push(sayValue(value, unit));
  }
  if (working !== '' && !isBlock(value)) parts.push(working);
  return { text: parts.join('\n\n'), exit: isBlock(value) || isFault(value) ? 1 : 0 };
}

/** A formula has a unit when it is one call of a trade function; a sum of such calls is a plain number. */
function unitOf(functionName: string): Unit | undefined {
  return findFunction(functionName)?.gives.unit;
}

function sayValue(value: Exclude<CellValue, object> | null, unit: Unit | undefined): string {
  if (value === null || value === '') return '  (blank)';
  if (typeof value !== 'number' || unit === undefined) return `  ${showValue(value).text}`;
  const full = `  ${plainly(value, unit)}`;
  return unit === 'in' ? `${full}\n  ${onTheTape(value)}` : full;
}

/** Between which two marks, since only whoever cuts knows which way to go. */
function onTheTape(length: number): string {
  const mark = (round: 'up' | 'down') =>
    writeTape(inches(length), { denominator: 16, round, feet: length >= 120 });
  const [below, above] = [mark('down'), mark('up')];
  return below === above ? `on the tape ${above}` : `on the tape between ${below} and ${above}`;
}
