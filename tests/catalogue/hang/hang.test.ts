import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../../src/catalogue/argument.ts';
import type { AnyTradeFunction } from '../../../src/catalogue/define.ts';
import { hangCount } from '../../../src/catalogue/hang/count.ts';
import { exampleHangers, exampleStraps } from '../../../src/catalogue/hang/hangers.ts';
import { hangLength } from '../../../src/catalogue/hang/length.ts';
import { hangLoad } from '../../../src/catalogue/hang/load.ts';
import { hangPlace } from '../../../src/catalogue/hang/place.ts';
import { hangSize } from '../../../src/catalogue/hang/size.ts';
import { hangSpacing } from '../../../src/catalogue/hang/spacing.ts';
import { hangStrap } from '../../../src/catalogue/hang/strap.ts';
import { sources } from '../../../src/catalogue/sources.ts';
import { wordFault } from '../../../src/catalogue/wording.ts';

const set = { numRuns: 200 };

function worked(spec: AnyTradeFunction, ...raw: readonly RawArgument[]) {
  const outcome = spec.call(raw);
  if (!outcome.ok) throw new Error(wordFault(outcome.fault));
  return outcome.value;
}

function refusal(spec: AnyTradeFunction, ...raw: readonly RawArgument[]): string {
  const outcome = spec.call(raw);
  if (outcome.ok) throw new Error(`${spec.name} gave ${outcome.value.value}.`);
  return wordFault(outcome.fault);
}

describe('the spacing allowed', () => {
  it('names its document and edition, and says so where the figure is only remembered', () => {
    for (const [duct, rule] of [
      ['round', 'duct standard'],
      ['rectangular', 'older mechanical code'],
      ['flex', 'older flex standard'],
      ['flex', 'riser'],
    ] as const) {
      const { sources: cited, cautions } = worked(hangSpacing, duct, rule);
      const remembered = cited().some((id) => sources[id].status === 'from memory, not verified');
      expect(remembered, rule).toBe(true);
      expect(cautions().map((one) => one.sentence)).toContainEqual(expect.stringMatching(/from memory/));
    }
    const read = worked(hangSpacing, 'round');
    expect(read.cautions().map((one) => one.sentence)).not.toContainEqual(
      expect.stringMatching(/from memory/),
    );
  });

  it('always hands over to local code and licensed practice', () => {
    expect(worked(hangSpacing, 'flex').cautions()[0]?.sentence).toMatch(
      /local code.*licensed practice decide/,
    );
  });

  it('keeps the rule where the shop would hang wider', () => {
    const { value, cautions } = worked(hangSpacing, 'round', null, null, 200);
    expect(value).toBe(120);
    expect(cautions().map((one) => one.sentence)).toContainEqual(expect.stringMatching(/rule is kept/));
  });

  it('gives a sentence where a rule says nothing', () => {
    expect(refusal(hangSpacing, 'round', 'flex standard')).toMatch(
      /flex standard tells nothing of round duct/,
    );
    expect(refusal(hangSpacing, 'round', 'riser', null, null, 'strap width')).toMatch(/strap width/);
  });
});

it('the places of all hangers lie on the run, in order, and the last of them ends it where it hangs', () => {
  const length = fc.double({ min: 1, max: 12_000, noNaN: true });
  fc.assert(
    fc.property(length, fc.constantFrom('both hang', 'one carried', 'both carried'), (run, ends) => {
      const count = Number(worked(hangCount, run, 120, ends).value);
      if (count === 0) return;
      const places = [1, Math.ceil(count / 2), count].map((number) =>
        Number(worked(hangPlace, run, 120, number, ends).value),
      );
      expect(places).toEqual([...places].sort((one, other) => one - other));
      if (ends !== 'both carried') expect(places.at(-1)).toBeCloseTo(run, 6);
      expect(refusal(hangPlace, run, 120, count + 1, ends)).toMatch(/Ask for a lower number/);
    }),
    set,
  );
});

describe('the size of a hanger', () => {
  const strap = (width: number, depth: number, spacing: number) =>
    Number(worked(hangSize, 'rectangular', width, depth, spacing, exampleHangers).value);

  it('never gets lighter for a larger duct or a wider spacing, by the remembered table', () => {
    const side = fc.double({ min: 2, max: 80, noNaN: true });
    const spacing = fc.double({ min: 12, max: 90, noNaN: true });
    fc.assert(
      fc.property(side, side, spacing, (width, depth, apart) => {
        const gauge = strap(width, depth, apart);
        expect(strap(width + 2, depth, apart)).toBeLessThanOrEqual(gauge);
        expect(strap(width, depth, apart + 6)).toBeLessThanOrEqual(gauge);
      }),
      set,
    );
  });

  it('past the end of the table, and where a cell is empty, is a sentence', () => {
    expect(refusal(hangSize, 'round', 90, null, 120, exampleHangers)).toMatch(/no row for a round duct/);
    expect(refusal(hangSize, 'rectangular', 20, 8, 120, exampleHangers, 'rod')).toMatch(/nothing in “rod”/);
    expect(refusal(hangStrap, 5000, exampleStraps)).toMatch(/strongest row takes 1100 lb/);
  });
});

it('wrap with one figure missing is asked for, not left out of the load', () => {
  const duct = ['rectangular', 20, 8, 120, 26, null, null, 0];
  expect(refusal(hangLoad, ...duct, 67.25)).toMatch(/wrap thickness is missing/);
  expect(refusal(hangLoad, ...duct, null, 2)).toMatch(/wrap cut is missing/);
});

it('a hanger that does not fit the shape, or has no room, is refused in a sentence', () => {
  expect(refusal(hangLength, 'round', 12, null, 6, 'cradle')).toMatch(/“cradle” does not fit a round duct/);
  expect(refusal(hangLength, 'round', 12, null, 3, null, 'middle')).toMatch(/at least 6″/);
});
