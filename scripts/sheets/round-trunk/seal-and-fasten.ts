import type { Cell } from '../../../src/workbook/document.ts';
import { count, figured, heading, wholeFeet, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { blanks, ifPiece, measured } from './piece-rows.ts';

export const sealAndFasten: Form = form({
  id: 'seal',
  name: 'Seal and fasten',
  says: 'Seal every metal joint and both seams of every tap before the wrap goes on; nothing is to be filled in here.',
  widths: [11, 9, 8, 10, 10, 10, 8, 8],
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
    line(...['To buy', 'Rolls', 'Boxes', 'Needed'].map(heading)),
    namedLine(
      'joint_tape_rolls',
      words('Joint tape'),
      figured('IF(D13=0,0,SEAL.ROLLS(D13,tape_roll,tape_waste))', count),
      null,
      figured('D10+E10', wholeFeet),
    ),
    namedLine(
      'facing_tape_rolls',
      words('Facing tape'),
      figured('IF(D14=0,0,SEAL.ROLLS(D14,facing_roll,tape_waste))', count),
      null,
      figured('F10', wholeFeet),
    ),
    {
      cells: [
        words('Screws'),
        null,
        figured('ROUNDUP(D15*(1+fastener_waste)/screw_box,0)', count),
        figured('G10', count),
      ],
      name: { is: 'screw_boxes', at: 2 },
    },
    {
      cells: [
        words('Staples'),
        null,
        figured('ROUNDUP(D16*(1+fastener_waste)/staple_box,0)', count),
        figured('H10', count),
      ],
      name: { is: 'staple_boxes', at: 2 },
    },
  ],
});

function pieceLine(row: number, blankRow: number): Line {
  const mark = `Pieces!A${row}`;
  const duct = `Pieces!B${row},Pieces!C${row},Pieces!D${row}`;
  const unless = (formula: string) => ifPiece(`A${row}`, formula);
  const tap = (trunk: string) => `SEAL.TAP("round",Pieces!H${row},,${trunk},Pieces!G${row})`;
  const taps = `IF(Pieces!G${row}=0,0,IF(Pieces!B${row}="round",${tap(`Pieces!C${row}`)},${tap('')}))`;
  return line(
    figured(ifPiece(mark, mark)),
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
