import { writeAddress } from '../base/address.ts';
import { assertNever } from '../base/outcome.ts';
import { type Unit, units } from '../base/unit.ts';
import { article, quoted } from '../catalogue/say.ts';
import { wordTapeFault } from '../catalogue/wording.ts';
import type { RefusedEntry } from './command/write.ts';
import type { CommandFault } from './commands.ts';
import type { Format } from './document.ts';
import type { FileFault } from './file-fault.ts';
import type { QuestionFault } from './question.ts';
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
    case 'unit_of_a_filled_cell':
      return `${writeAddress(fault.address)} holds a number that measures ${units[fault.before].says}; as ${units[fault.after].says} it would mean something else, and the formulas that read it would not know. Empty the cell, change what it measures, and type the number anew.`;
    case 'off_the_sheet':
      return `${fault.rows} rows and ${fault.columns} columns do not fit from here on: they would run off the sheet. Begin further up or further left.`;
    case 'entries_refused':
      return wordRefusals(fault.refused);
    case 'rows_torn':
      return `The rows stay as they are: ${fault.reader} takes in ${fault.reads}, only some of these rows, and they would no longer lie together. Let it take in all of the rows or one of them, then sort.`;
    case 'order_counts': {
      const rows = {
        above: 'the rows above its own',
        below: 'the rows below its own',
        around: 'rows around its own',
      };
      return `The rows stay as they are, because their order counts here: ${fault.reader} takes in ${fault.reads}, ${rows[fault.where]}, and after a sort these would be others. Leave them in this order, or fill in their givens anew where each is to stand.`;
    }
    case 'takes_in_itself':
      return `All stays as it is: the formula that would come to stand in ${fault.reader} would take in its own cell there. Move it outside the cells that it takes in.`;
    case 'no_line_here':
      return 'This row is no line of a table: a table has at least two lines alike, one below the other. Put in a row instead.';
    case 'lines_torn':
      return `All stays as it is: ${fault.reader} finds a line in ${fault.one} and takes the same line of ${fault.other}, and the two would no longer go together. Let it look in two columns of one sheet, then do it again.`;
    case 'sheet_is_full':
      return `The sheet has room for ${fault.most.toLocaleString('en-US')} ${fault.axis}s, and no more fit. Put fewer in, or begin another sheet.`;
    case 'sheet_name_taken':
      return `There is a sheet named ${quoted(fault.name)} already. Choose another name.`;
    case 'unusable_sheet_name':
      return `${quoted(fault.name)} cannot name a sheet. Use 1 to 60 characters without ' ! [ ] : * ? / and \\.`;
    case 'given_with_formula':
      return `${writeAddress(fault.address)} has a formula, and a given is filled in by a person. Empty the cell first, or leave it figured.`;
    case 'nothing_to_go_across':
      return `${writeAddress(fault.address)} holds no heading and no words, so nothing would show over the columns beside it. Choose a heading, or type the words first.`;
    case 'note_too_long':
      return `The note has ${fault.got} characters; a note has at most ${fault.most}. Shorten it, or put the rest into a cell.`;
    case 'unsound_question':
      return fault.faults.map(wordQuestionFault).join(' ');
    case 'content_against_question': {
      const { content, unit, format } = fault.cell;
      const holds = typeof content === 'number' ? say(content, unit, format) : quoted(String(content));
      return `${writeAddress(fault.address)} holds ${holds}, which the cell would then not take. Change what stands there first, or ask for something wider.`;
    }
    case 'sheet_sentence_too_long':
      return `The sentence has ${fault.got} characters; at most ${fault.most} stand over a sheet. Shorten it, or put the rest into cells.`;
    case 'nothing_left_to_see':
      return `Then no ${fault.axis} of this sheet would be left to see. Leave at least one of them.`;
    case 'too_many_frozen':
      return `${fault.got} ${fault.axis}s would fill the window; at most ${fault.most} can stay in sight. Choose a ${fault.axis} nearer the edge.`;
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
    case 'locked_cells': {
      const which = fault.count === 1 ? fault.place : `${fault.place} and ${fault.count - 1} more`;
      return `${which} ${fault.count === 1 ? 'is' : 'are'} locked, as the template has it; nothing was changed. Fill in the givens, or take the locks off this job.`;
    }
    case 'locks_of_a_job':
      return 'Only a template says which cells are locked. Change it there, or take the locks off this job as a whole.';
    case 'given_is_open':
      return `${writeAddress(fault.address)} is a given, which is there to be filled in. Make it something else first, or leave it open.`;
    case 'example_without_name':
      return 'The worked example has no name. Say what it is of, such as “a 16 in round piece in 3 in wrap”.';
    case 'example_name_taken':
      return `There is a worked example named ${quoted(fault.name)} already. Choose another name.`;
    case 'example_gives_nothing':
      return 'A worked example has at least one result that its givens must lead to. Choose the cells that it is to hold.';
    case 'no_such_example':
      return 'This worked example is no longer in the template. Choose another one from the list.';
    case 'too_many_examples':
      return `A template has at most ${fault.most} worked examples. Take one out first.`;
    case 'not_a_template':
      return 'This is a job, and only a template has revisions and kinds of houses. Make a template of it first.';
    case 'revision_says_nothing':
      return 'Say in a line what is new in this revision, such as “longer laps on rectangular trunk”.';
    case 'broken_examples':
      return `${fault.names.length === 1 ? 'The worked example' : 'The worked examples'} ${list(fault.names.map(quoted))} no longer ${fault.names.length === 1 ? 'comes' : 'come'} out as ${fault.names.length === 1 ? 'it was' : 'they were'} recorded. Put the template right, record ${fault.names.length === 1 ? 'it' : 'them'} anew, or say why this revision is saved all the same.`;
    case 'template_without_name':
      return 'The template has no name. Type a few words, such as “Round trunk”.';
    case 'words_too_long':
      return `There are ${fault.got} characters; at most ${fault.most} are taken. Shorten it.`;
    case 'no_title':
      return 'The workbook needs a title. Type a few words, such as the street and lot.';
    default:
      return assertNever(fault);
  }
}

/** Why a question cannot be asked as it stands, and what to do. */
export function wordQuestionFault(fault: QuestionFault): string {
  switch (fault.code) {
    case 'asks_nothing':
      return 'The question has no words. Write what the cell asks for, such as “How wide is the opening?”.';
    case 'limits_without_unit':
      return 'Least and most are numbers, and the cell has no unit. Choose what it measures first, or leave them out.';
    case 'limits_beside_choices':
      return 'A cell takes either one of its choices or a number between least and most. Leave out one or the other.';
    case 'least_above_most':
      return `The least, ${say(fault.least, fault.unit, undefined)}, is above the most, ${say(fault.most, fault.unit, undefined)}, so nothing could be filled in. Change one of them.`;
    case 'choice_twice':
      return `The choice ${quoted(fault.choice)} stands there twice. Take one of them out.`;
    case 'too_many_choices':
      return `There are ${fault.got} choices; a cell offers at most ${fault.most}. Take some out.`;
    case 'choice_too_long':
      return `The choice ${quoted(fault.choice)} is too long: at most ${fault.most} characters. Shorten it.`;
    case 'usual_not_a_choice':
      return `The usual value ${quoted(fault.usual)} is not one of the choices. Take ${list(fault.choices)}, or leave it out.`;
    case 'usual_not_a_number':
      return `The usual value ${quoted(fault.usual)} is not a number, and this cell holds ${article(units[fault.unit].says)}. Type digits, or leave it out.`;
    case 'usual_out_of_range':
      return `The usual value, ${say(fault.usual, fault.unit, undefined)}, is outside what the cell takes: ${limits(fault.question, fault.unit, undefined)}. Change it or the limits.`;
    case 'question_too_long':
      return `The question has ${fault.got} characters; at most ${fault.most} are taken. Shorten it.`;
    default:
      return assertNever(fault);
  }
}

const refusalsTold = 10;

/** Every entry that is not taken, each with its cell on a line of its own; of very many the first, and how many more. */
function wordRefusals(refused: readonly RefusedEntry[]): string {
  const told = refused.slice(0, refusalsTold).map(({ sheet, address, fault }) => {
    const place = sheet === undefined ? writeAddress(address) : `${sheet}!${writeAddress(address)}`;
    return `${place}: ${wordCommandFault(fault)}`;
  });
  const rest = refused.length - told.length;
  const more = rest > 0 ? [`And ${rest} more.`] : [];
  return ['Nothing was written.', ...told, ...more].join('\n');
}

/** Why a file is not opened. The open workbook is as it was. */
export function wordFileFault(fault: FileFault): string {
  switch (fault.code) {
    case 'too_large':
      return `The file has ${megabytes(fault.got)} MB; a workbook file has at most ${megabytes(fault.most)} MB. Choose another file.`;
    case 'empty':
      return 'The file is empty. Choose the file that was saved from a workbook.';
    case 'other_program':
      return 'This is a file of another program, packed or of another kind. Choose a file that was saved from a workbook; its name ends in .stretchout.json.';
    case 'not_json':
      return 'The file is damaged or cut off: it ends or breaks in the middle. Copy it again from where it was saved.';
    case 'not_a_workbook':
      return 'This is not a workbook file. Choose a file that was saved from a workbook; its name ends in .stretchout.json.';
    case 'lot_table':
      return 'This is a lot table, not a workbook. Open it on the page “House types and lots”.';
    case 'unsafe_key':
      return `The file has an entry named ${quoted(fault.key)}, which no workbook has and which can do harm. It was not saved by this program as it stands; do not use it.`;
    case 'newer_version':
      return `The file is of version ${fault.got}; this program reads up to version ${fault.newest}. Open it with a newer copy of the program.`;
    case 'unknown_version':
      return `The file says it is of version ${quoted(fault.got)}, which there never was. It is damaged or was changed by hand; copy it again from where it was saved.`;
    case 'wrong_shape':
      return `The file is damaged or was changed by hand: at ${quoted(fault.place || 'the top')} there is something that does not belong there. Copy it again from where it was saved.`;
    case 'broken_seal':
      return `The locked cells of the sheet ${quoted(fault.sheet)} are not as they were saved: the file is damaged or was changed by hand, and its figures cannot be trusted. Copy it again from where it was saved. To change locked cells, open the job here and take its locks off.`;
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
