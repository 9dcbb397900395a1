import {
  check,
  count,
  cutInches,
  feetAndInches,
  figured,
  gauge,
  heading,
  inches,
  pounds,
  words,
} from '../cells.ts';
import { emptyLine, type Form, form, type Line, line } from '../form.ts';
import { wholeDown, wholeUp } from '../whole.ts';
import { blanks, gauges, trunk, unlessBlank } from './plan.ts';

export const blanksForm: Form = form({
  id: 'blanks',
  name: 'Blanks',
  says: 'Cut these blanks for the trunk from flat sheet; nothing is to be filled in here.',
  widths: [18, 11, 10, 8, 16, 7, 7, 11, 8, 8, 10, 8, 10],
  lines: [
    blanks.line({
      mark: heading('Section'),
      across: heading('Blank width'),
      cut: heading('Cut length'),
      blanks: heading('Blanks'),
      fit: heading('Fit'),
      sheets: heading('Sheets'),
      gauge: heading('Gauge'),
      shape: heading('Shape'),
      width: heading('Width'),
      depth: heading('Depth'),
      length: heading('Long'),
      sections: heading('Lengths'),
      weight: heading('Weight'),
    }),
    ...blanks.rows.map(blankLine),
    blanks.line({
      mark: words('Total'),
      blanks: total('blanks'),
      fit: words('each section on sheets of its own', { style: { wraps: true } }),
      sheets: total('sheets'),
      length: total('length', feetAndInches),
      sections: total('sections'),
      weight: total('weight', pounds),
    }),
    emptyLine,
    line(...['To buy', 'Gauge', 'Sheets', 'Blanks', 'Weight'].map(heading)),
    ...gauges.rows.map(gaugeLine),
  ],
});

/** Sheets are counted for each section by itself, all its blanks laid one way, so that the count is never short. */
function blankLine(row: number): Line {
  const at = (column: Parameters<typeof blanks.at>[0]) => blanks.at(column, row);
  const unless = (formula: string) => unlessBlank(at('mark'), formula);
  const byShape = (round: string, rectangular: string) =>
    unless(`IF(${at('shape')}="round",${round},${rectangular})`);
  const sideBySide = (across: string, along: string) =>
    `${wholeDown(`sheet_width/${across}`)}*${wholeDown(`sheet_length/${along}`)}`;
  const onOneSheet = `MAX(${sideBySide(at('across'), at('cut'))},${sideBySide(at('cut'), at('across'))})`;
  const length = `${at('length')}/${at('sections')}`;
  return blanks.line({
    mark: figured(`IF(${trunk.from('made_width', row)}="","",${trunk.from('mark', row)})`),
    shape: figured(unless(`IF(${trunk.from('made_depth', row)}="","round","rectangular")`)),
    width: figured(unless(trunk.from('made_width', row)), inches),
    depth: figured(unless(trunk.from('made_depth', row)), inches),
    length: figured(unless(`${trunk.from('length', row)}*plan_scale`), feetAndInches),
    sections: figured(unless(wholeUp(`${at('length')}/section_length`)), count),
    blanks: figured(byShape(at('sections'), `${at('sections')}*IF(made="one piece",1,2)`), count),
    across: figured(
      byShape(
        `BLANK.ROUND(${at('width')},seam_round,GAUGE.THICKNESS(${at('gauge')}),measured)`,
        `BLANK.RECT(${at('width')},${at('depth')},made,1,pocket,flange)`,
      ),
      cutInches,
    ),
    cut: figured(
      byShape(
        `BLANK.LENGTH(${length},round_joint,0)`,
        `BLANK.LENGTH(${length},joint_allowance,joint_allowance)`,
      ),
      cutInches,
    ),
    fit: check(unless(`IF(${onOneSheet}>0,"holds","stop: larger than the stock sheet; make more pieces")`)),
    gauge: figured(unless(`IF(${trunk.from('gauge', row)}="",job_gauge,${trunk.from('gauge', row)})`), gauge),
    sheets: figured(unless(`IF(${at('fit')}="holds",${wholeUp(`${at('blanks')}/${onOneSheet}`)},"")`), count),
    weight: figured(
      unless(`${at('blanks')}*WEIGHT.BLANK(${at('across')},${at('cut')},${at('gauge')})`),
      pounds,
    ),
  });
}

function total(column: Parameters<typeof blanks.beside>[0], more: Parameters<typeof figured>[1] = count) {
  return figured(`SUM(${blanks.beside(column)})`, more);
}

/** The gauges that the trunk is made of, the lightest first. */
function gaugeLine(row: number): Line {
  const all = blanks.beside('gauge');
  const lighter = gauges.at('gauge', row - 1);
  const own = gauges.at('gauge', row);
  const next =
    row === gauges.rows[0]
      ? `IF(COUNT(${all})=0,"",MAX(${all}))`
      : `IF(${lighter}="","",IF(COUNTIF(${all},"<"&${lighter})=0,"",MAXIFS(${all},${all},"<"&${lighter})))`;
  const ofThisGauge = (column: 'sheets' | 'blanks' | 'weight') =>
    unlessBlank(own, `SUMIF(${all},${own},${blanks.beside(column)})`);
  return line(
    figured(unlessBlank(own, `"Sheet metal, "&${own}&" ga"`)),
    figured(next, gauge),
    figured(ofThisGauge('sheets'), count),
    figured(ofThisGauge('blanks'), count),
    figured(ofThisGauge('weight'), pounds),
  );
}
