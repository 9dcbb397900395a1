import { heading } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { wrapBlocks, wrapTable } from './wraps.ts';

/** An Allowances sheet: the wraps where the template has any, then its numbers, group by group. Tables of its own follow
 *  by `tables`, each with the names of its blocks, and are told the row in which they begin. */
export function allowancesSheet(about: {
  readonly wraps: boolean;
  readonly groups: readonly (readonly Line[])[];
  readonly tables?: readonly ((firstRow: number) => AllowanceTable)[];
}): Form {
  const { wraps, groups, tables = [] } = about;
  const head: readonly Line[] = wraps ? [...wrapTable, emptyLine] : [];
  const title = line(heading('Allowance'), null, heading('Where it comes from'), heading('Check'));
  const lines: Line[] = [...head, title, ...groups.flat()];
  const blocks: { [name: string]: string } = wraps ? { ...wrapBlocks } : {};
  for (const tableAt of tables) {
    lines.push(emptyLine);
    const table = tableAt(lines.length + 1);
    lines.push(...table.lines);
    Object.assign(blocks, table.blocks);
  }
  return form({
    id: 'allowances',
    name: 'Allowances',
    says: 'What this shop allows. Change a number here and every cut of this job follows; other jobs keep their own.',
    widths: wraps ? [20, 14, 28, 20, 9, 8, 11, 11, 12, 16, 10, 11, 22] : [26, 16, 32, 30],
    lines,
    blocks,
  });
}

/** A table under the allowances, with the names of its blocks. */
export interface AllowanceTable {
  readonly lines: readonly Line[];
  readonly blocks: { readonly [name: string]: string };
}
