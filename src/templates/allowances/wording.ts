import { assertNever } from '../../base/outcome.ts';
import { wordCommandFault } from '../../workbook/wording.ts';
import type { CarryFault } from './carry.ts';
import type { TriedFault } from './tried.ts';

/** Why a line of another workbook's allowances cannot be brought in, in a sentence. */
export function wordCarryFault(fault: CarryFault): string {
  const { label } = fault;
  switch (fault.code) {
    case 'not_there':
      return `${label} is no longer in the other workbook. Choose that workbook anew.`;
    case 'no_such_single':
      return `${label} has no place here: no cell of Allowances has the name ${fault.name}. Name one so first, or leave it out.`;
    case 'no_such_table':
      return `${label} has no place here: no block of Allowances has the name ${fault.name}. Name one so first, or leave it out.`;
    case 'follows_another':
      return `${label} of ${fault.name} takes its name from another table, which has no such line here. Bring in that line too; if it was put in anew, set up its line in ${fault.name} by hand.`;
    case 'no_line':
      return `${label}: ${fault.name} has no free line, and none can be put in. ${wordCommandFault(fault.fault)}`;
    case 'other_unit':
      return `${label}, ${fault.heading}: ${fault.place} is in another unit than the other workbook has. Fill it in by hand.`;
    case 'locked':
      return `${label}, ${fault.heading}: ${fault.place} is locked by the template of this job. Leave the line out, or take the locks off.`;
    case 'shows_fault':
      return `${label}, ${fault.heading}: the other workbook has no figure there, only a fault. Put that right there, or leave the line out.`;
    case 'refused':
      return `${label}, ${fault.heading}, at ${fault.place}: ${wordCommandFault(fault.fault)}`;
    default:
      return assertNever(fault);
  }
}

/** Why what is tried cannot be so, in a sentence. */
export function wordTriedFault(fault: TriedFault): string {
  switch (fault.code) {
    case 'no_line':
      return 'The row that was copied is no longer there. Put back what is tried, and copy another row.';
    case 'copy_without_name':
      return `The copy of ${fault.of} has no name, and formulas find a row by its name. Type one, or leave the copy out.`;
    case 'copy_name_taken':
      return `Another row is called ${fault.name} already, and formulas would find only one of the two. Give the copy another name.`;
    case 'copy_name_is_formula':
      return `${fault.name} would be a formula, not a name. Give the copy a name in plain words.`;
    case 'refused':
      return wordCommandFault(fault.fault);
    default:
      return assertNever(fault);
  }
}
