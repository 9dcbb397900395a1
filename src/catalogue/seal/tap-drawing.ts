import type { Inches } from '../../base/quantity.ts';
import type { TrunkFace } from '../../trade/seal/tap.ts';
import type { DuctSection } from '../../trade/section.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { figure, sayInches } from '../say.ts';
import { saySection } from '../section.ts';
import { box } from './joint-drawing.ts';

const axis = 110;
const roof = 104;

/** A branch on its trunk, seen along the trunk, with both of its seams. */
export function tapDrawing(
  section: DuctSection,
  trunk: TrunkFace,
  atTrunk: Inches,
  atBranch: Inches,
): Drawing {
  const across = section.shape === 'round' ? section.diameter : section.depth;
  const radius = 64;
  const half = trunk.type === 'flat' ? 36 : Math.max(9, (radius * across) / trunk.diameter);
  const foot = (x: number) =>
    trunk.type === 'flat' ? roof : roof + radius - Math.sqrt(Math.max(0, radius ** 2 - x ** 2));
  const seam = Array.from({ length: 25 }, (_, index): Point => {
    const x = -half + (index / 24) * half * 2;
    return { x: axis + x, y: foot(x) };
  });
  const trunkMarks: readonly Mark[] =
    trunk.type === 'flat'
      ? [box({ x: 24, y: roof }, { x: 196, y: roof + 76 }, 'metal')]
      : [{ type: 'circle', center: { x: axis, y: roof + radius }, radius, role: 'metal' }];
  const branch: Mark = {
    type: 'outline',
    closed: true,
    role: 'metal',
    points: [{ x: axis - half, y: 24 }, { x: axis + half, y: 24 }, ...[...seam].reverse()],
  };
  return {
    title: 'The two seams of a tap',
    describes: `A tap of ${saySection(section)}: ${figure(atTrunk, 2)} in where it meets the trunk and ${figure(atBranch, 2)} in round its first joint.`,
    height: trunk.type === 'flat' ? 200 : 246,
    marks: [
      ...trunkMarks,
      branch,
      { type: 'outline', closed: false, role: 'tape', points: seam },
      {
        type: 'outline',
        closed: false,
        role: 'tape',
        points: [
          { x: axis - half, y: 44 },
          { x: axis + half, y: 44 },
        ],
      },
      { type: 'label', at: { x: 204, y: 48 }, text: `joint ${figure(atBranch, 2)} in`, anchor: 'start' },
      { type: 'label', at: { x: 204, y: 92 }, text: `at trunk ${figure(atTrunk, 2)} in`, anchor: 'start' },
      {
        type: 'label',
        at: { x: axis, y: trunk.type === 'flat' ? 146 : 182 },
        text: trunk.type === 'flat' ? 'flat side' : `trunk ${sayInches(trunk.diameter)}`,
        anchor: 'middle',
      },
      { type: 'label', at: { x: axis, y: 16 }, text: saySection(section), anchor: 'middle' },
    ],
  };
}
