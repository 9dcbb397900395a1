import { assertNever } from '../base/outcome.ts';
import { type Drawing, drawingWidth, type Mark, type Point } from './drawing.ts';
import { measureText } from './drawn-text.ts';

/** A piece of a picture as plain data: the page renders it, the command line and the bench copy write it out. */
export interface SvgNode {
  readonly tag: string;
  readonly attributes: { readonly [name: string]: string | number };
  readonly children: readonly (SvgNode | string)[];
}

/** Half the length of the slanted stroke across the end of a measure. */
const tick = 5 / Math.SQRT2;

/** A drawing as SVG. Looks follow from classes named by role, such as `drawing-metal`; there are no colors inside.
 *  It scales to any width, and its title and description are there for whoever cannot see it. */
export function drawSvg(drawing: Drawing): SvgNode {
  const viewBox = `0 0 ${drawingWidth} ${round(drawing.height)}`;
  return node('svg', { xmlns: 'http://www.w3.org/2000/svg', class: 'drawing', viewBox, role: 'img' }, [
    node('title', {}, [drawing.title]),
    node('desc', {}, [drawing.describes]),
    ...drawing.marks.map(drawMark),
  ]);
}

/** The same as text, escaped. */
export function svgText(drawing: Drawing): string {
  return written(drawSvg(drawing));
}

function drawMark(mark: Mark): SvgNode {
  switch (mark.type) {
    case 'outline': {
      const points = mark.points.map(({ x, y }) => `${round(x)},${round(y)}`).join(' ');
      return mark.closed
        ? node('polygon', { class: roleClass(mark), points })
        : node('polyline', { class: `${roleClass(mark)} drawing-open`, points });
    }
    case 'circle': {
      const { center, radius } = mark;
      return node('circle', {
        class: roleClass(mark),
        cx: round(center.x),
        cy: round(center.y),
        r: round(radius),
      });
    }
    case 'ring':
      return node('path', {
        class: roleClass(mark),
        'fill-rule': 'evenodd',
        d: around(mark.center, mark.outer) + around(mark.center, mark.inner),
      });
    case 'label':
      return drawText('drawing-label', mark);
    case 'measure':
      return drawMeasure(mark);
    default:
      return assertNever(mark);
  }
}

function drawMeasure(mark: Extract<Mark, { type: 'measure' }>): SvgNode {
  const { from, to } = mark;
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const across = { x: (along.x + along.y) * tick, y: (along.y - along.x) * tick };
  const tickAt = ({ x, y }: Point) =>
    line({ x: x - across.x, y: y - across.y }, { x: x + across.x, y: y + across.y }, 'drawing-tick');
  const text = measureText(mark);
  const turned: SvgNode['attributes'] = text.isUpward
    ? { transform: `rotate(-90 ${round(text.at.x)} ${round(text.at.y)})` }
    : {};
  return node('g', { class: 'drawing-measure' }, [
    line(from, to),
    tickAt(from),
    tickAt(to),
    drawText('drawing-figure', text, turned),
  ]);
}

function drawText(
  className: string,
  { at, text, anchor }: { readonly at: Point; readonly text: string; readonly anchor: string },
  more: SvgNode['attributes'] = {},
): SvgNode {
  return node('text', { class: className, x: round(at.x), y: round(at.y), 'text-anchor': anchor, ...more }, [
    text,
  ]);
}

function line(from: Point, to: Point, className?: string): SvgNode {
  const ends = { x1: round(from.x), y1: round(from.y), x2: round(to.x), y2: round(to.y) };
  return node('line', className === undefined ? ends : { class: className, ...ends });
}

function around({ x, y }: Point, radius: number): string {
  const [left, middle, r, width] = [x - radius, y, radius, 2 * radius].map(round);
  return `M${left},${middle}a${r},${r} 0 1 0 ${width},0a${r},${r} 0 1 0 -${width},0z`;
}

function roleClass({ role }: { readonly role: string }): string {
  return `drawing-${role}`;
}

/** A hundredth is finer than any screen shows, and keeps the text short. */
function round(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

function node(
  tag: string,
  attributes: SvgNode['attributes'],
  children: readonly (SvgNode | string)[] = [],
): SvgNode {
  return { tag, attributes, children };
}

function written(piece: SvgNode | string): string {
  if (typeof piece === 'string') return escaped(piece);
  const attributes = Object.entries(piece.attributes).map(
    ([name, value]) => ` ${name}="${escaped(String(value))}"`,
  );
  const inside = piece.children.map(written).join('');
  return `<${piece.tag}${attributes.join('')}${inside === '' ? '/>' : `>${inside}</${piece.tag}>`}`;
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? '');
}
