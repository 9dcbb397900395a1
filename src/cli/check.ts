import { type CellAddress, writeAddress } from '../base/address.ts';
import { isFault } from '../base/value.ts';
import { sayCount } from '../catalogue/say.ts';
import type { Caution } from '../catalogue/working.ts';
import { explainFormula } from '../session/explain.ts';
import { cellsOf } from '../workbook/cells.ts';
import { readCheck } from '../workbook/check.ts';
import { isFormula, type Sheet } from '../workbook/document.ts';
import { labelOf } from '../workbook/label.ts';
import { shownValue, standingOf } from '../workbook/standing.ts';
import { refusal } from './answer.ts';
import type { Command } from './command.ts';
import { exampleRemarks } from './example-remarks.ts';
import { type FiguredWorkbook, figured } from './figured-workbook.ts';
import { fold } from './fold.ts';
import { openFile } from './open-file.ts';
import { readWords } from './words.ts';

type Mark = 'holds' | 'look' | 'stop' | 'fault' | 'fill' | 'caution';

/** Something that is said of a cell of a sheet, or of several. */
interface Remark {
  readonly mark: Mark;
  readonly places: readonly string[];
  readonly label: string;
  readonly sentence: string;
}

export const check: Command = {
  name: 'check',
  form: 'check FILE',
  says: 'Prints every check, fault and caution of a workbook, sheet by sheet.',
  tells: [
    'Everything is figured anew from what was typed; the figures stored in the file are not trusted.',
    'Of a template, every worked example is run as well.',
    'The shell gets 1 when a check says stop, a cell has no figure or a worked example differs.',
  ],
  run: async (words) => {
    const read = readWords(words, []);
    if (!read.ok) return refusal(read.fault);
    const [path, ...more] = read.value.plain;
    if (path === undefined || more.length > 0)
      return refusal(`One file is wanted. Write: stretchout ${check.form}`);
    const opened = await openFile(path);
    if (!opened.ok) return refusal(opened.fault);
    const book = await figured(opened.value.workbook);
    const bySheet = await Promise.all(
      book.workbook.sheets.map(async (sheet) => ({ sheet, remarks: await remarksOn(book, sheet) })),
    );
    const all = bySheet.flatMap(({ remarks }) => remarks);
    const parts = bySheet.map(({ sheet, remarks }) => writeSheet(sheet, remarks));
    const mustStop = all.some(({ mark }) => mark === 'stop' || mark === 'fault');
    // Last, since the calculator holds the example's workbook afterwards.
    const examples = await exampleRemarks(book.workbook, book.calculator);
    return {
      text: [heading(book), ...parts, ...(examples ? [examples.text] : []), tally(all)].join('\n\n'),
      exit: mustStop || examples?.hold === false ? 1 : 0,
    };
  },
};

function heading({ workbook: { title, kind, template } }: FiguredWorkbook): string {
  const origin = template ? `${template.name}, revision ${template.revision}` : '';
  if (kind === 'template') return `${title}, a template${template ? ` (revision ${template.revision})` : ''}`;
  return origin === '' ? title : `${title}\nmade from ${origin}`;
}

async function remarksOn(book: FiguredWorkbook, sheet: Sheet): Promise<readonly Remark[]> {
  const label = (address: CellAddress) => labelOf(sheet, address, book.values);
  return [...cellRemarks(book, sheet, label), ...(await cautionRemarks(book, sheet, label))];
}

function cellRemarks(
  { values }: FiguredWorkbook,
  sheet: Sheet,
  label: (address: CellAddress) => string,
): readonly Remark[] {
  const { concerns } = standingOf(sheet, values);
  const toFill = new Map(
    concerns.filter(({ kind }) => kind === 'fill').map((one) => [writeAddress(one.address), one.sentence]),
  );
  return [...cellsOf(sheet)].flatMap(({ address, cell }): readonly Remark[] => {
    const place = writeAddress(address);
    const about = { places: [place], label: label(address) };
    const value = shownValue(sheet, address, cell, values);
    const asks = toFill.get(place);
    if (asks !== undefined) return [{ ...about, mark: 'fill', sentence: asks }];
    if (isFault(value)) {
      // Told in full where it began, and only there.
      const sentence = value.bornAt ? `no figure, because of ${value.bornAt}` : value.sentence;
      return [{ ...about, mark: 'fault', sentence }];
    }
    const said = cell.role === 'check' ? readCheck(value) : null;
    return said ? [{ ...about, mark: said.verdict, sentence: said.sentence }] : [];
  });
}

/** Each caution once to a sheet, with the cells whose working gives it. */
async function cautionRemarks(
  { workbook, values, calculator }: FiguredWorkbook,
  sheet: Sheet,
  label: (address: CellAddress) => string,
): Promise<readonly Remark[]> {
  const found = new Map<string, { caution: Caution; places: string[]; label: string }>();
  for (const { address, cell } of cellsOf(sheet)) {
    if (!isFormula(cell.content)) continue;
    const { calls } = await explainFormula(workbook, values, calculator, sheet, cell.content.formula);
    for (const caution of calls.flatMap((call) => call.cautions)) {
      const known = found.get(caution.sentence) ?? { caution, places: [], label: label(address) };
      const place = writeAddress(address);
      if (!known.places.includes(place)) known.places.push(place);
      found.set(caution.sentence, known);
    }
  }
  const careFirst = [...found.values()].sort(
    (one, other) => Number(one.caution.level === 'look') - Number(other.caution.level === 'look'),
  );
  return careFirst.map(({ caution, places, label: first }) => ({
    mark: 'caution',
    places,
    label: places.length === 1 ? first : '',
    sentence: `${caution.level === 'care' ? 'Take care' : 'Look'}: ${caution.sentence}`,
  }));
}

function writeSheet({ name }: Sheet, remarks: readonly Remark[]): string {
  const lines = remarks.map(({ mark, places, label, sentence }) => {
    const where =
      places.length > 4
        ? `${places.slice(0, 3).join(', ')} and ${places.length - 3} more`
        : places.join(', ');
    const about = [[where, label].filter(Boolean).join(' '), sentence].filter(Boolean).join(': ');
    return fold(about, `  ${mark.padEnd(9)}`);
  });
  return [name, ...(lines.length > 0 ? lines : ['  nothing to report'])].join('\n');
}

function tally(remarks: readonly Remark[]): string {
  const count = (mark: Mark) => remarks.filter((one) => one.mark === mark).length;
  const [holds, looks, stops] = [count('holds'), count('look'), count('stop')];
  const checks = sayCount(holds + looks + stops, 'check');
  const lines = [
    `${checks}: ${holds} ${holds === 1 ? 'holds' : 'hold'}, ${looks} worth a look, ${stops} stop.`,
    `Cells without a figure: ${count('fault')}. To fill in: ${count('fill')}. Cautions: ${count('caution')}.`,
  ];
  return lines.join('\n');
}
