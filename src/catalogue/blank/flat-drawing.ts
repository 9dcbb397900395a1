import { type Inches, inches } from '../../base/quantity.ts';
import type { Mark, Point } from '../drawing.ts';
import { sayInches } from '../say.ts';

/** A strip of a flat sheet, from left to right: a panel, or the half of a seam. */
export interface FlatStrip {
  readonly is: 'panel' | 'seam';
  readonly width: Inches;
  /** Stands under a seam strip; panels show their width alone. */
  readonly name: string;
}

export interface Flat {
  readonly strips: readonly FlatStrip[];
  /** What stands over the whole width: `blank 57 ¼″`. */
  readonly across: string;
  /** What stands beside the length; left out where the length does not matter. */
  readonly along?: string;
}

/** How much of the sheet's height a flat takes, its measures included. */
export const flatHeight = 160;

const left = 24;
const sheetHeight = 64;
const leastPanel = 60;
const seamWidth = 14;

/** A flat blank with its seam strips, bend lines and measures, below `top`. Proportions are eased, so that narrow strips
 *  can still be read; the figures are the measures. */
export function flatMarks(flat: Flat, top: number): readonly Mark[] {
  const strips = flat.strips.filter((strip) => strip.width > 0);
  const right = flat.along === undefined ? 336 : 236;
  const edges = edgesOf(strips, right - left);
  const y = top + 46;
  const bottom = y + sheetHeight;
  const marks: Mark[] = [
    outline(box(left, right, y, bottom), 'metal'),
    { type: 'measure', from: { x: left, y: y - 16 }, to: { x: right, y: y - 16 }, text: flat.across },
  ];
  for (const [index, strip] of strips.entries()) {
    const [from = left, to = right] = [edges[index], edges[index + 1]];
    if (strip.is === 'seam') marks.push(...seamMarks(strip, from, to, y, bottom, from === left));
    else if (strips.length > 1) marks.push(panelMeasure(strip, from, to, bottom));
    const next = strips[index + 1];
    if (strip.is === 'panel' && next?.is === 'panel') {
      marks.push({
        type: 'outline',
        points: [
          { x: to, y },
          { x: to, y: bottom },
        ],
        closed: false,
        role: 'bend',
      });
    }
  }
  if (flat.along !== undefined) {
    marks.push({
      type: 'measure',
      from: { x: right + 28, y },
      to: { x: right + 28, y: bottom },
      text: flat.along,
    });
  }
  return marks;
}

/** The seam split over both edges of a sheet, as a round pipe has it. */
export function withSeamOnEdges(net: Inches, seam: Inches): readonly FlatStrip[] {
  const half = inches(seam / 2);
  return [
    { is: 'seam', width: half, name: 'seam' },
    { is: 'panel', width: net, name: 'girth' },
    { is: 'seam', width: half, name: 'seam' },
  ];
}

function seamMarks(
  strip: FlatStrip,
  from: number,
  to: number,
  y: number,
  bottom: number,
  isFirst: boolean,
): readonly Mark[] {
  return [
    outline(box(from, to, y, bottom), 'seam'),
    {
      type: 'label',
      at: { x: isFirst ? from : to, y: bottom + 46 },
      text: `${strip.name} ${sayInches(strip.width)}`,
      anchor: isFirst ? 'start' : 'end',
    },
  ];
}

function panelMeasure(strip: FlatStrip, from: number, to: number, bottom: number): Mark {
  const y = bottom + 26;
  return { type: 'measure', from: { x: from, y }, to: { x: to, y }, text: sayInches(strip.width) };
}

function edgesOf(strips: readonly FlatStrip[], total: number): readonly number[] {
  const panels = strips.filter((strip) => strip.is === 'panel');
  const inPanels = panels.reduce((sum, strip) => sum + strip.width, 0);
  const spare = total - (strips.length - panels.length) * seamWidth - panels.length * leastPanel;
  const edges = [left];
  for (const strip of strips) {
    const drawn = strip.is === 'seam' ? seamWidth : leastPanel + (spare * strip.width) / inPanels;
    edges.push((edges.at(-1) ?? left) + drawn);
  }
  return edges;
}

function box(from: number, to: number, top: number, bottom: number): readonly Point[] {
  return [
    { x: from, y: top },
    { x: to, y: top },
    { x: to, y: bottom },
    { x: from, y: bottom },
  ];
}

function outline(points: readonly Point[], role: 'metal' | 'seam'): Mark {
  return { type: 'outline', points, closed: true, role };
}
