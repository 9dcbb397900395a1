import type { Sheet, Workbook, WorkedExample } from '../../src/workbook/document.ts';

/** What the invented shop pays, by the words of its Allowances sheet. */
const paid: { readonly [item: string]: number } = {
  'Sheet metal, 26 ga': 61.5,
  'Sheet metal, 24 ga': 74,
  'Joint tape': 28.4,
  Mastic: 33,
  'Facing tape': 24.9,
  Screws: 17.5,
  Staples: 14.25,
  'Pins with clips': 39,
  'End caps': 6.75,
  'Tap collars': 5.2,
  'R-6 wrap': 96,
  'R-8 wrap': 118,
};

/** The prices by their places on the Allowances sheet of a workbook that has them. */
export function demoPrices(job: Workbook): WorkedExample['given'] {
  const sheet = job.sheets.find((one) => one.id === 'allowances');
  const prices = job.names.prices;
  if (!sheet || !prices) throw new Error('The template has no prices.');
  const given: Record<string, number> = {};
  for (let row = prices.range.from.row + 1; row <= prices.range.to.row; row += 1) {
    const item = itemAt(sheet, row);
    const price = item === null ? undefined : paid[item];
    if (price !== undefined) given[`${sheet.name}!B${row + 1}`] = price;
  }
  return given;
}

/** The words of a line of prices; a wrap has those of its own line at the top of the sheet. */
function itemAt(sheet: Sheet, row: number): string | null {
  const content = sheet.rows[row]?.[0]?.content ?? null;
  if (typeof content === 'string') return content;
  const own = content && typeof content === 'object' ? /IF\(A(\d+)=/.exec(content.formula)?.[1] : undefined;
  const name = own === undefined ? null : sheet.rows[Number(own) - 1]?.[0]?.content;
  return typeof name === 'string' ? name : null;
}
