import { cornerRules } from '../../../src/trade/wrap/geometry.ts';
import type { Question } from '../../../src/workbook/document.ts';
import { check, count, feet, figured, given, heading, inches, share, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { allBlank, missing, wrapCount } from './piece-rows.ts';

const thisShop = 'this shop (invented)';
const practice = 'common practice, no source';
const memory = 'from memory, not verified';

const seamTypes = ['snap or button lock', 'other lock or weld'] as const;
/** Code of 2015 quoted in a code forum; quoted by a secondary source. */
const seamSource = 'code, quoted: seals the first';

const seam = { least: 0, most: 6, why: 'no seam or joint of shop duct takes more than a few inches' };
const aWaste = { least: 0, most: 1, why: 'more waste than stock is a slip of the percent sign' };
const aRoll = { least: 1, most: 2000, why: 'rolls are sold from a few feet to some hundred' };
const aBox = { least: 1, most: 100_000, why: 'a box holds at least one, and no box holds more' };

export const allowances: Form = form({
  id: 'allowances',
  name: 'Allowances',
  says: 'What this shop allows. Change a number here and every cut of this job follows; other jobs keep their own.',
  widths: [20, 14, 28, 20, 9, 8, 11, 11, 12, 16, 10, 11, 22],
  lines: [
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
    emptyLine,
    line(heading('Allowance'), null, heading('Where it comes from'), heading('Check')),
    length(
      'lap',
      'Lap of the wrap',
      2,
      'What does the facing lap over itself at the long seam?',
      { least: 0, most: 12, why: 'a lap takes a few inches of wrap' },
      'published stretch-out tables: 2 in',
      { least: 1, says: 'a lap under 1 in cannot be stapled (common practice)' },
    ),
    namedLine(
      'corners',
      words('Wrap at the corners'),
      given(
        {
          asks: 'How is wrap thought to go round the corners of a rectangular duct?',
          choices: [...cornerRules],
          usual: 'bent',
        },
        { content: 'bent' },
      ),
      words('geometry; rule of this shop'),
    ),
    length(
      'wrap_flange',
      'Flange within the roll',
      0,
      'How much of the roll width lies over the next piece and covers nothing of its own?',
      { least: 0, most: 12, why: 'a flange is a few inches wide' },
      'data sheet, inferred: none',
    ),
    allowance(
      'r_short',
      'R that may be missing',
      {
        asks: 'How far may the R that is left lie under the R that is needed? 0 for not at all.',
        least: 0,
        most: 1,
        why: 'more than 1 is another wrap',
        usual: 0,
      },
      { content: 0, unit: 'r', format: { type: 'decimal', places: 2 } },
      'rule of this shop: nothing',
    ),
    percent('wrap_waste', 'Waste of wrap', 0.05, practice),
    counted(
      'fraction',
      'Finest mark used',
      16,
      'To which part of an inch is a cut rounded up: 16 for sixteenths?',
      { least: 1, most: 64, why: 'tapes are marked in halves down to 64ths' },
      'most tapes: sixteenths',
    ),
    length(
      'section_length',
      'Longest section',
      46,
      'How long is a section at most, joint to joint?',
      { least: 6, most: 240, why: 'no section is made shorter than 6 in or longer than 20 ft' },
      '48 in sheet less the joints',
    ),
    length(
      'sheet_width',
      'Stock sheet, width',
      48,
      'How wide is a stock sheet?',
      { least: 12, most: 72, why: 'sheets for duct are 1 to 6 ft wide' },
      practice,
    ),
    length(
      'sheet_length',
      'Stock sheet, length',
      120,
      'How long is a stock sheet?',
      { least: 24, most: 240, why: 'sheets for duct are 2 to 20 ft long' },
      practice,
    ),
    length(
      'seam_round',
      'Seam of a round pipe',
      1,
      'How much does the lengthwise seam take in all, both edges together?',
      seam,
      'textbook of 1921: grooved, 1 in',
      { least: 0.25, says: 'without metal for it, a seam can only be butt-welded' },
    ),
    namedLine(
      'measured',
      words('Diameter is measured'),
      given(
        {
          asks: 'Where is the diameter of a pipe measured?',
          choices: ['inside', 'outside', 'ignored'],
          usual: 'inside',
        },
        { content: 'inside' },
      ),
      words(practice),
    ),
    chosen(
      'round_seam',
      'Kind of round seam',
      'other lock or weld',
      'Which kind is the long seam of a round pipe?',
      seamTypes,
      seamSource,
    ),
    length(
      'round_joint',
      'Crimp of a round pipe',
      1.5,
      'How much does the crimped end of each section take?',
      seam,
      'older code, quoted: 1 1/2 in',
      { least: 1, says: 'a joint that laps under 1 in holds few screws (common practice)' },
    ),
    namedLine(
      'made',
      words('Rectangular duct from'),
      given(
        {
          asks: 'Is a rectangular duct made of one blank or of two halves?',
          choices: ['one piece', 'two L halves'],
          usual: 'two L halves',
        },
        { content: 'two L halves' },
      ),
      words(practice),
    ),
    chosen(
      'square_seam',
      'Kind of rectangular seam',
      'other lock or weld',
      'Which kind are the long seams of a rectangular duct?',
      seamTypes,
      seamSource,
    ),
    length(
      'pocket',
      'Pocket of the seam',
      1,
      'How much does the pocket, the female half of the seam, take?',
      { ...seam, most: 3 },
      practice,
      { least: 0.5, says: 'a pocket under 1/2 in does not hold its flange (common practice)' },
    ),
    length(
      'flange',
      'Flange of the seam',
      0.25,
      'How much does the flange, the male half of the seam, take?',
      { ...seam, most: 3 },
      'how-to on the lock: 1/4 in',
      { least: 0.125, says: 'a flange under 1/8 in does not stay in its pocket (common practice)' },
    ),
    length(
      'joint_allowance',
      'Drive, at each end',
      0.5,
      'How much is turned back at each end of a rectangular section?',
      seam,
      'trade-school study cards: 1/2 in',
      { least: 0.25, says: 'without metal turned back, a drive has nothing to hold (common practice)' },
    ),
    counted(
      'end_joints',
      'Joints at the ends',
      1,
      'How many joints does a piece have besides those between its own sections?',
      { least: 0, most: 2, why: 'a piece has two ends' },
      thisShop,
    ),
    chosen(
      'sealed_with',
      'Metal is sealed with',
      'joint tape',
      'What closes the joints, seams and taps of the metal?',
      ['joint tape', 'mastic'],
      thisShop,
    ),
    length(
      'mastic_band',
      'Mastic, band',
      2,
      'How wide is the band of mastic over a joint?',
      { least: 0.5, most: 12, why: 'a band under 1/2 in does not hold, and over a foot is a coating' },
      'sealant sheets: 2 in',
    ),
    allowance(
      'mastic_film',
      'Mastic, wet film',
      {
        asks: 'How thick is the mastic when it is wet? 1/16 in is about 62 mil.',
        least: 5,
        most: 250,
        why: 'thinner does not close a joint, and thicker than 1/4 in runs',
        usual: 32,
      },
      { content: 32, unit: 'mil' },
      'sealant sheets: 20 and 32 mil',
    ),
    allowance(
      'mastic_pail',
      'Mastic in a pail',
      {
        asks: 'How much mastic is in one pail?',
        least: 0.05,
        most: 60,
        why: 'mastic is sold from tubs to drums',
        usual: 1,
      },
      { content: 1, unit: 'gal' },
      practice,
    ),
    namedLine(
      'tape_roll',
      words('Roll of joint tape'),
      given({ asks: 'How long is a roll of tape for metal joints?', ...aRoll }, { content: 180, ...feet }),
      words(`60 yd, ${memory}`),
    ),
    namedLine(
      'facing_roll',
      words('Roll of facing tape'),
      given({ asks: 'How long is a roll of tape for the facing?', ...aRoll }, { content: 150, ...feet }),
      words(`50 yd, ${memory}`),
    ),
    percent('tape_waste', 'Laps and waste of tape', 0.1, practice),
    counted(
      'facing_ends',
      'Closed ends of the facing',
      1,
      'How many ends of each piece get a ring of facing tape of their own?',
      { least: 0, most: 2, why: 'a piece has two ends' },
      thisShop,
    ),
    counted(
      'tap_rings',
      'Rings of facing tape at a tap',
      1,
      'How often does facing tape go round a branch where its wrap meets the trunk?',
      { least: 0, most: 3, why: 'one ring closes it, and more than three is a slip' },
      practice,
      { least: 1, says: 'an open ring lets the wrap get wet; close the facing at every tap' },
    ),
    counted(
      'tap_joints',
      'Screwed rings at a tap',
      2,
      'How many rings of screws does a tap get: one at the trunk, one at its first joint?',
      { least: 0, most: 2, why: 'a tap has two seams' },
      practice,
      { least: 1, says: 'a tap without screws is held by nothing but its seal' },
    ),
    length(
      'tap_screw_spacing',
      'Screws at a tap, at most apart',
      6,
      'How far apart may screws be round a tap?',
      { least: 1, most: 36, why: 'over 3 ft apart they hold nothing' },
      practice,
    ),
    length(
      'screw_spacing',
      'Screws, at most apart',
      12,
      'How far apart may screws be at a joint?',
      { least: 1, most: 36, why: 'over 3 ft apart they hold nothing' },
      'common practice; code: 3 at least',
    ),
    counted('screw_box', 'Screws in a box', 500, 'How many screws are in a box?', aBox, thisShop),
    length(
      'staple_spacing',
      'Staples, apart',
      6,
      'How far apart are the staples in the long seam of the wrap?',
      { least: 0.5, most: 24, why: 'staples stand from half an inch to two feet apart' },
      'maker guide specification: 6 in',
    ),
    counted('staple_box', 'Staples in a box', 5000, 'How many staples are in a box?', aBox, thisShop),
    length(
      'pins_from',
      'Pins from this width',
      24,
      'From which width of the underside does wrap get pins?',
      { least: 2, most: 120, why: 'it is a width of duct' },
      'maker guide specification: 24 in',
    ),
    length(
      'pin_spacing',
      'Pins, at most apart',
      18,
      'How far apart may pins be, either way?',
      { least: 3, most: 36, why: 'closer they tear the facing, and further apart the wrap sags' },
      'maker guide specification: 18 in',
    ),
    counted('pin_box', 'Pins in a box', 500, 'How many pins with clips are in a box?', aBox, thisShop),
    percent('fastener_waste', 'Waste of fasteners', 0.05, thisShop),
  ],
  blocks: {
    wraps: `A1:L${wrapCount + 1}`,
    wrap_names: `A1:A${wrapCount + 1}`,
    wrap_lines: `D1:D${wrapCount + 1}`,
    wrap_ratings: `G1:G${wrapCount + 1}`,
  },
});

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

type Asked = Omit<Question, 'asks' | 'usual'>;

/** Below `least` the number is allowed, and its check says what is odd about it. */
interface Doubt {
  readonly least: number;
  readonly says: string;
}

function length(
  name: string,
  label: string,
  content: number,
  asks: string,
  limits: Asked,
  source: string,
  doubt?: Doubt,
): Line {
  return allowance(name, label, { asks, ...limits, usual: content }, { content, ...inches }, source, doubt);
}

function counted(
  name: string,
  label: string,
  content: number,
  asks: string,
  limits: Asked,
  source: string,
  doubt?: Doubt,
): Line {
  return allowance(name, label, { asks, ...limits, usual: content }, { content, ...count }, source, doubt);
}

function percent(name: string, label: string, content: number, source: string): Line {
  const asks = 'What share is added for laps, ends and drop?';
  return allowance(name, label, { asks, ...aWaste, usual: content }, { content, ...share }, source, {
    least: 0.01,
    says: 'nothing is left for laps, ends and drop',
  });
}

function chosen(
  name: string,
  label: string,
  content: string,
  asks: string,
  choices: readonly string[],
  source: string,
): Line {
  return allowance(name, label, { asks, choices, usual: content }, { content }, source);
}

function allowance(
  name: string,
  label: string,
  question: Question,
  more: Parameters<typeof given>[1],
  source: string,
  doubt?: Doubt,
): Line {
  const checked = doubt ? [check(`IF(${name}<${doubt.least},"look: ${doubt.says}","holds")`)] : [];
  return namedLine(name, words(label), given(question, more), words(source), ...checked);
}
