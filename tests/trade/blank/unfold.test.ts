import { describe, expect, it } from 'vitest';
import {
  curveDivisions,
  divisionsOfCircle,
  drawnStations,
  stepOf,
} from '../../../src/trade/blank/divisions.ts';
import { distance } from '../../../src/trade/blank/piece.ts';
import { unfold } from '../../../src/trade/blank/unfold.ts';

describe('triangles laid flat', () => {
  it('keep the three lengths of each', () => {
    const flat = unfold(4, [
      { on: 'first', step: 3, across: 5 },
      { on: 'second', step: 3, across: 4 },
    ]);
    const [a, b] = flat?.first ?? [];
    const [d, c] = flat?.second ?? [];
    expect([a && b && distance(a, b), b && c && distance(b, c), c && d && distance(c, d)]).toEqual([
      expect.closeTo(3, 12),
      expect.closeTo(4, 12),
      expect.closeTo(3, 12),
    ]);
    expect(flat?.turn).toBeCloseTo(0, 9);
  });

  it('go on to the right with the ends of the first border level', () => {
    const flat = unfold(2, [
      { on: 'first', step: 1, across: 2 },
      { on: 'first', step: 1, across: 2 },
    ]);
    const [start, , end] = flat?.first ?? [];
    expect(start).toEqual({ across: 0, up: 0 });
    expect(end?.across).toBeGreaterThan(1.9);
    expect(end?.up).toBeCloseTo(0, 12);
  });

  it('turn to the left round a corner of the second border, to the right round one of the first', () => {
    const fan = (on: 'first' | 'second') =>
      unfold(2, [
        { on, step: 2, across: 2 },
        { on, step: 2, across: 2 },
      ])?.turn;
    expect(fan('first')).toBeCloseTo(120, 9);
    expect(fan('second')).toBeCloseTo(-120, 9);
  });

  it('are refused where three lengths close no triangle', () => {
    expect(unfold(2, [{ on: 'first', step: 5, across: 2 }])).toBeNull();
    expect(unfold(2, [{ on: 'first', step: Number.NaN, across: 2 }])).toBeNull();
  });
});

describe('the divisions of a circle', () => {
  it.each(divisionsOfCircle)('%i parts make whole quarters and go into the fine curve', (divisions) => {
    expect([divisions % 4, curveDivisions % divisions]).toEqual([0, 0]);
  });

  it('stepped as arcs go once round, and as chords lose 0.29 % with 24 parts', () => {
    expect(24 * stepOf(6, 24, 'arcs')).toBeCloseTo(12 * Math.PI, 12);
    expect(1 - (24 * stepOf(6, 24, 'chords')) / (12 * Math.PI)).toBeCloseTo(0.0029, 4);
  });

  it('are drawn all, or every few where they would run together', () => {
    expect(drawnStations(8)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(drawnStations(96)).toHaveLength(31);
    expect(drawnStations(96)[1]).toBe(6);
  });
});
