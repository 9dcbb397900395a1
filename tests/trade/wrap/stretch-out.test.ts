import { describe, expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import type { DuctSection } from '../../../src/trade/section.ts';
import { type StretchOutMethod, stretchOut, type Wrap } from '../../../src/trade/wrap/stretch-out.ts';

const round16: DuctSection = { shape: 'round', diameter: inches(16) };
const trunk: DuctSection = { shape: 'rectangular', width: inches(20), depth: inches(8) };
const square: DuctSection = { shape: 'rectangular', width: inches(12), depth: inches(12) };
const wrap: Wrap = {
  name: 'R-8 wrap',
  thickness: inches(3),
  installed: inches(2.25),
  shop: { round: inches(18), square: null, rectangular: null },
};

const cut = (section: DuctSection, method: StretchOutMethod, of = wrap, lap = 2) => {
  const outcome = stretchOut(section, of, method, inches(lap), 'bent');
  return outcome.ok ? outcome.value.cut : outcome.fault;
};

describe('how far around wrap is cut', () => {
  it('by geometry keeps the installed thickness all round', () => {
    expect(cut(round16, 'geometry')).toBeCloseTo(Math.PI * 20.5 + 2, 12);
    expect(cut(trunk, 'geometry')).toBeCloseTo(56 + 4.5 * Math.PI + 2, 12);
  });

  it('by the published tables adds the printed figure to the bare perimeter', () => {
    expect(cut(round16, 'published')).toBeCloseTo(Math.PI * 16 + 17, 12);
    expect(cut(trunk, 'published')).toBeCloseTo(67.5, 12);
    expect(cut(trunk, 'published two-column')).toBeCloseTo(70.5, 12);
    expect(cut(square, 'published')).toBeCloseTo(62.5, 12);
  });

  it('trades the lap that a table includes for the lap that is wanted', () => {
    expect(cut(round16, 'published', wrap, 3)).toBeCloseTo(Math.PI * 16 + 18, 12);
    expect(cut(round16, 'shop', wrap, 3)).toBeCloseTo(Math.PI * 16 + 19, 12);
  });

  it('reads nothing between the rows of a table', () => {
    const between = { ...wrap, thickness: inches(2.5), installed: inches(1.875) };
    expect(cut(round16, 'published', between)).toMatchObject({ code: 'no_published_row', got: 2.5 });
  });

  it('does not make up a figure that the shop has left blank', () => {
    expect(cut(trunk, 'shop')).toEqual({
      code: 'no_shop_figure',
      wrap: 'R-8 wrap',
      column: 'shop_rectangular',
    });
  });

  it('refuses a wrap that grows when it is put on', () => {
    expect(cut(round16, 'published', { ...wrap, installed: inches(3.5) })).toMatchObject({
      code: 'installed_over_thickness',
    });
  });
});
