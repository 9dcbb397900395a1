import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../../src/base/quantity.ts';
import { runPieces } from '../../../src/trade/wrap/pieces.ts';
import { rollsFor } from '../../../src/trade/wrap/rolls.ts';

describe('pieces of a run', () => {
  const pieces = (length: number, flange = 0) => {
    const outcome = runPieces(inches(length), inches(48), inches(flange));
    return outcome.ok ? outcome.value : outcome.fault;
  };

  it('stand side by side, the last one as wide as what is left', () => {
    expect(pieces(240)).toEqual({ pieces: 5, cover: 48, last: 48 });
    expect(pieces(241)).toEqual({ pieces: 6, cover: 48, last: 1 });
  });

  it('cover less when the flange is part of the roll width', () => {
    expect(pieces(240, 2)).toEqual({ pieces: 6, cover: 46, last: 10 });
  });

  it('cover nothing when the flange takes the whole width', () => {
    expect(pieces(240, 48)).toMatchObject({ code: 'flange_over_roll' });
  });
});

describe('rolls for pieces', () => {
  const rolls = (groups: readonly (readonly [cut: number, pieces: number])[], waste = 0) => {
    const outcome = rollsFor(
      groups.map(([cut, pieces]) => ({ cut: inches(cut), pieces })),
      inches(600),
      waste,
    );
    return outcome.ok ? outcome.value : outcome.fault;
  };

  it('count whole pieces: eight of 67 1/4 come from a roll of 50 ft, not nine', () => {
    expect(rolls([[67.25, 8]])).toMatchObject({ opened: 1, rolls: 1 });
    expect(rolls([[67.25, 9]])).toMatchObject({ opened: 2, rolls: 2, byLength: 2 });
    expect(rolls([[110, 11]])).toMatchObject({ opened: 3, byLength: 3, ends: 100 });
    expect(rolls([[350, 4]])).toMatchObject({ opened: 4, byLength: 3 });
  });

  it('use the end of one roll for a shorter piece', () => {
    expect(rolls([[350, 2], [250, 2]])).toMatchObject({ opened: 2, byLength: 2, shareOfLast: 1 }); // biome-ignore format: one line reads better
  });

  it('take waste on what is used, so that a little of a roll does not cost another', () => {
    expect(rolls([[60, 13]], 0.1)).toMatchObject({ opened: 2, rolls: 2 });
    expect(rolls([[60, 19]], 0.1)).toMatchObject({ opened: 2, rolls: 3 });
  });

  it('are none for no pieces', () => {
    expect(rolls([])).toMatchObject({ rolls: 0, opened: 0, ends: 0 });
    expect(rolls([[60, 0]])).toMatchObject({ rolls: 0 });
  });

  it('are refused for a piece longer than a roll', () => {
    expect(rolls([[601, 1]])).toEqual({ code: 'piece_longer_than_roll', cut: 601, rollLength: 600 });
  });

  it('are as many as placing one piece after the other gives', () => {
    const group = fc.tuple(fc.integer({ min: 5, max: 600 }), fc.integer({ min: 0, max: 30 }));
    fc.assert(
      fc.property(fc.array(group, { maxLength: 8 }), (groups) => {
        expect(rolls(groups)).toMatchObject({ opened: oneByOne(groups) });
      }),
      { numRuns: 500 },
    );
  });
});

/** First fit, longest first, the slow way. */
function oneByOne(groups: readonly (readonly [number, number])[]): number {
  const rests: number[] = [];
  const cuts = groups.flatMap(([cut, pieces]) => Array.from({ length: pieces }, () => cut));
  for (const cut of cuts.sort((one, other) => other - one)) {
    const place = rests.findIndex((rest) => rest >= cut);
    if (place < 0) rests.push(600 - cut);
    else rests[place] = (rests[place] ?? 0) - cut;
  }
  return rests.length;
}
