import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/catalogue/drawing.ts';
import { boxOf, textsOf } from '../../src/catalogue/drawn-text.ts';
import { drawSvg, svgText } from '../../src/catalogue/svg.ts';

const sketch: Drawing = {
  title: 'A duct <16″ & more>',
  describes: 'A "round" duct.',
  height: 200,
  marks: [
    { type: 'ring', center: { x: 100, y: 100 }, inner: 40, outer: 60, role: 'wrap' },
    { type: 'circle', center: { x: 100, y: 100 }, radius: 40, role: 'metal' },
    {
      type: 'outline',
      points: [
        { x: 1, y: 2.0049 },
        { x: 3, y: 4 },
      ],
      closed: false,
      role: 'cut',
    },
    { type: 'label', at: { x: 10, y: 20 }, text: 'R < 8', anchor: 'start' },
    { type: 'measure', from: { x: 60, y: 180 }, to: { x: 140, y: 180 }, text: '16″' },
    { type: 'measure', from: { x: 200, y: 40 }, to: { x: 200, y: 160 }, text: '20″' },
    { type: 'measure', from: { x: 240, y: 40 }, to: { x: 240, y: 50 }, text: '2 ¼″' },
  ],
};

describe('a drawing becomes a picture', () => {
  it('that scales, has a title and a description, and takes its looks from the page', () => {
    const svg = drawSvg(sketch);
    expect(svg.attributes).toMatchObject({ viewBox: '0 0 360 200', role: 'img' });
    expect(svg.children.slice(0, 2)).toMatchObject([{ tag: 'title' }, { tag: 'desc' }]);
    expect(svgText(sketch)).not.toMatch(/fill="|stroke="|style="/);
    expect(svgText(sketch)).toContain('class="drawing-metal"');
  });

  it('whose words cannot break out of it', () => {
    const text = svgText(sketch);
    expect(text).toContain('<title>A duct &lt;16″ &amp; more&gt;</title>');
    expect(text).toContain('>R &lt; 8</text>');
  });

  it('with the figure of a measure over it, along it, or beside it where it is too short', () => {
    const [, level, upright, short] = textsOf(sketch);
    expect(level).toMatchObject({ at: { x: 100, y: 174 }, anchor: 'middle', isUpward: false });
    expect(upright).toMatchObject({ isUpward: true });
    expect(short).toMatchObject({ at: { x: 247, y: 49 }, anchor: 'start' });
    expect(svgText(sketch)).toContain('transform="rotate(-90 194 100)"');
  });

  it('knows about how much room a text takes', () => {
    expect(boxOf({ at: { x: 100, y: 50 }, text: '12345', anchor: 'middle', isUpward: false })).toEqual({
      left: 84.5,
      right: 115.5,
      top: 41,
      bottom: 53,
    });
    expect(boxOf({ at: { x: 100, y: 50 }, text: '12345', anchor: 'middle', isUpward: true })).toEqual({
      left: 91,
      right: 103,
      top: 34.5,
      bottom: 65.5,
    });
  });
});
