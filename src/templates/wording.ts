import { assertNever } from '../base/outcome.ts';
import { showValue } from '../workbook/show.ts';
import { wordCommandFault } from '../workbook/wording.ts';
import type { AnswerFault } from './answers.ts';
import type { CheckDraftFault } from './check-formula.ts';
import type { ExampleDifference } from './example.ts';
import type { RevisionNote, RevisionRefusal } from './newer.ts';
import type { RecordFault } from './record-example.ts';

export function wordAnswerFault(fault: AnswerFault): string {
  switch (fault.code) {
    case 'no_such_given':
      return 'The template has no given there. Look up the place, or write the question as the template asks it.';
    case 'formula_for_an_answer':
      return 'A form takes a value, not a formula. Type the value, or fill in this given in the grid.';
    case 'answer_is_missing':
      return `“${fault.asks}” has no answer. Type one, or take the usual value.`;
    default:
      return wordCommandFault(fault);
  }
}

export function wordRecordFault(fault: RecordFault): string {
  switch (fault.code) {
    case 'no_result':
      return 'No result is chosen. Choose the figured cells that must come out, such as Wrap!C4.';
    case 'no_such_cell':
      return `${fault.place} is no cell of this workbook that holds anything. Write the sheet, an exclamation mark and the cell, such as Wrap!C4.`;
    case 'result_is_typed':
      return `${fault.place} was typed, so it comes out whatever the template does. Choose a cell with a formula.`;
    case 'result_is_blank':
      return `${fault.place} gives nothing with these givens. Fill in what it needs, or choose another cell.`;
    case 'result_has_no_figure':
      return `${fault.place} has no figure. ${fault.sentence}`;
    case 'result_is_yes_or_no':
      return `${fault.place} gives yes or no; an example compares numbers and words. Choose the number behind it.`;
    default:
      return assertNever(fault);
  }
}

const verdictDoes = { stop: 'The stop', look: 'The look' } as const;

export function wordCheckDraftFault(fault: CheckDraftFault): string {
  switch (fault.code) {
    case 'no_condition':
      return 'The check never speaks. Write when it stops or wants a look, such as B4>24, and a sentence for it.';
    case 'condition_without_sentence':
      return `${verdictDoes[fault.of]} has no sentence. Write what is wrong and what to do.`;
    case 'sentence_without_condition':
      return `${verdictDoes[fault.of]} has no condition. Write when it is said, such as B4>24.`;
    default:
      return assertNever(fault);
  }
}

export function wordRevisionNote(note: RevisionNote): string {
  switch (note.code) {
    case 'given_without_home': {
      const { content, unit, format } = note.cell;
      const value = typeof content === 'object' ? 'a formula' : showValue(content, unit, format).text;
      return `${note.place}, ${value}: the newer revision asks for nothing like it, so this answer goes.`;
    }
    case 'answer_is_formula':
      return `${note.place} is answered by a formula. Look whether it still reads the cells that it should.`;
    case 'own_sheet_stays':
      return `The sheet ${note.sheet} is not the template’s and stays. Look whether its formulas still read the right cells.`;
    case 'own_row_stays':
      return `The row at ${note.place} is the shop’s own and stays.`;
    case 'own_cell_goes':
      return `${note.place} stands in a row that the newer revision does not have, and goes.`;
    case 'own_name_goes':
      return `The name ${note.name} is not the template’s, and its cells have moved, so it goes.`;
    default:
      return assertNever(note);
  }
}

export function wordRevisionRefusal({ place }: RevisionRefusal): string {
  return `The line at ${place} holds answers, and the table of the newer revision takes no further line, so the revision cannot be taken. Take the line out of the job, or leave the revision.`;
}

/** `wanted 50.27, got 51.27, may differ by 0.01` */
export function wordExampleDifference(
  { expected, got, tolerance }: ExampleDifference,
  show: (value: ExampleDifference['got']) => string,
): string {
  const within = typeof expected === 'number' && tolerance > 1e-9 ? `, may differ by ${tolerance}` : '';
  return `wanted ${show(expected)}, got ${show(got) || 'nothing'}${within}`;
}
