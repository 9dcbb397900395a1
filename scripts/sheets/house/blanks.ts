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
import { blanks, gauges, trunk, unlessBlank } from './plan.ts';

export const blanksForm: Form = form({
  id: 'blanks',
  name: 'Blanks',
  says: 'Cut these blanks for the trunk from flat sheet; nothing is to be filled in here.',
  widths: [12, 12, 8, 8, 10, 9, 8, 11, 10, 18, 7, 7, 10],
  lines: [
    line(
      ...[
        'Section',
        'Shape',
        'Width',
        'Depth',
        'Length',
        'Lengths',
        'Blanks',
        'Blank width',
        'Cut length',
        'Fit',
        'Gauge',
        'Sheets',
        'Weight',
      ].map(heading),
    ),
    ...blanks.rows.map(blankLine),
    line(
      words('Total'),
      null,
      null,
      null,
      figured(`SUM(${blanks.beside('length')})`, feetAndInches),
      figured(`SUM(${blanks.beside('sections')})`, count),
      figured(`SUM(${blanks.beside('blanks')})`, count),
      null,
      null,
      words('each section on sheets of its own', { style: { wraps: true } }),
      null,
      figured(`SUM(${blanks.beside('sheets')})`, count),
      figured(`SUM(${blanks.beside('weight')})`, pounds),
    ),
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
    `INT(sheet_width/${across})*INT(sheet_length/${along})`;
  const onOneSheet = `MAX(${sideBySide(at('across'), at('cut'))},${sideBySide(at('cut'), at('across'))})`;
  const length = `${at('length')}/${at('sections')}`;
  return line(
    figured(`IF(${trunk.from('made_width', row)}="","",${trunk.from('mark', row)})`),
    figured(unless(`IF(${trunk.from('made_depth', row)}="","round","rectangular")`)),
    figured(unless(trunk.from('made_width', row)), inches),
    figured(unless(trunk.from('made_depth', row)), inches),
    figured(unless(`${trunk.from('length', row)}*plan_scale`), feetAndInches),
    figured(unless(`ROUNDUP(${at('length')}/section_length,0)`), count),
    figured(byShape(at('sections'), `${at('sections')}*IF(made="one piece",1,2)`), count),
    figured(
      byShape(
        `BLANK.ROUND(${at('width')},seam_round,GAUGE.THICKNESS(${at('gauge')}),measured)`,
        `BLANK.RECT(${at('width')},${at('depth')},made,1,pocket,flange)`,
      ),
      cutInches,
    ),
    figured(
      byShape(
        `BLANK.LENGTH(${length},round_joint,0)`,
        `BLANK.LENGTH(${length},joint_allowance,joint_allowance)`,
      ),
      cutInches,
    ),
    check(unless(`IF(${onOneSheet}>0,"holds","stop: larger than the stock sheet; make more pieces")`)),
    figured(unless(`IF(${trunk.from('gauge', row)}="",job_gauge,${trunk.from('gauge', row)})`), gauge),
    figured(unless(`IF(${at('fit')}="holds",ROUNDUP(${at('blanks')}/${onOneSheet},0),"")`), count),
    figured(unless(`${at('blanks')}*WEIGHT.BLANK(${at('across')},${at('cut')},${at('gauge')})`), pounds),
  );
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
