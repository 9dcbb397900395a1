import type { Inches } from '../../base/quantity.ts';
import type { DuctSection } from '../../trade/section.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { sayCut, sayInches } from '../say.ts';

const center = { x: 140, y: 80 };
const mostWide = 130;
const mostHigh = 124;
const leastMetal = 14;
const leastWrap = 4;

const strip = { left: 20, right: 340, top: 206, bottom: 242 };

/** A duct cut across with its wrap around it, and below it the wrap as it is cut, its lap at one end. */
export function wrappedDrawing(about: {
  readonly title: string;
  readonly describes: string;
  readonly section: DuctSection;
  readonly thickness: Inches;
  readonly cut: Inches;
  readonly lap: Inches;
  /** Stands beside the duct: what is left of the wrap there. */
  readonly beside: readonly string[];
}): Drawing {
  const { section, thickness, cut, lap } = about;
  const lapDrawn = lap > 0 ? Math.max(14, ((strip.right - strip.left) * lap) / cut) : 0;
  const lapLeft = strip.right - Math.min(lapDrawn, 200);
  return {
    title: about.title,
    describes: about.describes,
    height: 268,
    marks: [
      ...acrossMarks(section, thickness),
      ...about.beside.map(
        (text, index): Mark => ({
          type: 'label',
          at: { x: 222, y: 66 + 20 * index },
          text,
          anchor: 'start',
        }),
      ),
      box({ x: strip.left, y: strip.top }, { x: strip.right, y: strip.bottom }, 'wrap'),
      ...(lap > 0 ? [box({ x: lapLeft, y: strip.top }, { x: strip.right, y: strip.bottom }, 'lap')] : []),
      {
        type: 'measure',
        from: { x: strip.left, y: strip.top - 10 },
        to: { x: strip.right, y: strip.top - 10 },
        text: `cut ${sayCut(cut)}`,
      },
      {
        type: 'label',
        at: { x: strip.right, y: strip.bottom + 18 },
        text: lap > 0 ? `lap ${sayInches(lap)}` : 'no lap',
        anchor: 'end',
      },
    ],
  };
}

function acrossMarks(section: DuctSection, thickness: Inches): readonly Mark[] {
  if (section.shape === 'round') {
    const outer = mostHigh / 2;
    const inner = Math.max(
      leastMetal / 2,
      Math.min(outer - leastWrap, (outer * section.diameter) / (section.diameter + 2 * thickness)),
    );
    return [
      { type: 'ring', center, inner, outer, role: 'wrap' },
      { type: 'circle', center, radius: inner, role: 'metal' },
      widthMeasure(inner, center.y + outer, sayInches(section.diameter)),
    ];
  }
  const scale = Math.min(
    mostWide / (section.width + 2 * thickness),
    mostHigh / (section.depth + 2 * thickness),
  );
  const halfWide = Math.max(leastMetal, section.width * scale) / 2;
  const halfHigh = Math.max(leastMetal, section.depth * scale) / 2;
  const wrap = Math.min(Math.max(leastWrap, thickness * scale), mostWide / 2 - leastMetal);
  const depth = sayInches(section.depth);
  const fits = 2 * halfHigh > depth.length * 7;
  const x = center.x - halfWide - wrap - 12 - (fits ? 0 : depth.length * 6.2 + 7);
  return [
    { type: 'outline', closed: true, role: 'wrap', points: bentAround(halfWide, halfHigh, wrap) },
    box(
      { x: center.x - halfWide, y: center.y - halfHigh },
      { x: center.x + halfWide, y: center.y + halfHigh },
      'metal',
    ),
    widthMeasure(halfWide, center.y + halfHigh + wrap, sayInches(section.width)),
    {
      type: 'measure',
      from: { x, y: center.y + halfHigh },
      to: { x, y: center.y - halfHigh },
      text: depth,
    },
  ];
}

/** Below whatever reaches down to `bottom`. */
function widthMeasure(half: number, bottom: number, text: string): Mark {
  const y = bottom + 20;
  return { type: 'measure', from: { x: center.x - half, y }, to: { x: center.x + half, y }, text };
}

/** The outer face of wrap that is bent round four corners. */
function bentAround(halfWide: number, halfHigh: number, wrap: number): readonly Point[] {
  const corners = [
    { x: 1, y: 1, from: 0 },
    { x: -1, y: 1, from: 1 },
    { x: -1, y: -1, from: 2 },
    { x: 1, y: -1, from: 3 },
  ];
  return corners.flatMap(({ x, y, from }) =>
    [0, 1, 2, 3, 4].map((step) => {
      const turn = ((from + step / 4) * Math.PI) / 2;
      return {
        x: center.x + x * halfWide + wrap * Math.cos(turn),
        y: center.y + y * halfHigh + wrap * Math.sin(turn),
      };
    }),
  );
}

function box(from: Point, to: Point, role: 'metal' | 'wrap' | 'lap'): Mark {
  const points = [from, { x: to.x, y: from.y }, to, { x: from.x, y: to.y }];
  return { type: 'outline', closed: true, role, points };
}
