import { assertNever } from '../../base/outcome.ts';
import type { HangerMake } from '../../trade/hang/length.ts';
import type { DuctSection } from '../../trade/section.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { box, fitted } from '../seal/joint-drawing.ts';

const structure = 20;
const middle = 112;
const duct = { top: 70, size: 84 };
/** Wrap is drawn with one thickness, so that it shows on every duct. */
const wrapDrawn = 7;
const turned = 16;

/** A duct cut across in its hanger, under the structure, with what is known of it beside it. */
export function hangerDrawing(about: {
  readonly title: string;
  readonly describes: string;
  readonly section: DuctSection;
  readonly make: HangerMake;
  readonly isWrapped: boolean;
  readonly notes: readonly string[];
}): Drawing {
  const { title, describes, section, make, isWrapped, notes } = about;
  const [width, height] =
    section.shape === 'round' ? [duct.size, duct.size] : fitted(section.width, section.depth, duct.size);
  const gap = isWrapped ? wrapDrawn : 0;
  const center = { x: middle, y: duct.top + height / 2 };
  const half = { x: width / 2 + gap, y: height / 2 + gap };
  return {
    title,
    describes,
    height: 190,
    marks: [
      polyline([
        { x: 20, y: structure },
        { x: 204, y: structure },
      ]),
      ...(isWrapped ? [outerMark(section, center, half)] : []),
      metalMark(section, center, { x: width / 2, y: height / 2 }),
      ...strapMarks(make, center, half),
      ...notes.map(
        (text, index): Mark => ({ type: 'label', at: { x: 222, y: 62 + 20 * index }, text, anchor: 'start' }),
      ),
    ],
  };
}

function metalMark(section: DuctSection, center: Point, half: Point): Mark {
  if (section.shape === 'round') return { type: 'circle', center, radius: half.x, role: 'metal' };
  return box(
    { x: center.x - half.x, y: center.y - half.y },
    { x: center.x + half.x, y: center.y + half.y },
    'metal',
  );
}

function outerMark(section: DuctSection, center: Point, half: Point): Mark {
  if (section.shape === 'round') return { type: 'circle', center, radius: half.x, role: 'wrap' };
  return box(
    { x: center.x - half.x, y: center.y - half.y },
    { x: center.x + half.x, y: center.y + half.y },
    'wrap',
  );
}

function strapMarks(make: HangerMake, center: Point, half: Point): readonly Mark[] {
  const left = center.x - half.x;
  const right = center.x + half.x;
  const below = center.y + half.y;
  switch (make) {
    case 'half round':
      return [strap([{ x: left, y: structure }, ...lowerArc(center, half.x), { x: right, y: structure }])];
    case 'full round':
      return [
        strap([
          { x: center.x, y: structure },
          { x: center.x, y: center.y - half.x },
        ]),
        { type: 'circle', center, radius: half.x + 2, role: 'cut' },
      ];
    case 'pair':
      return [
        strap([
          { x: left, y: structure },
          { x: left, y: below },
          { x: Math.min(left + turned, center.x), y: below },
        ]),
        strap([
          { x: right, y: structure },
          { x: right, y: below },
          { x: Math.max(right - turned, center.x), y: below },
        ]),
      ];
    case 'cradle':
      return [
        strap([
          { x: left, y: structure },
          { x: left, y: below },
          { x: right, y: below },
          { x: right, y: structure },
        ]),
      ];
    case 'trapeze':
      return [
        ...[left - 6, right + 6].map((x) =>
          strap([
            { x, y: structure },
            { x, y: below + 12 },
          ]),
        ),
        box({ x: left - 14, y: below }, { x: right + 14, y: below + 6 }, 'metal'),
      ];
    default:
      return assertNever(make);
  }
}

/** From the left side of a circle, under it, to the right side. */
function lowerArc(center: Point, radius: number): readonly Point[] {
  return Array.from({ length: 25 }, (_, index) => {
    const angle = Math.PI - (Math.PI * index) / 24;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

function strap(points: readonly Point[]): Mark {
  return { type: 'outline', points, closed: false, role: 'cut' };
}

function polyline(points: readonly Point[]): Mark {
  return { type: 'outline', points, closed: false, role: 'guide' };
}
