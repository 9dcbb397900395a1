import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Argument, RawArgument } from '../../../src/catalogue/argument.ts';
import { blankBend } from '../../../src/catalogue/blank/bend.ts';
import { blankBoot } from '../../../src/catalogue/blank/boot.ts';
import { blankEndCap } from '../../../src/catalogue/blank/end-cap.ts';
import { blankOffset } from '../../../src/catalogue/blank/offset.ts';
import { blankPlenum } from '../../../src/catalogue/blank/plenum.ts';
import { blankRectangularElbow } from '../../../src/catalogue/blank/rectangular-elbow.ts';
import { blankTransition } from '../../../src/catalogue/blank/transition.ts';
import type { AnyTradeFunction } from '../../../src/catalogue/define.ts';
import { drawingWidth } from '../../../src/catalogue/drawing.ts';
import { gaugeLeast } from '../../../src/catalogue/gauge/least.ts';
import { svgText } from '../../../src/catalogue/svg.ts';
import { wordFault } from '../../../src/catalogue/wording.ts';
import { clashesIn, outsideOf } from '../drawing-faults.ts';

const fittings = [
  blankTransition,
  blankRectangularElbow,
  blankOffset,
  blankEndCap,
  blankPlenum,
  blankBoot,
  blankBend,
  gaugeLeast,
];

/** Anything that an argument allows, its two limits often. */
function allowedFor({ range, choices, usual }: Argument<unknown>): fc.Arbitrary<RawArgument> {
  const leftOut = usual === undefined ? [] : [fc.constant<RawArgument>(null)];
  if (choices) return fc.oneof(...leftOut, fc.constantFrom<RawArgument>(...choices));
  if (!range) return fc.constant<RawArgument>(null);
  const { least, most, whole } = range;
  const between = whole
    ? fc.integer({ min: least, max: Math.min(most, 30) })
    : fc.double({ min: least, max: most, noNaN: true });
  return fc.oneof(
    ...leftOut,
    { weight: 4, arbitrary: between },
    { weight: 1, arbitrary: fc.constantFrom<RawArgument>(least, most) },
  );
}

const callsOf = (spec: AnyTradeFunction) => fc.tuple(...Object.values(spec.arguments).map(allowedFor));

describe.each(fittings.map((spec) => [spec.name, spec] as const))('%s, for all that it allows', (_, spec) => {
  it('gives a figure with a working and a drawing that can be read, or a fault in a sentence', () => {
    fc.assert(
      fc.property(callsOf(spec), (raw) => {
        const outcome = spec.call(raw);
        if (!outcome.ok) {
          expect(wordFault(outcome.fault)).toMatch(/^[A-Z“].*[^\s]\.$/u);
          return;
        }
        const { value, steps, drawing, cautions } = outcome.value;
        expect(Number.isFinite(value)).toBe(true);
        expect(steps().at(-1)?.value).toBe(value);
        expect(JSON.stringify([steps(), cautions()])).not.toMatch(/NaN|Infinity|undefined|:null/);
        const drawn = drawing();
        if (drawn === null) throw new Error('no drawing');
        expect(svgText(drawn)).not.toMatch(/NaN|Infinity|undefined/);
        expect(outsideOf(drawn, drawingWidth)).toEqual([]);
        expect(clashesIn(drawn)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is laid out for many of them', () => {
    const calls = fc.sample(callsOf(spec), { numRuns: 300 });
    const done = calls.filter((raw) => spec.call(raw).ok).length;
    expect(done / calls.length).toBeGreaterThan(0.05);
  });
});

describe('the working of a flat pattern', () => {
  const worked = (...raw: readonly RawArgument[]) => {
    const outcome = blankRectangularElbow.call(raw);
    if (!outcome.ok) throw new Error(wordFault(outcome.fault));
    return outcome.value;
  };

  it('tells every piece with its sides, points and sizes, and ends in the one asked for', () => {
    const labels = worked(14, 8, 90, 1, 'width', 1, 'mitered')
      .steps()
      .map((step) => step.label);
    expect(labels.filter((label) => label.endsWith(': sides'))).toEqual([
      'Part 2, heel: sides',
      'Part 3, throat: sides',
      'Part 1, cheek: sides',
    ]);
    expect(labels.at(-1)).toBe('Part 1, cheek: blank width');
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('gives a side, a point and an area by themselves, each in its unit', () => {
    const ask = (what: string, station: number) => {
      const { value, unit } = worked(14, 8, 90, 1, what, station, 'mitered');
      return [typeof value === 'number' ? Number(value.toFixed(4)) : value, unit];
    };
    expect(ask('side', 2)).toEqual([30, 'in']);
    expect(ask('area', 1)).toEqual([1.5556, 'sqft']);
    expect([ask('across', 1), ask('up', 1)]).toEqual([
      [1, 'in'],
      [0, 'in'],
    ]);
  });

  it('refuses a part or a station that there is not, and says which there are', () => {
    const sentence = (...raw: readonly RawArgument[]) => {
      const outcome = blankRectangularElbow.call(raw);
      return outcome.ok ? '' : wordFault(outcome.fault);
    };
    expect(sentence(14, 8, 90, 3, 'width', 1, 'mitered', null, 0, 0)).toBe(
      'There is no part 3 in this fitting; its pieces are 1 (cheek) and 2 (heel). Choose one of these.',
    );
    expect(sentence(14, 8, 90, 1, 'side', 5)).toContain('The cheek has 4 sides, so there is no side 5.');
  });
});

it('the surface of an elbow counts both cheeks', () => {
  const ask = (what: string, part: number) => {
    const outcome = blankRectangularElbow.call([20, 10, 45, part, what, 1, 'radius', 10, 0, 0]);
    if (!outcome.ok) throw new Error(wordFault(outcome.fault));
    return Number(outcome.value.value);
  };
  expect(ask('surface', 1)).toBeCloseTo(2 * ask('area', 1) + ask('area', 2) + ask('area', 3), 12);
  expect(144 * ask('surface', 1)).toBeCloseTo(942.4778, 3);
});
