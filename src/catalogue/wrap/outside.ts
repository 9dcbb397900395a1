import { done } from '../../base/outcome.ts';
import { wrappedSize } from '../../trade/wrap/outside.ts';
import { choice, optional } from '../argument.ts';
import { defineFunction } from '../call.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { figure, sayInches } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import { exampleWraps } from '../wraps.ts';
import { installedOf, wrapArguments } from './arguments.ts';

/** Size of a duct over its wrap. Inches. Faults: those of a section, `installed_over_thickness`. Source: geometry. */
export const wrapOutside = defineFunction({
  name: 'WRAP.OUTSIDE',
  says: 'How large a duct is over its wrap, to see whether it fits between joists or in a chase.',
  words: ['outside size', 'wrapped size', 'does it fit', 'clearance', 'joist bay', 'chase', 'overall size'],
  gives: { label: 'Over the wrap', unit: 'in' },
  arguments: {
    ...sectionArguments,
    ...wrapArguments,
    across: optional(
      choice(['width', 'depth'], {
        says: 'which size of a rectangular duct; a round one has its diameter only',
      }),
      'width',
      'the width stands first; ask again for the depth',
    ),
    thickness: optional(
      choice(['installed', 'package'], {
        says: 'the wrap at its installed thickness, or as thick as out of the package, where nothing squeezes it',
      }),
      'installed',
      'wrap that is cut by its table lies at its installed thickness',
    ),
  },
  formula: [
    String.raw`\text{over the wrap} = \text{width} + 2 t \text{ or } \text{depth} + 2 t, \quad t = \text{installed or package thickness}`,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const row = installedOf(given.wrap, given.wraps);
    if (!row.ok) return row;
    const thick = given.thickness === 'installed' ? row.value.installed : row.value.thickness;
    const size = wrappedSize(section.value, thick);
    const isDepth = given.across === 'depth' && size.depth !== null;
    return done({
      section: section.value,
      thick,
      size,
      isDepth,
      asked: isDepth && size.depth !== null ? size.depth : size.width,
    });
  },
  result: ({ asked }) => asked,
  steps: ({ section, thick, size, isDepth, asked }, { thickness }) => [
    {
      label: thickness === 'installed' ? 'Wrap on the duct' : 'Wrap out of the package',
      sum: '',
      value: thick,
      unit: 'in',
    },
    {
      label: 'Around the facing',
      sum: `${figure(size.perimeter)} + 2π × ${figure(thick)}`,
      value: size.around,
      unit: 'in',
      source: 'geometry',
    },
    {
      label:
        section.shape === 'round' ? 'Diameter over the wrap' : `${isDepth ? 'Depth' : 'Width'} over the wrap`,
      sum: `${figure(asked - 2 * thick)} + 2 × ${figure(thick)}`,
      value: asked,
      unit: 'in',
      source: 'geometry',
    },
  ],
  drawing: ({ section, thick, size }) =>
    outsideDrawing(
      `${saySection(section)} duct in ${sayInches(thick)} of wrap is ${sayInches(size.width)}${size.depth === null ? '' : ` × ${sayInches(size.depth)}`} outside.`,
      section.shape === 'round' ? [section.diameter, section.diameter] : [section.width, section.depth],
      [size.width, size.depth ?? size.width],
      section.shape === 'round',
    ),
  cautions: (_, { thickness }) => [
    {
      level: 'care',
      sentence:
        'Keep 3 in clear of recessed lights and other heat sources, and the listed distance from flues. Your local code decides.',
      source: 'heat-source-clearance',
    },
    {
      level: 'look',
      sentence: `Joints, stiffeners, pins and the lap stand out further than this.${thickness === 'installed' ? ' Wrap that a joist squeezes has less R there, and sweats there first.' : ''}`,
      source: 'safety-from-memory',
    },
  ],
  sources: ['geometry'],
  examples: [
    {
      says: '16 in pipe in 3 in wrap, 2 1/4 in on the duct',
      given: { shape: 'round', width: 16, wrap: 'R-8 wrap', wraps: exampleWraps },
      gives: 20.5,
      source: 'geometry',
    },
    {
      says: 'the depth of a 20 × 8 in duct in 2 in wrap that nothing squeezes',
      given: {
        shape: 'rectangular',
        width: 20,
        depth: 8,
        wrap: 'R-5 wrap',
        wraps: exampleWraps,
        across: 'depth',
        thickness: 'package',
      },
      gives: 12,
      source: 'geometry',
    },
  ],
});

type Size = readonly [
  width: ReturnType<typeof wrappedSize>['width'],
  depth: ReturnType<typeof wrappedSize>['width'],
];

/** The duct in its wrap, measured over the wrap. */
function outsideDrawing(describes: string, bare: Size, outer: Size, isRound: boolean): Drawing {
  const center = { x: 190, y: 92 };
  const scale = Math.min(240 / outer[0], 110 / outer[1]);
  const box = (size: Size, role: 'wrap' | 'metal'): Mark => {
    const [halfWide, halfHigh] = size.map((one) => Math.max(role === 'metal' ? 2 : 6, (one * scale) / 2));
    const [dx, dy] = [halfWide ?? 0, halfHigh ?? 0];
    return isRound
      ? { type: 'circle', center, radius: dx, role }
      : {
          type: 'outline',
          closed: true,
          role,
          points: [
            { x: center.x - dx, y: center.y - dy },
            { x: center.x + dx, y: center.y - dy },
            { x: center.x + dx, y: center.y + dy },
            { x: center.x - dx, y: center.y + dy },
          ],
        };
  };
  const wide = Math.max(6, (outer[0] * scale) / 2);
  const high = Math.max(6, (outer[1] * scale) / 2);
  return {
    title: 'Size over the wrap',
    describes,
    height: 186,
    marks: [
      box(outer, 'wrap'),
      box(bare, 'metal'),
      {
        type: 'measure',
        from: { x: center.x - wide, y: center.y + high + 26 },
        to: { x: center.x + wide, y: center.y + high + 26 },
        text: sayInches(outer[0]),
      },
      ...(isRound
        ? []
        : [
            {
              type: 'label',
              at: { x: 20, y: 20 },
              text: `depth ${sayInches(outer[1])}`,
              anchor: 'start',
            } as const,
          ]),
    ],
  };
}
