import { assertNever } from '../../base/outcome.ts';
import type { AirSection } from '../../trade/air/section.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { sayInches } from '../say.ts';

const tallest = 96;
/** Between a duct and the measure of its depth: room for a text that runs upward. */
const gap = 22;

/** The section of one duct with its inside sizes, and what is known of the air beside it. */
export function sectionDrawing(
  section: AirSection,
  about: Pick<Drawing, 'title' | 'describes'> & { readonly notes: readonly string[] },
): Drawing {
  const { title, describes, notes } = about;
  const center = { x: 88, y: 74 };
  return {
    title,
    describes,
    height: 166,
    marks: [
      ...sectionMarks(section, center, scaleFor([section], 124)),
      ...notes.map(
        (text, line): Mark => ({
          type: 'label',
          at: { x: 238, y: center.y - 8 * (notes.length - 1) + 18 * line },
          text,
          anchor: 'start',
        }),
      ),
    ],
  };
}

/** Two ducts side by side, drawn to one scale. */
export function pairDrawing(
  one: AirSection,
  other: AirSection,
  about: Pick<Drawing, 'title' | 'describes'>,
): Drawing {
  const scale = scaleFor([one, other], 92);
  return {
    ...about,
    height: 166,
    marks: [
      ...sectionMarks(one, { x: 72, y: 74 }, scale),
      ...sectionMarks(other, { x: other.shape === 'round' ? 290 : 222, y: 74 }, scale),
    ],
  };
}

function spread(section: AirSection): { readonly across: number; readonly up: number } {
  switch (section.shape) {
    case 'round':
      return { across: section.diameter, up: section.diameter };
    case 'rectangular':
      return { across: section.width, up: section.depth };
    case 'flat oval':
      return { across: section.major, up: section.minor };
    default:
      return assertNever(section);
  }
}

function scaleFor(sections: readonly AirSection[], room: number): number {
  const sizes = sections.map(spread);
  const across = Math.max(...sizes.map((one) => one.across));
  const up = Math.max(...sizes.map((one) => one.up));
  return Math.min(room / across, tallest / up);
}

function sectionMarks(section: AirSection, center: Point, scale: number): readonly Mark[] {
  const { across, up } = spread(section);
  const [x, y] = [(across * scale) / 2, (up * scale) / 2];
  const below = Math.max(center.y + y + 34, 118);
  const width: Mark = {
    type: 'measure',
    from: { x: center.x - x, y: below },
    to: { x: center.x + x, y: below },
    text: sayInches(section.shape === 'round' ? section.diameter : widthOf(section)),
  };
  if (section.shape === 'round') {
    return [{ type: 'circle', center, radius: x, role: 'metal' }, width];
  }
  const depth: Mark = {
    type: 'measure',
    from: { x: center.x + x + gap, y: center.y - y },
    to: { x: center.x + x + gap, y: center.y + y },
    text: sayInches(section.shape === 'rectangular' ? section.depth : section.minor),
  };
  const points = section.shape === 'rectangular' ? corners(center, x, y) : ovalPoints(center, x, y);
  return [{ type: 'outline', points, closed: true, role: 'metal' }, width, depth];
}

function widthOf(section: Exclude<AirSection, { readonly shape: 'round' }>) {
  return section.shape === 'rectangular' ? section.width : section.major;
}

function corners({ x, y }: Point, halfWidth: number, halfDepth: number): readonly Point[] {
  return [
    { x: x - halfWidth, y: y - halfDepth },
    { x: x + halfWidth, y: y - halfDepth },
    { x: x + halfWidth, y: y + halfDepth },
    { x: x - halfWidth, y: y + halfDepth },
  ];
}

/** Two half circles joined by straight sides, the right one first. */
function ovalPoints({ x, y }: Point, halfWidth: number, radius: number): readonly Point[] {
  const straight = halfWidth - radius;
  const turns = Array.from({ length: 25 }, (_, index) => (Math.PI * index) / 24 - Math.PI / 2);
  const right = turns.map((turn) => ({
    x: x + straight + radius * Math.cos(turn),
    y: y + radius * Math.sin(turn),
  }));
  return [...right, ...right.map((point) => ({ x: 2 * x - point.x, y: 2 * y - point.y }))];
}
