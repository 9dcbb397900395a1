import {
  check,
  count,
  cutInches,
  exactInches,
  figured,
  heading,
  resistance,
  squareFeet,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { blanks, ofSystem, type Plan, trunk, unlessBlank, wraps } from './plan.ts';

export function wrapForm(plan: Plan): Form {
  const ofWrap = (column: string) => `INDEX(${column},MATCH(job_wrap,wrap_names,0))`;
  const isWayOpen = ['"round",12,', '"rectangular",12,8'].map(
    (duct) => `ISERROR(WRAP.STRETCHOUT(${duct},job_wrap,wraps,wrap_method,lap,corners))`,
  );
  return form({
    id: 'wrap',
    name: 'Wrap',
    says: 'Cut each wrap of the trunk at the length under “Cut at”; nothing is to be filled in here.',
    widths: [25, 11, 8, 7, 7, 22, 10],
    lines: [
      line(...['Section', 'Stretch-out', 'Cut at', 'Pieces', 'R left', 'Check', 'Area'].map(heading)),
      ...wraps.rows.map((row) => wrapLine(plan, row)),
      emptyLine,
      line(heading('The wrap'), null, null, null, null, null),
      namedLine(
        'wrap_is_ready',
        words('Finished on Allowances'),
        figured(`IFERROR(${ofWrap('wrap_lines')}="holds",FALSE)`),
      ),
      namedLine(
        'wrap_worked_by',
        words('Worked out by'),
        figured(`IF(wrap_is_ready,IF(OR(${isWayOpen.join(',')}),"geometry",wrap_method),"")`),
        null,
        null,
        null,
        check(
          `IF(wrap_is_ready,IF(wrap_worked_by=wrap_method,"holds","look: the way chosen on House has no figure for this wrap, so it is worked out by geometry"),"stop: no wrap of this name is finished on Allowances; choose another on House, or finish its line")`,
        ),
      ),
      namedLine(
        'wrap_rating',
        words('R as installed, by its label'),
        figured(`IF(wrap_is_ready,${ofWrap('wrap_ratings')},"")`, resistance),
      ),
      namedLine(
        'wrap_rolls',
        words('Rolls to buy'),
        figured(
          `IF(OR(NOT(wrap_is_ready),COUNT(${wraps.beside('cut')})=0),0,WRAP.ROLLS(${wraps.beside('cut')},${wraps.beside('pieces')},job_wrap,wraps,wrap_waste))`,
          count,
        ),
      ),
      namedLine(
        'wrap_area',
        words('Wrap to cut and put on'),
        figured(`SUM(${wraps.beside('area')})`, squareFeet),
      ),
    ],
  });
}

function wrapLine(plan: Plan, row: number): Line {
  const at = (column: Parameters<typeof wraps.at>[0]) => wraps.at(column, row);
  const unless = (formula: string) => unlessBlank(at('mark'), formula);
  const duct = ['shape', 'width', 'depth']
    .map((column) => blanks.from(column as 'shape' | 'width' | 'depth', row))
    .join(',');
  const needed = ofSystem(plan, trunk.from('system', row), 'needed_r');
  return line(
    figured(`IF(wrap_is_ready,${blanks.from('mark', row)},"")`),
    figured(unless(`WRAP.STRETCHOUT(${duct},job_wrap,wraps,wrap_worked_by,lap,corners)`), exactInches),
    figured(unless(`TAPE.ROUND(${at('around')},fraction,"up")`), cutInches),
    figured(unless(`WRAP.PIECES(${blanks.from('length', row)},job_wrap,wraps,wrap_flange)`), count),
    figured(unless(`IFERROR(WRAP.RLEFT(${duct},${at('cut')},job_wrap,wraps,lap,corners),"")`), resistance),
    check(
      unless(
        `IF(wrap_rating<${needed},"stop: this wrap is rated R "&ROUND(wrap_rating,2)&" installed, and the code asks for R "&ROUND(${needed},2),` +
          `IF(${at('left')}="","stop: by geometry this cut squeezes the wrap to less than half; choose geometry on House",IF(${at('left')}<${needed}-r_short,"look: by geometry, less R is left than is needed; a longer cut squeezes the wrap less","holds")))`,
      ),
    ),
    figured(unless(`${at('cut')}*${blanks.from('length', row)}/144`), squareFeet),
  );
}
