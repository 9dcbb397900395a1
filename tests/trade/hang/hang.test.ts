import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, pounds, poundsPerCubicFoot, poundsPerSquareFoot } from '../../../src/base/quantity.ts';
import { hangerPlace, runEnds, runHangers } from '../../../src/trade/hang/count.ts';
import { type HangerSizes, hangerLength, trapezeBar } from '../../../src/trade/hang/length.ts';
import { attachmentFor, hangerLoad } from '../../../src/trade/hang/load.ts';
import { flexSag, sagPerFoot } from '../../../src/trade/hang/sag.ts';
import { hangerRow, weakestFor } from '../../../src/trade/hang/size.ts';
import { hangerSpacing, hangRules, hungDucts } from '../../../src/trade/hang/spacing.ts';
import type { DuctSection } from '../../../src/trade/section.ts';

const set = { numRuns: 300 };
const pipe: DuctSection = { shape: 'round', diameter: inches(12) };
const duct: DuctSection = { shape: 'rectangular', width: inches(20), depth: inches(8) };
const plain: HangerSizes = {
  drop: inches(6),
  dropTo: 'top',
  wrap: inches(0),
  turn: inches(1.5),
  fixing: inches(0),
};

function value<T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!outcome.ok) throw new Error('A fault where a figure was wanted.');
  return outcome.value;
}

describe('hangers of a run', () => {
  it('are one more than the spacings where both ends hang, and one fewer for each end that is carried', () => {
    expect(runEnds.map((ends) => runHangers(inches(480), inches(120), ends, 0).straight)).toEqual([5, 4, 3]);
  });

  it('never stand further apart than allowed, nor are they fewer for a longer run or a closer spacing', () => {
    const length = fc.double({ min: 1, max: 12_000, noNaN: true });
    const spacing = fc.double({ min: 12, max: 300, noNaN: true });
    fc.assert(
      fc.property(length, spacing, fc.constantFrom(...runEnds), (long, apart, ends) => {
        const run = runHangers(inches(long), inches(apart), ends, 2);
        expect(run.bay).toBeLessThanOrEqual(apart * (1 + 1e-8));
        expect(run.hangers).toBe(run.straight + 2);
        expect(runHangers(inches(long + 50), inches(apart), ends, 2).hangers).toBeGreaterThanOrEqual(
          run.hangers,
        );
        expect(runHangers(inches(long), inches(apart / 2), ends, 2).hangers).toBeGreaterThanOrEqual(
          run.hangers,
        );
      }),
      set,
    );
  });

  it('stand evenly from the first to the last', () => {
    const places = (ends: (typeof runEnds)[number]) => {
      const run = runHangers(inches(400), inches(120), ends, 0);
      return Array.from({ length: run.straight }, (_, index) => value(hangerPlace(run, ends, index + 1)));
    };
    expect(places('both hang')).toEqual([0, 100, 200, 300, 400]);
    expect(places('one carried')).toEqual([100, 200, 300, 400]);
    expect(places('both carried')).toEqual([100, 200, 300]);
    const run = runHangers(inches(100), inches(120), 'both carried', 0);
    expect(hangerPlace(run, 'both carried', 1)).toMatchObject({ fault: { code: 'no_such_hanger' } });
  });
});

describe('the spacing allowed', () => {
  it('is brought down to whole sections, two at most, and to the limit of the shop', () => {
    const kept = (section: number | null, own: number | null) =>
      value(
        hangerSpacing(
          'round',
          'work specification',
          section === null ? null : inches(section),
          own === null ? null : inches(own),
        ),
      ).kept;
    expect(kept(null, null)).toBe(120);
    expect(kept(48, null)).toBe(96);
    expect(kept(60, null)).toBe(120);
    expect(kept(36, null)).toBe(72);
    expect(kept(144, null)).toBe(120);
    expect(kept(48, 60)).toBe(48);
    expect(kept(null, 200)).toBe(120);
  });

  it('is between 4 and 12 ft by every rule that speaks of the duct, and a fault by one that does not', () => {
    for (const rule of hangRules) {
      for (const one of hungDucts) {
        const outcome = hangerSpacing(one, rule, null, null);
        if (outcome.ok) {
          expect(outcome.value.kept).toBeGreaterThanOrEqual(48);
          expect(outcome.value.kept).toBeLessThanOrEqual(144);
        } else expect(outcome.fault).toMatchObject({ code: 'not_in_the_table', table: rule });
      }
    }
  });
});

describe('the length of a hanger', () => {
  it('is half the girth and two legs under half of a pipe, and the girth and one leg all the way round', () => {
    expect(value(hangerLength(pipe, 'half round', plain)).all).toBeCloseTo(6 * Math.PI + 12 + 12, 9);
    expect(value(hangerLength(pipe, 'full round', plain)).all).toBeCloseTo(12 * Math.PI + 6, 9);
  });

  it('of a pair is twice the drop, the depth and the turn under', () => {
    const { all, each, pieces } = value(hangerLength(duct, 'pair', plain));
    expect([all, each, pieces]).toEqual([31, 15.5, 2]);
    expect(value(hangerLength(duct, 'cradle', plain)).all).toBe(2 * 14 + 20);
  });

  it('does not mind whether the drop is given to the top or to the middle', () => {
    const drop = fc.double({ min: 0, max: 120, noNaN: true });
    fc.assert(
      fc.property(drop, fc.constantFrom('half round', 'full round', 'trapeze'), (down, make) => {
        const top = value(hangerLength(pipe, make, { ...plain, drop: inches(down) })).all;
        const middle = value(
          hangerLength(pipe, make, { ...plain, drop: inches(down + 6), dropTo: 'middle' }),
        ).all;
        expect(middle).toBeCloseTo(top, 9);
      }),
      set,
    );
  });

  it('grows with the wrap, and needs room for it above the duct', () => {
    const wrapped = value(hangerLength(pipe, 'half round', { ...plain, wrap: inches(2) })).all;
    expect(wrapped - value(hangerLength(pipe, 'half round', plain)).all).toBeCloseTo(2 * Math.PI, 9);
    expect(hangerLength(pipe, 'half round', { ...plain, drop: inches(1), wrap: inches(2) })).toMatchObject({
      fault: { code: 'drop_too_short', least: 2 },
    });
    expect(trapezeBar(duct, inches(2), inches(1.5))).toBe(27);
  });

  it('is a fault where the hanger is made for the other shape', () => {
    expect(hangerLength(pipe, 'pair', plain)).toMatchObject({ fault: { code: 'hanger_not_for_shape' } });
    expect(hangerLength(duct, 'half round', plain)).toMatchObject({
      fault: { code: 'hanger_not_for_shape' },
    });
  });
});

describe('the load on a hanger', () => {
  const none = { cut: inches(0), thickness: inches(0), density: poundsPerCubicFoot(0) };

  it('is the metal of one spacing and the wrap on it, shared by the legs', () => {
    const around = { cut: inches(72), thickness: inches(2), density: poundsPerCubicFoot(0.75) };
    const load = hangerLoad(duct, inches(120), poundsPerSquareFoot(0.906), 0.1, around, pounds(5), 2);
    expect(load.metal).toBeCloseTo(46.508, 3);
    // 6 ft round, 10 ft long, 1/6 ft thick, 0.75 lb/cu ft.
    expect(load.wrap).toBeCloseTo(7.5, 9);
    expect(load.hanger).toBeCloseTo(load.metal + 12.5, 9);
    expect(load.leg).toBeCloseTo(load.hanger / 2, 12);
  });

  it('doubles with the spacing', () => {
    const at = (spacing: number) =>
      hangerLoad(pipe, inches(spacing), poundsPerSquareFoot(0.906), 0, none, pounds(0), 1).hanger;
    expect(at(240)).toBeCloseTo(2 * at(120), 9);
  });

  it('asks four times as much of the attachment', () => {
    expect(attachmentFor(pounds(50), 0.25)).toBe(200);
  });
});

describe('the size of a hanger', () => {
  const row = (name: string, roundTo: number | null, half: number | null, spacing: number) => ({
    name,
    roundTo: roundTo === null ? null : inches(roundTo),
    halfPerimeterTo: half === null ? null : inches(half),
    spacingTo: inches(spacing),
  });
  const rows = [
    row('heavy', null, 96, 120),
    row('light', null, 30, 120),
    row('close', null, 96, 60),
    row('round', 18, null, 144),
  ];

  it('comes from the closest spacing that reaches, then from the smallest size', () => {
    const name = (section: DuctSection, spacing: number) =>
      value(hangerRow(rows, section, inches(spacing))).name;
    expect(name(duct, 120)).toBe('light');
    expect(name(duct, 48)).toBe('close');
    expect(name({ ...duct, width: inches(40) }, 61)).toBe('heavy');
    expect(name(pipe, 120)).toBe('round');
  });

  it('is a fault past the end of the table', () => {
    expect(hangerRow(rows, duct, inches(144))).toEqual({
      ok: false,
      fault: { code: 'no_hanger_row', shape: 'rectangular', size: 28, spacing: 144 },
    });
  });

  it('by load is the weakest that still carries it', () => {
    const straps = [
      { name: 'b', load: pounds(420) },
      { name: 'a', load: pounds(260) },
    ];
    expect(value(weakestFor(straps, pounds(260))).name).toBe('a');
    expect(value(weakestFor(straps, pounds(261))).name).toBe('b');
    expect(weakestFor(straps, pounds(500))).toMatchObject({ fault: { code: 'too_heavy', most: 420 } });
    expect(weakestFor([], pounds(1))).toMatchObject({ fault: { code: 'too_heavy', most: 0 } });
  });
});

it('flex that sags 2 in over 4 ft is 0.22 in longer than its span, as the arc of the parabola says', () => {
  const { sag, longer } = flexSag(inches(48), sagPerFoot);
  expect(sag).toBe(2);
  const steps = 10_000;
  const depth = (x: number) => 2 * (1 - ((x - 24) / 24) ** 2);
  let arc = 0;
  for (let step = 0; step < steps; step += 1) {
    const [from, to] = [(48 * step) / steps, (48 * (step + 1)) / steps];
    arc += Math.hypot(to - from, depth(to) - depth(from));
  }
  expect(longer).toBeCloseTo(arc - 48, 6);
  expect([0, Number.MIN_VALUE].map((perFoot) => flexSag(inches(12), inches(perFoot)).longer)).toEqual([0, 0]);
});
