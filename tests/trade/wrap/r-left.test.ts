import { describe, expect, it } from 'vitest';
import { inches, thermalResistance } from '../../../src/base/quantity.ts';
import type { DuctSection } from '../../../src/trade/section.ts';
import { rLeft } from '../../../src/trade/wrap/r-left.ts';
import { thicknessFromCut } from '../../../src/trade/wrap/thickness.ts';

const duct: DuctSection = { shape: 'round', diameter: inches(16) };
const wrap = {
  name: 'R-8 wrap',
  thickness: inches(3),
  installed: inches(2.25),
  labelR: thermalResistance(10),
  installedR: thermalResistance(8.3),
};
const cutFor = (thickness: number) => inches(Math.PI * (16 + 2 * thickness) + 2);

describe('the thickness that a cut leaves', () => {
  const left = (cut: number) => {
    const outcome = thicknessFromCut(duct, inches(cut), wrap, inches(2), 'bent');
    return outcome.ok ? outcome.value : outcome.fault;
  };

  it('is the installed one for the cut that geometry gives', () => {
    expect(left(cutFor(2.25))).toMatchObject({ installed: expect.closeTo(2.25, 12), slack: 0 });
  });

  it('is never more than the wrap has: a longer cut hangs loose', () => {
    expect(left(cutFor(3) + 1.5)).toMatchObject({ installed: 3, slack: expect.closeTo(1.5, 12) });
  });

  it('is refused under half, with the shortest cut that still leaves half', () => {
    expect(left(cutFor(1.4))).toMatchObject({
      code: 'squeezed_past_half',
      leastCut: expect.closeTo(cutFor(1.5), 12),
    });
  });

  it('is refused where the cut does not even go round the metal', () => {
    expect(left(50)).toMatchObject({ code: 'cut_too_short' });
  });
});

describe('the R that a cut leaves', () => {
  const left = (thickness: number, of = wrap) => {
    const outcome = rLeft(duct, cutFor(thickness), of, inches(2), 'bent');
    return outcome.ok ? outcome.value : outcome.fault;
  };

  it('meets both printed figures', () => {
    expect(left(3)).toMatchObject({ r: expect.closeTo(10, 9), isBelowRated: false });
    expect(left(2.25)).toMatchObject({ r: expect.closeTo(8.3, 9), isBelowRated: false });
  });

  it('falls under the printed one when the wrap is squeezed further, and names the cut that would keep it', () => {
    expect(left(1.8)).toMatchObject({
      r: expect.closeTo(10 * 0.6 ** (Math.log(10 / 8.3) / Math.log(3 / 2.25)), 9),
      isBelowRated: true,
      leastCut: expect.closeTo(cutFor(2.25), 12),
    });
  });

  it('is not made up from figures that do not tell what squeezing costs', () => {
    const flat = { ...wrap, installedR: thermalResistance(10) };
    expect(left(2.25, flat)).toMatchObject({ code: 'no_squeeze_figures', labelR: 10, installedR: 10 });
  });
});
