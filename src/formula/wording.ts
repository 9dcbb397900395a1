import { assertNever } from '../base/outcome.ts';
import { quoted } from '../catalogue/say.ts';
import type { FormulaFault } from './fault.ts';

/** Why a formula is refused, where the trouble is, and what to write instead. Full sentences, ready to show. */
export function wordFormulaFault(fault: FormulaFault, text: string): string {
  const at = placeIn(text, fault.from);
  switch (fault.code) {
    case 'nothing_typed':
      return 'The formula is empty. Write what to figure after the =, such as =A1*2.';
    case 'too_long':
      return `The formula has ${fault.got} characters; at most ${fault.most} are taken. Split it over several cells.`;
    case 'too_deep':
      return `${at}brackets and functions stand more than ${fault.most} deep in each other. Put a part of the formula into a cell of its own.`;
    case 'too_many_terms':
      return `The formula has ${fault.got} terms; at most ${fault.most} are taken. Use SUM over a block of cells, or split the formula over several cells.`;
    case 'unclosed_text':
      return `${at}a text begins but does not end. Put a " after its last character.`;
    case 'unclosed_sheet_name':
      return `${at}a sheet name begins but does not end. Write it such as 'Main trunk'!B4.`;
    case 'unclosed_bracket':
      return `${at}a bracket is opened but never closed. Put the missing ) where it belongs.`;
    case 'stray_bracket':
      return `${at}this ) closes nothing. Take it out, or put the missing ( before it.`;
    case 'value_expected':
      return fault.after === ''
        ? `${at}a formula begins with a value, a cell or a function. Put one there.`
        : `${at}a value, a cell or a function should follow ${quoted(fault.after)}. Put one there, or take the ${quoted(fault.after)} out.`;
    case 'operator_expected':
      if (
        /[0-9]\s+$/.test(text.slice(0, fault.from)) &&
        /^[0-9]+\s*\/\s*[0-9]/.test(text.slice(fault.from))
      ) {
        return `${at}a number with a fraction needs a + between, such as 3+1/2, and brackets where it is multiplied.`;
      }
      return `${at}nothing joins ${quoted(fault.got)} to what stands before it. Put an operator between them, such as + or *, or a comma between arguments.`;
    case 'foreign_sign':
      return `${at}${quoted(fault.got)} has no meaning in a formula. Write ${fault.instead} instead.`;
    case 'unknown_sign':
      return `${at}${quoted(fault.got)} has no meaning here. Take it out.`;
    case 'leading_equals':
      return 'The formula begins with = twice. Take one out.';
    case 'semicolon':
      return `${at}arguments are separated by a comma, not by a semicolon. Write a comma.`;
    case 'stray_comma':
      return `${at}a comma stands between arguments only. Write decimals with a point, such as 1.5, or take the comma out.`;
    case 'length_mark':
      return `${at}formulas figure in inches, without foot and inch marks. Write 6' 4" as 6*12+4.`;
    case 'cell_expected':
      return fault.after === '!'
        ? `${at}a cell should follow the sheet name. Write it such as B4; a name needs no sheet before it.`
        : `${at}the last cell of the block should follow the colon. Write the block such as B2:B9, with its sheet before the first cell only.`;
    case 'number_too_large':
      return `${at}${quoted(fault.got)} is larger than any number that can be figured with. Correct it.`;
    case 'no_such_cell':
      return `${at}${quoted(fault.got)} reads as a cell, but there is none: columns run from A to ZZ and rows from 1 to 99999. Correct it; if a name is meant, it must not look like a cell.`;
    case 'whole_lines':
      return `${at}${quoted(fault.got)} means whole rows or columns, which are not taken. Write the block of cells that is meant, such as B2:B99.`;
    case 'array_literal':
      return `${at}a list in braces is not taken. Put its values into cells and point to those.`;
    case 'unknown_error_value':
      return `${at}${quoted(fault.got)} cannot be written into a formula. Use NA() to mark a value that is not there.`;
    case 'unknown_function':
      return `${at}there is no function ${fault.got}. ${fault.nearest === null ? 'Look for it in the list of functions.' : `Perhaps ${fault.nearest} is meant.`}`;
    case 'refused_function':
      return `${at}${fault.got} is not taken, because ${fault.why}. ${fault.instead}`;
    case 'function_without_brackets':
      return `${at}${fault.got} is a function. Put its arguments in brackets after it, such as ${fault.got.toUpperCase()}(…).`;
    case 'argument_count':
      return `${at}${fault.name} got ${fault.got} ${fault.got === 1 ? 'argument' : 'arguments'} but takes ${counts(fault.least, fault.most)}. ${fault.got < fault.least ? 'Fill in the rest.' : 'Take out the last ones, or look for a stray comma.'}`;
    case 'half_a_group':
      return `${at}the last arguments of ${fault.name} come together: ${fault.together.join(' and ')}. One of them is missing or too many.`;
    case 'unknown_name':
      return `${at}there is no name ${quoted(fault.got)}. ${fault.nearest === null ? 'Correct it, or put a text in quotes.' : `Perhaps ${quoted(fault.nearest)} is meant.`}`;
    case 'unusable_name':
      return `${at}the name ${quoted(fault.got)} cannot be used in a formula, because it reads as something else. Give the cells another name, and use that.`;
    case 'unknown_sheet':
      return `${at}there is no sheet ${quoted(fault.got)}. ${fault.nearest === null ? 'Correct the sheet name.' : `Perhaps ${quoted(fault.nearest)} is meant.`}`;
    case 'range_for_a_value':
      return `${at}${fault.got} is a block of cells, but one value is wanted. Point to a single cell, or use a function over the block, such as SUM(${fault.got}).`;
    case 'range_too_large':
      return `${at}the blocks of this formula have ${fault.got} cells together; at most ${fault.most} are taken. Make the blocks smaller, or add up parts of them in cells of their own.`;
    case 'wildcard':
      return `${at}* and ? stand for themselves only, so ${quoted(fault.got)} would be looked for as it is written. Write the whole text, or a comparison such as ">24".`;
    default:
      return assertNever(fault);
  }
}

function placeIn(text: string, at: number): string {
  return at >= text.trimEnd().length ? 'At the end: ' : `At character ${at + 1}: `;
}

function counts(least: number, most: number): string {
  if (most === 0) return 'none';
  if (most === Number.POSITIVE_INFINITY) return `at least ${least}`;
  return least === most ? String(least) : `${least} to ${most}`;
}
