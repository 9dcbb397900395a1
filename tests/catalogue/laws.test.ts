import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../src/catalogue/argument.ts';
import { findFunction } from '../../src/catalogue/list.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { exampleWraps } from '../../src/catalogue/wraps.ts';

const set = { numRuns: 200 };

function figureOf(name: string, ...raw: readonly RawArgument[]): number {
  const value = answerOf(name, raw);
  if (typeof value !== 'number') throw new Error(`${name} gave a text.`);
  return value;
}

function answerOf(name: string, raw: readonly RawArgument[]): number | string {
  const outcome = findFunction(name)?.call(raw);
  if (!outcome) throw new Error(`There is no ${name}.`);
  if (!outcome.ok) throw new Error(wordFault(outcome.fault));
  return outcome.value.value;
}

type Section = readonly [shape: string, width: number, depth: number | null];

const size = fc.double({ min: 4, max: 60, noNaN: true });
const section: fc.Arbitrary<Section> = fc.oneof(
  size.map((diameter): Section => ['round', diameter, null]),
  fc.tuple(size, size).map(([width, depth]): Section => ['rectangular', width, depth]),
);
const wrap = fc.constantFrom('R-4 wrap', 'R-5 wrap', 'R-6 wrap', 'R-8 wrap');
const lap = fc.double({ min: 0, max: 6, noNaN: true });
const corners = fc.constantFrom('bent', 'sharp', 'middle');
const larger = ([shape, width, depth]: Section, by: number): Section => [
  shape,
  width + by,
  depth === null ? null : depth + by,
];

describe('wrap', () => {
  it('cut by geometry leaves its rated thickness and its rated R, whatever the duct', () => {
    fc.assert(
      fc.property(section, wrap, lap, corners, (duct, name, over, rule) => {
        const row = exampleWraps.find((one) => one[0] === name);
        const cut = figureOf('WRAP.STRETCHOUT', ...duct, name, exampleWraps, 'geometry', over, rule);
        const back = [...duct, cut, name, exampleWraps, over, rule];
        expect(figureOf('WRAP.THICKNESS', ...back)).toBeCloseTo(Number(row?.[2]), 9);
        expect(figureOf('WRAP.RLEFT', ...back)).toBeCloseTo(Number(row?.[4]), 9);
      }),
      set,
    );
  });

  it('is cut longer for a larger duct, by the same for each method', () => {
    fc.assert(
      fc.property(section, wrap, fc.double({ min: 0.01, max: 20, noNaN: true }), (duct, name, by) => {
        const growth = ['geometry', 'published'].map((method) => {
          const [small, large] = [duct, larger(duct, by)].map((one) =>
            figureOf('WRAP.STRETCHOUT', ...one, name, exampleWraps, method),
          );
          return Number(large) - Number(small);
        });
        expect(growth[0]).toBeCloseTo(duct[0] === 'round' ? Math.PI * by : 4 * by, 6);
        if (duct[1] !== duct[2]) expect(growth[1]).toBeCloseTo(growth[0] ?? 0, 6);
      }),
      set,
    );
  });

  it('of a rectangular duct does not mind which side is called the width', () => {
    fc.assert(
      fc.property(size, size, wrap, (width, depth, name) => {
        const cut = (one: number, other: number) =>
          figureOf('WRAP.STRETCHOUT', 'rectangular', one, other, name, exampleWraps);
        expect(cut(width, depth)).toBeCloseTo(cut(depth, width), 9);
      }),
      set,
    );
  });

  it('keeps more the longer it is cut, and never more than its label says', () => {
    const extra = fc.double({ min: -2, max: 10, noNaN: true });
    fc.assert(
      fc.property(section, wrap, extra, extra, (duct, name, one, other) => {
        const cut = figureOf('WRAP.STRETCHOUT', ...duct, name, exampleWraps, 'geometry');
        const left = [Math.min(one, other), Math.max(one, other)].map((by) =>
          figureOf('WRAP.RLEFT', ...duct, cut + by, name, exampleWraps),
        );
        expect(left[0]).toBeLessThanOrEqual((left[1] ?? 0) + 1e-9);
        expect(left[1]).toBeLessThanOrEqual(Number(exampleWraps.find((row) => row[0] === name)?.[3]) + 1e-9);
      }),
      set,
    );
  });

  it('comes from at least as many rolls as its length fills, and more pieces never take fewer', () => {
    const cut = fc.double({ min: 20, max: 500, noNaN: true });
    const pieces = fc.integer({ min: 0, max: 60 });
    fc.assert(
      fc.property(cut, pieces, fc.integer({ min: 0, max: 20 }), (length, count, more) => {
        const rolls = (of: number) => figureOf('WRAP.ROLLS', length, of, 'R-8 wrap', exampleWraps, 0);
        expect(rolls(count)).toBeGreaterThanOrEqual(Math.ceil((length * count) / 600 - 1e-9));
        expect(rolls(count + more)).toBeGreaterThanOrEqual(rolls(count));
      }),
      set,
    );
  });
});

describe('sealing', () => {
  it('grows with the duct, and every joint takes the same', () => {
    fc.assert(
      fc.property(section, fc.integer({ min: 1, max: 40 }), (duct, joints) => {
        const one = figureOf('SEAL.JOINT', ...duct, 1);
        expect(figureOf('SEAL.JOINT', ...duct, joints)).toBeCloseTo(one * joints, 6);
        expect(figureOf('SEAL.JOINT', ...larger(duct, 1), 1)).toBeGreaterThan(one);
      }),
      set,
    );
  });

  it('of a tap is never less than twice round the branch', () => {
    fc.assert(
      fc.property(section, fc.double({ min: 0, max: 50, noNaN: true }), (duct, more) => {
        const across = duct[2] ?? duct[1];
        const onRound = figureOf('SEAL.TAP', ...duct, Math.min(120, across + more));
        const onFlat = figureOf('SEAL.TAP', ...duct, null);
        expect(onFlat).toBeCloseTo(2 * figureOf('SEAL.JOINT', ...duct, 1), 9);
        expect(onRound).toBeGreaterThanOrEqual(onFlat - 1e-9);
      }),
      set,
    );
  });
});

describe('a tape', () => {
  const marks = fc.integer({ min: -50_000, max: 50_000 });

  it('is read back as it was written', () => {
    fc.assert(
      fc.property(
        marks,
        fc.constantFrom(16, 32, 64),
        fc.constantFrom('yes', 'no'),
        (mark, fraction, feet) => {
          const written = answerOf('TAPE.WRITE', [mark / fraction, fraction, 'nearest', feet]);
          expect(figureOf('TAPE.READ', String(written))).toBeCloseTo(mark / fraction, 12);
        },
      ),
      set,
    );
  });

  it('reads millimetres and inches as the same length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (millimetres) => {
        expect(figureOf('TAPE.READ', `${millimetres}mm`)).toBeCloseTo(millimetres / 25.4, 9);
      }),
      set,
    );
  });

  it('rounds up by less than a mark, and leaves a rounded length where it is', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (length) => {
        const rounded = figureOf('TAPE.ROUND', length);
        expect(rounded - length).toBeGreaterThanOrEqual(-1e-6);
        expect(rounded - length).toBeLessThan(1 / 16);
        expect(figureOf('TAPE.ROUND', rounded)).toBe(rounded);
      }),
      set,
    );
  });
});
