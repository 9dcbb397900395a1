import { writeAddress } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import { type Unit, units } from '../base/unit.ts';
import { wordTapeFault } from '../catalogue/wording.ts';
import type { RefusedEntry } from './command/write.ts';
import type { CommandFault } from './commands.ts';
import type { Format } from './document.ts';
import type { FileFault } from './file-fault.ts';
import { showValue } from './show.ts';

/** Why a command is not carried out, in full sentences: what came, what is allowed, what to do. */
export function wordCommandFault(fault: CommandFault): string {
  switch (fault.code) {
    case 'not_a_length':
      return `${quoted(fault.typed)} cannot be read as a length. ${wordTapeFault(fault.typed, fault.fault)}`;
    case 'not_a_number':
      return `${quoted(fault.typed)} is not a number. This cell holds ${article(units[fault.unit].says)}; type digits, such as 12 or 12.5.`;
    case 'not_whole':
      return `${fault.got} is not a whole number. This cell holds ${article(units[fault.unit].says)}; type it without a fraction.`;
    case 'out_of_range': {
      const { question, unit, format } = fault;
      const because = question.why ? `, because ${question.why}` : '';
      return `${say(fault.got, unit, format)} is outside what this cell takes: ${limits(question, unit, format)}${because}. Check the number and its unit.`;
    }
    case 'not_a_choice':
      return `${quoted(fault.typed)} is not one of the choices here. Type ${list(fault.choices)}.`;
    case 'figured_cell':
      return 'This cell is figured, so a plain value is not taken over its formula by accident. To replace it, begin with =, such as =12; to empty it, press Delete.';
    case 'too_long':
      return `The entry has ${fault.got} characters; a cell takes at most ${fault.most}. Shorten it, or spread it over several cells.`;
    case 'no_such_sheet':
      return 'This sheet is no longer in the workbook. Choose another one from the list.';
    case 'off_the_sheet':
      return `${fault.rows} rows and ${fault.columns} columns do not fit from here on: they would run off the sheet. Begin further up or further left.`;
    case 'entries_refused':
      return wordRefusals(fault.refused);
    case 'sheet_is_full':
      return `The sheet has room for ${fault.most.toLocaleString('en-US')} ${fault.axis}s, and no more fit. Put fewer in, or begin another sheet.`;
    case 'sheet_name_taken':
      return `There is a sheet named ${quoted(fault.name)} already. Choose another name.`;
    case 'unusable_sheet_name':
      return `${quoted(fault.name)} cannot name a sheet. Use 1 to 60 characters without ' ! [ ] : * ? / and \\.`;
    case 'last_sheet':
      return 'This is the only sheet, and a workbook has at least one. Add another one first.';
    case 'no_such_name':
      return `Nothing is named ${quoted(fault.name)} in this workbook. Look at the list of names.`;
    case 'name_taken':
      return `The name ${quoted(fault.name)} is in use already. Choose another one, or change what it stands for.`;
    case 'name_of_a_function':
      return `${quoted(fault.name)} is a function, so no cell can have that name. Choose another one.`;
    case 'unusable_name':
      return `${quoted(fault.name)} cannot be a name: begin with a letter, use letters, digits, _ and ., and nothing that reads as a cell such as R8 or width1 (write width_1).`;
    case 'no_title':
      return 'The workbook needs a title. Type a few words, such as the street and lot.';
    default:
      return assertNever(fault);
  }
}

const refusalsTold = 8;

/** Every entry that is not taken, each with its cell; of very many only the first. */
function wordRefusals(refused: readonly RefusedEntry[]): string {
  const told = refused
    .slice(0, refusalsTold)
    .map(({ address, fault }) => `${writeAddress(address)}: ${wordCommandFault(fault)}`);
  const rest = refused.length - told.length;
  const more = rest > 0 ? [`And ${rest} more.`] : [];
  return ['Nothing was written.', ...told, ...more].join(' ');
}

/** Why a file is not opened. The open workbook is as it was. */
export function wordFileFault(fault: FileFault): string {
  switch (fault.code) {
    case 'too_large':
      return `The file has ${megabytes(fault.got)} MB; a workbook file has at most ${megabytes(fault.most)} MB. Choose another file.`;
    case 'empty':
      return 'The file is empty. Choose the file that was saved from a workbook.';
    case 'not_json':
      return 'The file is damaged or cut off: it ends or breaks in the middle. Copy it again from where it was saved.';
    case 'not_a_workbook':
      return 'This is not a workbook file. Choose a file that was saved from a workbook; its name ends in .stretchout.json.';
    case 'unsafe_key':
      return `The file has an entry named ${quoted(fault.key)}, which no workbook has and which can do harm. It was not saved by this program as it stands; do not use it.`;
    case 'newer_version':
      return `The file is of version ${fault.got}; this program reads up to version ${fault.newest}. Open it with a newer copy of the program.`;
    case 'unknown_version':
      return `The file says it is of version ${quoted(fault.got)}, which there never was. It is damaged or was changed by hand; copy it again from where it was saved.`;
    case 'wrong_shape':
      return `The file is damaged or was changed by hand: at ${quoted(fault.place || 'the top')} there is something that does not belong there (${fault.says}). Copy it again from where it was saved.`;
    default:
      return assertNever(fault);
  }
}

function limits(
  { least, most }: { readonly least?: number; readonly most?: number },
  unit: Unit | undefined,
  format: Format | undefined,
): string {
  if (least !== undefined && most !== undefined) {
    return `${say(least, unit, format)} to ${say(most, unit, format)}`;
  }
  return least !== undefined
    ? `at least ${say(least, unit, format)}`
    : `at most ${say(most ?? 0, unit, format)}`;
}

function say(value: number, unit: Unit | undefined, format: Format | undefined): string {
  return showValue(value, unit, format).text;
}

function list(choices: readonly string[]): string {
  return choices.length < 2
    ? choices.join('')
    : `${choices.slice(0, -1).join(', ')} or ${choices.at(-1) ?? ''}`;
}

function megabytes(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(bytes < 1024 * 1024 * 10 ? 1 : 0);
}

function quoted(text: string): string {
  return `“${text.length > 60 ? `${text.slice(0, 57)}…` : text}”`;
}

function article(phrase: string): string {
  if (/^(a|an|the) /.test(phrase)) return phrase;
  return `${/^[aeiou]/.test(phrase) ? 'an' : 'a'} ${phrase}`;
}
