import type { Inches } from '../../base/quantity.ts';
import type { DuctSection } from '../../trade/section.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { sayInches } from '../say.ts';

const middle = 80;

/** Two lengths of duct that meet, from the side, with the band of tape over their joint, and the duct cut across. */
export function jointDrawing(about: {
  readonly title: string;
  readonly describes: string;
  readonly section: DuctSection;
  readonly around: string;
}): Drawing {
  const { section } = about;
  return {
    title: about.title,
    describes: about.describes,
    height: 160,
    marks: [
      box({ x: 20, y: 40 }, { x: 116, y: 120 }, 'metal'),
      box({ x: 116, y: 40 }, { x: 212, y: 120 }, 'metal'),
      box({ x: 106, y: 36 }, { x: 126, y: 124 }, 'tape'),
      { type: 'label', at: { x: 116, y: 142 }, text: 'sealed all round', anchor: 'middle' },
      { type: 'label', at: { x: 116, y: 24 }, text: about.around, anchor: 'middle' },
      ...acrossMarks(section, { x: 288, y: middle }, 96),
    ],
  };
}

/** A duct cut across, with its sizes, within a square. */
export function acrossMarks(section: DuctSection, center: Point, size: number): readonly Mark[] {
  if (section.shape === 'round') {
    const radius = size / 2;
    return [
      { type: 'circle', center, radius, role: 'metal' },
      {
        type: 'measure',
        from: { x: center.x - radius, y: center.y },
        to: { x: center.x + radius, y: center.y },
        text: sayInches(section.diameter),
      },
    ];
  }
  const [width, height] = fitted(section.width, section.depth, size);
  const left = center.x - width / 2;
  const top = center.y - height / 2;
  return [
    box({ x: left, y: top }, { x: left + width, y: top + height }, 'metal'),
    {
      type: 'label',
      at: { x: center.x, y: top + height + 18 },
      text: `${sayInches(section.width)} × ${sayInches(section.depth)}`,
      anchor: 'middle',
    },
  ];
}

/** Two sides drawn in proportion; the shorter never too thin to see. */
export function fitted(width: Inches, depth: Inches, size: number): readonly [number, number] {
  const scale = size / Math.max(width, depth);
  return [Math.max(14, width * scale), Math.max(14, depth * scale)];
}

export function box(from: Point, to: Point, role: 'metal' | 'tape' | 'wrap' | 'lap'): Mark {
  return {
    type: 'outline',
    closed: true,
    role,
    points: [from, { x: to.x, y: from.y }, to, { x: from.x, y: to.y }],
  };
}
