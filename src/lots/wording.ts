import { assertNever } from '../base/outcome.ts';
import { wordCommandFault, wordFileFault } from '../workbook/wording.ts';
import type { LotCommandFault } from './commands.ts';
import type { LotLineFault } from './csv-in.ts';
import type { GivenFault } from './enter-given.ts';
import type { LotFileFault } from './file.ts';
import type { HouseFault } from './house.ts';
import type { LotFault } from './lot-givens.ts';
import type { LeftOut } from './totals.ts';

/** Why something cannot be done to a lot table, and what to do; it is as it was. */
export function wordLotFault(fault: LotCommandFault | LotLineFault): string {
  switch (fault.code) {
    case 'no_title':
      return 'The lot table needs a title. Type a few words, such as the street.';
    case 'no_such_lot':
      return 'This lot is no longer in the table. Choose another one.';
    case 'no_lot_name':
      return 'The lot has no name. Type one, such as “Lot 7”.';
    case 'lot_name_taken':
      return `There is a lot named ${quoted(fault.name)} already. Give each its own name.`;
    case 'too_long':
      return `There are ${fault.got} characters; at most ${fault.most} are taken. Shorten it.`;
    case 'too_many_lots':
      return `That would make ${fault.got} lots; a table has at most ${fault.most}. Begin another table for the rest.`;
    case 'no_such_type':
      return fault.name === ''
        ? `No house type is given. Take ${list(fault.known)}.`
        : `${quoted(fault.name)} is no house type of this table. Take ${list(fault.known)}, or add that type first.`;
    case 'no_such_option':
      return `The house type ${quoted(fault.type)} has no option ${quoted(fault.name)}. Leave it blank for this lot.`;
    case 'not_a_choice':
      return `${quoted(fault.typed)} is not one of the choices. Take ${list(fault.choices)}.`;
    case 'no_such_given':
      return `${quoted(fault.name)} does not vary in the house type ${quoted(fault.type)}. Leave it blank for this lot.`;
    case 'entry':
    case 'formula_in_lot':
      return wordGivenFault(fault);
    case 'not_a_house_type':
      return `${quoted(fault.title)} is no house type: it is a template only when its author has said what varies in it. Open it and mark its options, givens and results first.`;
    case 'type_taken':
      return `There is a house type named ${quoted(fault.name)} in this table already. Take the newer revision in its place, or rename the template.`;
    case 'type_in_use':
      return `${list(fault.lots.slice(0, 4), 'and')}${fault.lots.length > 4 ? ` and ${fault.lots.length - 4} more` : ''} ${fault.lots.length === 1 ? 'is' : 'are'} of the type ${quoted(fault.name)}. Give ${fault.lots.length === 1 ? 'it' : 'them'} another type first, or take ${fault.lots.length === 1 ? 'it' : 'them'} out.`;
    case 'too_many_types':
      return `A lot table has at most ${fault.most} house types. Begin another table, or take one out.`;
    case 'replacing_loses': {
      const lost = fault.losses.map(({ lot, what }) => `${lot}: ${what}`);
      const other = fault.usuals.map(
        ({ lot, what, was, is }) => `${lot}: ${what}, ${was} before and ${is} now`,
      );
      const sentences = [
        ...(lost.length > 0
          ? [
              `The other revision of ${quoted(fault.name)} does not know all that was said of its lots. These would be dropped: ${someOf(lost)}.`,
            ]
          : []),
        ...(other.length > 0
          ? [
              `Something else is usual in the other revision of ${quoted(fault.name)}, and these lots say nothing of their own there: ${someOf(other)}. Say on the lot what is to stay.`,
            ]
          : []),
      ];
      return `${sentences.join(' ')} Nothing was changed.`;
    }
    default:
      return assertNever(fault);
  }
}

/** `Lot 1: Wrap; Lot 2: Wrap and 9 more` */
function someOf(told: readonly string[]): string {
  const more = told.length - 6;
  return `${told.slice(0, 6).join('; ')}${more > 0 ? ` and ${more} more` : ''}`;
}

function wordGivenFault(fault: GivenFault): string {
  return fault.code === 'entry'
    ? wordCommandFault(fault.fault)
    : 'A lot holds values, and this begins with = like a formula. Type the value; formulas stand in the house type.';
}

/** What keeps a lot from being figured. */
export function wordFaultOfLot(fault: LotFault): string {
  switch (fault.code) {
    case 'type_gone':
      return `The house type ${quoted(fault.type)} is not in this table. Choose another one.`;
    case 'option_gone':
      return `The house type ${quoted(fault.type)} no longer has the option ${quoted(fault.option)}. Choose its type again.`;
    case 'choice_gone':
      return `${quoted(fault.choice)} is no longer a choice of ${quoted(fault.option)}. Take ${list(fault.choices)}.`;
    case 'given_gone':
      return `${fault.place} no longer varies in the house type ${quoted(fault.type)}. Choose its type again.`;
    case 'given_refuses':
      return `${fault.label}: ${wordCommandFault(fault.fault)}`;
    default:
      return assertNever(fault);
  }
}

/** Why a lot is not counted. Completes “Lot 3: …”. */
export function wordLeftOut(why: LeftOut): string {
  switch (why.code) {
    case 'not_figured_yet':
      return 'not figured yet';
    case 'refused':
      return 'cannot be figured as it stands';
    case 'disagrees':
      return `figured from scratch, ${why.place} came to something else`;
    case 'no_such_result':
      return `${why.type} has no such result`;
    case 'no_figure':
      return why.sentence;
    case 'not_a_number':
      return 'no number';
    default:
      return assertNever(why);
  }
}

/** `Lot 1, Lot 2 and 9 more` */
export function lotsInWords(lots: readonly string[], most = 6): string {
  const more = lots.length - most;
  return more > 1 ? `${lots.slice(0, most).join(', ')} and ${more} more` : lots.join(', ');
}

/** Said loudly wherever figures of the lots are shown. */
export function wordDisagreement(lot: string, place: string): string {
  return `${lot} is not to be trusted: figured from scratch, ${place} came to something else than before. This is a mistake in this program. Nothing of this lot is counted; open it as a job, and please tell whoever looks after the program.`;
}

export const pooledNothing =
  'Whole rolls, sheets and boxes are counted lot by lot and added up, since lots are made and cut apart. Cutting several lots from the same stock may need fewer.';

export function wordLotFileFault(fault: LotFileFault): string {
  switch (fault.code) {
    case 'not_a_lot_table':
    case 'not_a_workbook':
      return 'This is not a lot table. Choose a file that was saved from one; its name ends in .lots.stretchout.json.';
    case 'broken_type':
      return `House type ${fault.at + 1} of this file is refused. ${wordFileFault(fault.fault)}`;
    case 'not_a_house_type':
      return `${quoted(fault.name)} in this file is no house type. The file is damaged or was changed by hand; copy it again from where it was saved.`;
    case 'type_twice':
      return `Two house types in this file are named ${quoted(fault.name)}. It was changed by hand; copy it again from where it was saved.`;
    case 'lot_twice':
      return `Two lots in this file are named ${quoted(fault.name)}. It was changed by hand; give each its own name.`;
    case 'lot_without_type':
      return `${quoted(fault.lot)} is of the house type ${quoted(fault.type)}, which is not in this file. It was changed by hand; copy it again from where it was saved.`;
    default:
      return wordFileFault(fault);
  }
}

/** Why something cannot be marked in a house type. */
export function wordHouseFault(fault: HouseFault): string {
  switch (fault.code) {
    case 'no_name':
      return `The ${fault.of} has no name. Type a word or two, such as ${fault.of === 'choice' ? '“R-8”' : fault.of === 'option' ? '“Insulation”' : '“Sheets of metal”'}.`;
    case 'name_too_long':
      return `There are ${fault.got} characters; at most ${fault.most} are taken. Shorten it.`;
    case 'name_taken':
      return `There is a ${fault.of} named ${quoted(fault.name)} already. Choose another name.`;
    case 'option_fills_nothing':
      return 'An option fills at least one given. Choose the givens that its choices fill.';
    case 'blank_given':
      return `${list(fault.places, 'and')} ${fault.places.length === 1 ? 'is' : 'are'} blank just now, and a choice records what stands there. Fill ${fault.places.length === 1 ? 'it' : 'them'} in first.`;
    case 'not_a_given':
      return `${fault.place} is no given. Only givens can be filled in by a lot.`;
    case 'takes_no_words':
      return `${fault.place} takes a number or one of a few choices, so no lot’s name can stand there. Choose a given for plain words.`;
    case 'no_such_cell':
      return `${quoted(fault.place)} is no cell of this template. Write it like House!B12.`;
    case 'no_such_option':
      return 'This option is no longer there. Choose another one.';
    case 'last_choice':
      return 'An option has at least one choice. Take the whole option out instead.';
    case 'too_many':
      return `There are at most ${fault.most} of these. Take one out first.`;
    default:
      return assertNever(fault);
  }
}

function list(words: readonly string[], joint = 'or'): string {
  return words.length < 2
    ? words.join('')
    : `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1) ?? ''}`;
}

function quoted(text: string): string {
  return `“${text.length > 60 ? `${text.slice(0, 57)}…` : text}”`;
}
