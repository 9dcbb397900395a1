import { check, feet, figured, given, heading, inches } from '../cells.ts';
import { type Line, line } from '../form.ts';
import { allBlank, missing } from '../sentences.ts';

/** Room for so many wraps; they stand at the top of Allowances, under their heading in row 1. */
export const wrapCount = 8;

/** The names by which formulas know the wraps. */
export const wrapBlocks = {
  wraps: `A1:L${wrapCount + 1}`,
  wrap_names: `A1:A${wrapCount + 1}`,
  wrap_lines: `D1:D${wrapCount + 1}`,
  wrap_ratings: `G1:G${wrapCount + 1}`,
} as const;

interface PublishedWrap {
  readonly thickness: number;
  readonly installed: number;
  readonly labelR: number;
  readonly installedR: number;
  readonly shop: readonly [round: number, square: number, rectangular: number] | null;
  readonly rollLength: number;
}

/** Thicknesses and R from the published data sheet of 0.75 lb/cu ft duct wrap; names and shop figures are invented.
 *  Without a wrap: a line for one that the shop tries. */
function wrapLine(row: number, name: string | null, figures?: PublishedWrap): Line {
  const open = name === null ? { mayBeBlank: true } : {};
  const [round = null, square = null, rectangular = null] = figures?.shop ?? [];
  const shop = (shape: string, content: number | null) =>
    given(
      {
        asks: `What does this shop add to the bare perimeter of a ${shape} duct, with a lap of 2 in?`,
        least: 2,
        most: 60,
        why: 'the lap alone takes 2 in',
        mayBeBlank: true,
      },
      { content, ...inches },
    );
  const r = (asks: string, content: number | null) =>
    given(
      { asks, least: 0.5, most: 80, why: 'no duct wrap has a lower or higher R', ...open },
      { content, unit: 'r' },
    );
  const thick = (asks: string, least: number, content: number | null) =>
    given(
      { asks, least, most: 12, why: 'duct wrap is from 1/4 in to a foot thick', ...open },
      { content, unit: 'in' },
    );
  return line(
    given({ asks: 'What is this wrap called in the shop?', ...open }, { content: name }),
    thick('How thick is it out of the package?', 0.25, figures?.thickness ?? null),
    given(
      { asks: 'Where do its thickness and R come from?', mayBeBlank: true },
      {
        content: figures
          ? `data sheet; ${figures.shop ? 'shop figures invented' : 'no shop figures yet'}`
          : null,
        ...(figures
          ? {
              note:
                'Thicknesses and both R figures: published data sheet of 0.75 lb/cu ft duct wrap, 75 °F mean, 25 % squeeze (read at source). ' +
                'Roll width: duct-wrap data sheet. Roll length: scanned size table, its column order inferred; it has no row for 2.2 in, so 75 ft is taken from its neighbours there. The name and the three shop figures are of this shop, which is invented.',
            }
          : {}),
      },
    ),
    check(lineCheck(row)),
    thick('At what thickness on the duct is its installed R given?', 0.1, figures?.installed ?? null),
    r('What R has it out of the package?', figures?.labelR ?? null),
    r('What R has it at the installed thickness?', figures?.installedR ?? null),
    shop('round', round),
    shop('square', square),
    shop('rectangular', rectangular),
    given(
      {
        asks: 'How wide is the roll?',
        least: 6,
        most: 144,
        why: 'rolls are half a foot to 12 ft wide',
        ...open,
      },
      { content: figures ? 48 : null, ...inches },
    ),
    given(
      { asks: 'How long is the roll?', least: 1, most: 1000, why: 'rolls are 1 to 1,000 ft long', ...open },
      { content: figures?.rollLength ?? null, ...feet },
    ),
    figured(waysOf(row)),
  );
}

/** A wrap without a name, or with a gap in its line, is no wrap for any piece yet. */
function lineCheck(row: number): string {
  const needed = [
    ['B', 'thickness'],
    ['E', 'installed'],
    ['F', 'label R'],
    ['G', 'installed R'],
    ['K', 'roll width'],
    ['L', 'roll length'],
  ] as const;
  const absent = missing(
    [`A${row}=""`, 'name'],
    ...needed.map(([column, name]) => [`${column}${row}=""`, name] as const),
  );
  const untouched = allBlank(row, ['A', 'B', 'E', 'F', 'G', 'H', 'I', 'J', 'K', 'L']);
  return (
    `IF(${untouched},"",IF(${absent}<>"","look: no piece can get this wrap; still to fill in: "&${absent},` +
    `IF(COUNTIF(A2:A${wrapCount + 1},A${row})>1,"look: no piece can get this wrap; another line has its name",` +
    `IF(OR(E${row}>B${row},G${row}>F${row}),"look: no piece can get this wrap; installed it must be thinner and its R lower","holds"))))`
  );
}

/** The published table and the shop's own figures do not reach every wrap; geometry does. */
function waysOf(row: number): string {
  const isPublished = `ISERROR(WRAP.STRETCHOUT("round",12,,A${row},wraps,"published"))`;
  return `IF(D${row}<>"holds","",TEXTJOIN(", ",TRUE,IF(${isPublished},"","published"),"geometry",IF(H${row}="","","shop")))`;
}

export const wrapTable: readonly Line[] = [
  line(
    ...[
      'Wrap',
      'Thickness',
      'Source',
      'Line',
      'Installed',
      'Label R',
      'Installed R',
      'Shop round',
      'Shop square',
      'Shop rectangular',
      'Roll width',
      'Roll length',
      'Can be worked out by',
    ].map(heading),
  ),
  wrapLine(2, 'R-4 wrap', {
    thickness: 1.5,
    installed: 1.125,
    labelR: 5.1,
    installedR: 4.2,
    shop: [10, 8.5, 8],
    rollLength: 100,
  }),
  wrapLine(3, 'R-5 wrap', {
    thickness: 2,
    installed: 1.5,
    labelR: 6.8,
    installedR: 5.6,
    shop: [12.5, 10.5, 10],
    rollLength: 75,
  }),
  wrapLine(4, 'R-6 wrap', {
    thickness: 2.2,
    installed: 1.625,
    labelR: 7.4,
    installedR: 6,
    shop: [13.5, 11.5, 11],
    rollLength: 75,
  }),
  wrapLine(5, 'R-8 wrap', {
    thickness: 3,
    installed: 2.25,
    labelR: 10,
    installedR: 8.3,
    shop: [17.5, 15, 15],
    rollLength: 50,
  }),
  wrapLine(6, 'R-11 wrap', {
    thickness: 4,
    installed: 3,
    labelR: 13.25,
    installedR: 11,
    shop: null,
    rollLength: 50,
  }),
  wrapLine(7, null),
  wrapLine(8, null),
  wrapLine(9, null),
];
