import type { Unit } from '../base/unit.ts';
import type { Question } from './document.ts';

/** Why a question cannot be asked as it stands. Wording: `wording.ts`. */
export type QuestionFault =
  | { readonly code: 'asks_nothing' }
  | { readonly code: 'limits_without_unit' }
  | { readonly code: 'limits_beside_choices' }
  | {
      readonly code: 'least_above_most';
      readonly least: number;
      readonly most: number;
      readonly unit: Unit | undefined;
    }
  | { readonly code: 'choice_twice'; readonly choice: string }
  | { readonly code: 'too_many_choices'; readonly got: number; readonly most: number }
  | { readonly code: 'choice_too_long'; readonly choice: string; readonly most: number }
  | { readonly code: 'usual_not_a_choice'; readonly usual: string; readonly choices: readonly string[] }
  | { readonly code: 'usual_not_a_number'; readonly usual: string; readonly unit: Unit }
  | {
      readonly code: 'usual_out_of_range';
      readonly usual: number;
      readonly question: Question;
      readonly unit: Unit | undefined;
    }
  | { readonly code: 'question_too_long'; readonly got: number; readonly most: number };

/** As a workbook file takes them. */
export const questionLimits = { words: 500, help: 2000, choices: 200, choice: 80 } as const;

/** Everything that keeps a question from being asked of a cell with this unit; none where it is sound. */
export function questionFaults(question: Question, unit: Unit | undefined): readonly QuestionFault[] {
  return [
    ...wordsFaults(question),
    ...limitsFaults(question, unit),
    ...choicesFaults(question),
    ...usualFaults(question, unit),
  ];
}

function wordsFaults({ asks, why = '', help = '' }: Question): readonly QuestionFault[] {
  if (asks.trim() === '') return [{ code: 'asks_nothing' }];
  const got = Math.max(asks.length, why.length);
  const { words: most, help: mostHelp } = questionLimits;
  if (help.length > mostHelp) return [{ code: 'question_too_long', got: help.length, most: mostHelp }];
  return got > most ? [{ code: 'question_too_long', got, most }] : [];
}

function limitsFaults({ least, most, choices }: Question, unit: Unit | undefined): readonly QuestionFault[] {
  if (least === undefined && most === undefined) return [];
  if (choices) return [{ code: 'limits_beside_choices' }];
  if (!unit) return [{ code: 'limits_without_unit' }];
  if (least !== undefined && most !== undefined && least > most) {
    return [{ code: 'least_above_most', least, most, unit }];
  }
  return [];
}

function choicesFaults({ choices = [] }: Question): readonly QuestionFault[] {
  const { choices: mostChoices, choice: longest } = questionLimits;
  const seen = choices.map((choice) => choice.toLowerCase());
  const twice = choices.find((_, index) => seen.indexOf(seen[index] ?? '') < index);
  const long = choices.find((choice) => choice.length > longest);
  return [
    ...(choices.length > mostChoices
      ? [{ code: 'too_many_choices', got: choices.length, most: mostChoices } as const]
      : []),
    ...(twice === undefined ? [] : [{ code: 'choice_twice', choice: twice } as const]),
    ...(long === undefined ? [] : [{ code: 'choice_too_long', choice: long, most: longest } as const]),
  ];
}

function usualFaults(question: Question, unit: Unit | undefined): readonly QuestionFault[] {
  const { usual, choices, least = -Infinity, most = Infinity } = question;
  if (usual === undefined) return [];
  if (choices) {
    return choices.includes(String(usual))
      ? []
      : [{ code: 'usual_not_a_choice', usual: String(usual), choices }];
  }
  if (!unit) return [];
  if (typeof usual !== 'number') return [{ code: 'usual_not_a_number', usual: String(usual), unit }];
  // Where the limits themselves are the wrong way round, that is told and enough.
  if (least > most || (usual >= least && usual <= most)) return [];
  return [{ code: 'usual_out_of_range', usual, question, unit }];
}
