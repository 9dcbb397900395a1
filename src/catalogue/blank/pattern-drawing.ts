import { inches } from '../../base/quantity.ts';
import {
  blankSize,
  cutOutline,
  type Piece,
  type Spot,
  sideLength,
  stripsOf,
} from '../../trade/blank/piece.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { sayCount, sayCut, sayInches } from '../say.ts';

const [left, widest, tallest] = [20, 240, 150];
const lineHeight = 16;
/** So many letters of a note fit beside each other. */
const noteLetters = 52;

/** Every piece of a fitting, each true to shape and as large as the sheet allows, with its seams, bend lines, sizes and
 *  the lengths of its sides. `notes` stand above them, a line each, of at most 52 letters. */
export function patternDrawing(
  title: string,
  pieces: readonly Piece[],
  notes: readonly string[] = [],
): Drawing {
  const marks: Mark[] = [];
  notes.forEach((text, index) => {
    marks.push({ type: 'label', at: { x: left, y: 16 + index * lineHeight }, text, anchor: 'start' });
  });
  let top = notes.length * lineHeight;
  for (const piece of pieces) {
    const block = pieceMarks(piece, top);
    marks.push(...block.marks);
    top = block.bottom + 22;
  }
  const blanks = pieces.map((piece) => {
    const { width, length } = blankSize(piece);
    return `${piece.name}, ${sayCount(piece.pieces, 'piece')} from ${sayCut(width)} × ${sayCut(length)}`;
  });
  return {
    title,
    describes: `Flat patterns, each to its own scale: ${blanks.join('; ')}. Dashed lines are bends; the strips beyond the sides are seams.`,
    height: top,
    marks,
  };
}

function pieceMarks(piece: Piece, top: number): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const { width, length, corner } = blankSize(piece);
  const scale = Math.min(widest / width, tallest / length);
  const from = left + (widest - width * scale) / 2;
  const y = top + 54;
  const bottom = y + length * scale;
  const right = from + width * scale;
  const place = (at: Spot): Point => ({
    x: from + (at.across - corner.across) * scale,
    y: bottom - (at.up - corner.up) * scale,
  });
  const notes = notesOf(piece);
  return {
    bottom: bottom + 8 + notes.length * lineHeight,
    marks: [
      {
        type: 'label',
        at: { x: left, y: top + 16 },
        text: `Part ${piece.part}: ${piece.name}, ${piece.pieces} off`,
        anchor: 'start',
      },
      { type: 'measure', from: { x: from, y: y - 10 }, to: { x: right, y: y - 10 }, text: sayCut(width) },
      { type: 'measure', from: { x: right + 24, y }, to: { x: right + 24, y: bottom }, text: sayCut(length) },
      { type: 'outline', points: cutOutline(piece).map(place), closed: true, role: 'metal' },
      ...seamMarks(piece, place),
      ...piece.lines.map(
        (line): Mark => ({
          type: 'outline',
          points: [place(line.from), place(line.to)],
          closed: false,
          role: line.is === 'bend' ? 'bend' : 'guide',
        }),
      ),
      ...(piece.cutouts ?? []).map(
        (cutout): Mark => ({
          type: 'outline',
          points: cutout.outline.map(place),
          closed: true,
          role: 'cut',
        }),
      ),
      ...notes.map(
        (text, index): Mark => ({
          type: 'label',
          at: { x: left, y: bottom + 18 + index * lineHeight },
          text,
          anchor: 'start',
        }),
      ),
    ],
  };
}

function seamMarks(piece: Piece, place: (at: Spot) => Point): readonly Mark[] {
  return stripsOf(piece)
    .filter(({ side }) => side.added > 0)
    .map(({ side, outer }) => ({
      type: 'outline',
      points: [...side.spots, ...[...outer].reverse()].map(place),
      closed: true,
      role: 'seam',
    }));
}

/** The sides by number with their lengths, in as few lines as hold them. */
function notesOf(piece: Piece): readonly string[] {
  const notes = piece.sides
    .map((side, index) => ({ side, text: `${index + 1} ${side.is} ${sayInches(inches(sideLength(side)))}` }))
    .filter(({ side }) => sideLength(side) > 0)
    .map(({ text }) => text);
  const lines: string[] = [];
  for (const note of notes) {
    const longer = `${lines.at(-1)}, ${note}`;
    if (lines.length > 0 && longer.length <= noteLetters) lines.splice(-1, 1, longer);
    else lines.push(note);
  }
  return lines;
}
