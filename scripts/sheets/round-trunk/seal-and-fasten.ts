import type { Cell } from '../../../src/workbook/document.ts';
import { count, figured, heading, wholeFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { blanks, ifPiece, measured } from './piece-rows.ts';

export const sealAndFasten: Form = form({
  id: 'seal',
  name: 'Seal and fasten',
  says: 'Seal every metal joint and both seams of every tap before the wrap goes on; nothing is to be filled in here.',
  widths: [10, 7, 7, 9, 9, 9, 7, 6],
  lines: [
    line(
      ...['Piece', 'Sections', 'Joints', 'At joints', 'At taps', 'Facing', 'Screws', 'Staples'].map(heading),
    ),
    ...measured.map((row, index) => pieceLine(row, blanks[index] ?? 0)),
    line(
      words('Total'),
      total('B', count),
      total('C', count),
      total('D', wholeFeet),
      total('E', wholeFeet),
      total('F', wholeFeet),
      total('G', count),
      total('H', count),
    ),
    emptyLine,
    line(...['To buy', 'Order', 'Of', 'Needed'].map(heading)),
    orderLine('joint_tape_rolls', 'Joint tape', rolls('D13', 'tape_roll'), figured('D10+E10', wholeFeet)),
    orderLine('facing_tape_rolls', 'Facing tape', rolls('D14', 'facing_roll'), figured('F10', wholeFeet)),
    orderLine('screw_boxes', 'Screws', boxes('D15', 'screw_box'), figured('G10', count)),
    orderLine('staple_boxes', 'Staples', boxes('D16', 'staple_box'), figured('H10', count)),
  ],
});

function pieceLine(row: number, blankRow: number): Line {
  const duct = `Pieces!B${row},Pieces!C${row},Pieces!D${row}`;
  const unless = (formula: string) => ifPiece(`A${row}`, formula);
  const tap = (trunk: string) => `SEAL.TAP("round",Pieces!H${row},,${trunk},Pieces!G${row})`;
  const taps = `IF(Pieces!G${row}=0,0,IF(Pieces!B${row}="round",${tap(`Pieces!C${row}`)},${tap('')}))`;
  return line(
    figured(`Pieces!A${blankRow}`),
    figured(unless(`Pieces!C${blankRow}`), count),
    figured(unless(`B${row}-1+end_joints`), count),
    figured(unless(`SEAL.JOINT(${duct},C${row})`), wholeFeet),
    figured(unless(taps), wholeFeet),
    figured(unless(`SEAL.FACING(${duct},Pieces!E${row},Wrap!B${row},wraps,facing_ends)`), wholeFeet),
    figured(unless(`SEAL.SCREWS(${duct},screw_spacing,C${row})`), count),
    figured(unless(`SEAL.STAPLES(Pieces!E${row},staple_spacing)`), count),
  );
}

function total(column: string, more: Partial<Cell>): Cell {
  return figured(`SUM(${column}2:${column}9)`, more);
}

interface Bought {
  readonly order: string;
  readonly of: 'rolls' | 'boxes';
}

function rolls(needed: string, roll: string): Bought {
  return { order: `IF(${needed}=0,0,SEAL.ROLLS(${needed},${roll},tape_waste))`, of: 'rolls' };
}

function boxes(needed: string, box: string): Bought {
  return { order: `ROUNDUP(${needed}*(1+fastener_waste)/${box},0)`, of: 'boxes' };
}

function orderLine(name: string, label: string, { order, of }: Bought, needed: Cell): Line {
  return namedLine(name, words(label), figured(order, count), words(of), needed);
}
