import type { Cell } from '../../../src/workbook/document.ts';
import { count, figured, gallons, heading, wholeFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { ifFilled } from '../sentences.ts';
import { wholeUp } from '../whole.ts';
import {
  type BlankColumns,
  besidePieces,
  pieceRows,
  rectangular,
  type ShapeOf,
  totalRow,
} from './piece-rows.ts';

const firstOrderRow = totalRow + 3;
const toSeal = `(D${totalRow}+E${totalRow}+F${totalRow})`;

/** What seals and fastens each piece of Pieces, and how its shape and its blanks are written. */
interface Trunk {
  readonly shapeOf: ShapeOf;
  readonly blanks: BlankColumns;
}

export function sealSheet(trunk: Trunk): Form {
  return form({
    id: 'seal',
    name: 'Seal and fasten',
    says: 'Seal every metal joint and both seams of every tap before the wrap goes on; nothing is to be filled in here.',
    widths: [10, 8, 6, 9, 10, 8, 8, 7, 7, 6],
    lines: [
      line(
        ...[
          'Piece',
          'Sections',
          'Joints',
          'At joints',
          'Long seams',
          'At taps',
          'Facing',
          'Screws',
          'Staples',
          'Pins',
        ].map(heading),
      ),
      ...pieceRows.map((row) => pieceLine(row, trunk)),
      line(
        words('Total'),
        total('B', count),
        total('C', count),
        total('D', wholeFeet),
        total('E', wholeFeet),
        total('F', wholeFeet),
        total('G', wholeFeet),
        total('H', count),
        total('I', count),
        total('J', count),
      ),
      emptyLine,
      line(...['To buy', 'Order', 'Unit', 'Needed'].map(heading)),
      orderLine(
        'joint_tape_rolls',
        'Joint tape',
        ifWith('joint tape', rolls('tape_roll')),
        'rolls',
        figured(ifWith('joint tape', toSeal), wholeFeet),
      ),
      orderLine(
        'mastic_pails',
        'Mastic',
        ifWith('mastic', `SEAL.PAILS(D${firstOrderRow + 1},mastic_pail)`),
        'pails',
        figured(ifWith('mastic', `SEAL.MASTIC(${toSeal},mastic_band,mastic_film,tape_waste)`), gallons),
      ),
      orderLine(
        'facing_tape_rolls',
        'Facing tape',
        rolls('facing_roll', 2),
        'rolls',
        figured(`G${totalRow}`, wholeFeet),
      ),
      orderLine('screw_boxes', 'Screws', boxes('screw_box', 3), 'boxes', figured(`H${totalRow}`, count)),
      orderLine('staple_boxes', 'Staples', boxes('staple_box', 4), 'boxes', figured(`I${totalRow}`, count)),
      orderLine('pin_boxes', 'Pins, clips', boxes('pin_box', 5), 'boxes', figured(`J${totalRow}`, count)),
      orderLine(
        'end_caps',
        'End caps',
        `D${firstOrderRow + 6}`,
        'caps',
        figured(`SUM(Pieces!${besidePieces('G')})`, count),
      ),
    ],
  });
}

function pieceLine(row: number, { shapeOf, blanks }: Trunk): Line {
  const shape = shapeOf(row);
  const [width, length] = ['C', 'E'].map((column) => `Pieces!${column}${row}`);
  const isAlwaysRectangular = shape === rectangular;
  const byShape = (ifRound: string, otherwise: string) =>
    isAlwaysRectangular ? otherwise : `IF(${shape}="round",${ifRound},${otherwise})`;
  const sections = `Blanks!${blanks.sections}${row}`;
  const all = blanks.blanks.map((column) => `Blanks!${column}${row}`);
  const blankCount = all.length === 1 ? all[0] : `SUM(${all.join(',')})`;
  const duct = `${shape},${width},Pieces!D${row}`;
  const unless = (formula: string) => ifFilled(`A${row}`, formula);
  const seamType = byShape('round_seam', 'square_seam');
  const isSealed = `OR(${seamType}="snap or button lock",static_pressure>=2)`;
  return line(
    figured(`Blanks!A${row}`),
    figured(unless(sections), count),
    figured(unless(`B${row}-1+end_joints+Pieces!G${row}`), count),
    figured(unless(`IF(C${row}=0,0,SEAL.JOINT(${duct},C${row}))`), wholeFeet),
    figured(unless(`IF(${isSealed},${length}*${blankCount}/${sections},0)`), wholeFeet),
    figured(unless(`SUMIF(tapped,A${row},tap_seams)`), wholeFeet),
    figured(
      unless(
        `IF(Wrap!D${row}="","",SEAL.FACING(${duct},${length},Wrap!B${row},wraps,facing_ends)+SUMIF(tapped,A${row},tap_facing))`,
      ),
      wholeFeet,
    ),
    figured(
      unless(`IF(C${row}=0,0,SEAL.SCREWS(${duct},screw_spacing,C${row}))+SUMIF(tapped,A${row},tap_screws)`),
      count,
    ),
    figured(unless(`SEAL.STAPLES(${length},staple_spacing)`), count),
    figured(unless(byShape('0', `WRAP.PINS(${width},${length},pin_spacing,pins_from)`)), count),
  );
}

function total(column: string, more: Partial<Cell>): Cell {
  return figured(`SUM(${besidePieces(column)})`, more);
}

/** What is bought for the metal depends on what the shop seals with. */
function ifWith(material: 'joint tape' | 'mastic', formula: string): string {
  return `IF(sealed_with="${material}",${formula},0)`;
}

function rolls(roll: string, place = 0): string {
  const needed = `D${firstOrderRow + place}`;
  return `IF(${needed}=0,0,SEAL.ROLLS(${needed},${roll},tape_waste))`;
}

function boxes(box: string, place: number): string {
  return wholeUp(`D${firstOrderRow + place}*(1+fastener_waste)/${box}`);
}

function orderLine(name: string, label: string, order: string, unit: string, needed: Cell): Line {
  return namedLine(name, words(label), figured(order, count), words(unit), needed);
}
