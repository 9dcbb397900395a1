import { count, figured, gauge, heading, pounds } from '../cells.ts';
import { type Line, line } from '../form.ts';
import { ifFilled, rowsFrom } from '../sentences.ts';
import { type BlankColumns, besidePieces, totalRow } from './piece-rows.ts';

/** Room for so many gauges in one job. */
const gaugeCount = 8;
const firstGaugeRow = totalRow + 3;

export const gaugeRows = rowsFrom(firstGaugeRow, gaugeCount);
export const sheetsByGauge = `C${firstGaugeRow}:C${firstGaugeRow + gaugeCount - 1}`;

/** The sheets to buy, under the blanks of the pieces with one empty line between. */
export function sheetsToBuy(columns: BlankColumns): readonly Line[] {
  return [
    line(...['To buy', 'Gauge', 'Sheets', 'Blanks', 'Weight'].map(heading)),
    ...gaugeRows.map((row) => gaugeLine(row, columns)),
  ];
}

/** The gauges that the job is made of, the lightest first. */
function gaugeLine(row: number, columns: BlankColumns): Line {
  const all = besidePieces(columns.gauge);
  const lighter = `B${row - 1}`;
  const next =
    row === firstGaugeRow
      ? `IF(COUNT(${all})=0,"",MAX(${all}))`
      : `IF(${lighter}="","",IF(COUNTIF(${all},"<"&${lighter})=0,"",MAXIFS(${all},${all},"<"&${lighter})))`;
  const ofThisGauge = (...summed: readonly string[]) =>
    ifFilled(`B${row}`, summed.map((column) => `SUMIF(${all},B${row},${besidePieces(column)})`).join('+'));
  return line(
    figured(ifFilled(`B${row}`, '"Sheet metal"')),
    figured(next, gauge),
    figured(ofThisGauge(columns.sheets), count),
    figured(ofThisGauge(...columns.blanks), count),
    figured(ofThisGauge(columns.weight), pounds),
  );
}
