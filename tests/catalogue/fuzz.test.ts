import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RawArgument } from '../../src/catalogue/argument.ts';
import type { AnyTradeFunction } from '../../src/catalogue/define.ts';
import { drawingWidth } from '../../src/catalogue/drawing.ts';
import { tradeFunctions } from '../../src/catalogue/list.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { cases } from '../depth.ts';
import { clashesIn, outsideOf } from './drawing-faults.ts';

const set = { numRuns: 150 };

const scalar: fc.Arbitrary<RawArgument> = fc.oneof(
  fc.double(),
  fc.integer({ min: -20, max: 200 }),
  fc.string({ maxLength: 12 }),
  fc.constantFrom('round', 'rectangular', 'R-8 wrap', 'geometry', `12' 4`, '1/0', '__proto__', 'constructor'),
  fc.boolean(),
  fc.constant(null),
);
const anything: fc.Arbitrary<RawArgument> = fc.oneof(
  { weight: 4, arbitrary: scalar },
  {
    weight: 1,
    arbitrary: fc.array(fc.array(scalar.map((one) => (Array.isArray(one) ? null : one))), {
      maxLength: 3,
    }) as fc.Arbitrary<RawArgument>,
  }, // cells are scalars
);

/** What each argument allows, from end to end; the rest as the example has it. */
function sensible(spec: AnyTradeFunction): fc.Arbitrary<readonly RawArgument[]> {
  const examples = spec.examples.map((example) =>
    fc.tuple(
      ...Object.entries(spec.arguments).map(([name, argument]): fc.Arbitrary<RawArgument> => {
        const usual = example.given[name] ?? null;
        if (argument.choices && argument.choices.length > 0)
          return fc.constantFrom(usual, ...argument.choices);
        if (!argument.range || Array.isArray(usual)) return fc.constant(usual);
        const { least, most, whole } = argument.range;
        const within = whole
          ? fc.integer({ min: least, max: most })
          : fc.oneof(fc.double({ min: least, max: most, noNaN: true }), fc.constantFrom(least, most));
        return fc.oneof(fc.constant(usual), within);
      }),
    ),
  );
  return fc.oneof(...examples);
}

const isSound = (value: number | string) => typeof value === 'string' || Number.isFinite(value);

const deepRuns = cases(0, 100_000);

describe.each(tradeFunctions.map((spec) => [spec.name, spec] as const))('%s', (_, spec) => {
  const count = Object.keys(spec.arguments).length;

  it('gives a figure or a sentence for whatever it is handed', () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: count + 1 }), (raw) => {
        const outcome = spec.call(raw);
        if (!outcome.ok) {
          expect(wordFault(outcome.fault)).toMatch(/[.?”]$/);
          return;
        }
        expect(outcome.value.value).toSatisfy(isSound);
      }),
      set,
    );
  });

  it('is sound in every part wherever it gives a figure, and its drawing can be read', () => {
    fc.assert(
      fc.property(sensible(spec), (raw) => {
        const outcome = spec.call(raw);
        if (!outcome.ok) {
          expect(wordFault(outcome.fault)).not.toMatch(/NaN|Infinity|undefined/);
          return;
        }
        const { value } = outcome.value;
        expect(value).toSatisfy(isSound);
        expect(outcome.value.steps().at(-1)?.value).toBe(value);
        expect(JSON.stringify([outcome.value.steps(), outcome.value.cautions()])).not.toMatch(
          /NaN|Infinity|undefined|":null/,
        );
        const drawing = outcome.value.drawing();
        if (!drawing) return;
        expect(outsideOf(drawing, drawingWidth)).toEqual([]);
        expect(clashesIn(drawing)).toEqual([]);
      }),
      set,
    );
  });

  // With DEEP=1 only: a hundred thousand calls of each function, values and sentences alone.
  if (deepRuns > 0) {
    it(`gives a finite figure or a sentence in ${deepRuns} calls within and beyond what it allows`, () => {
      const calls = fc.oneof(
        { weight: 4, arbitrary: sensible(spec) },
        { weight: 1, arbitrary: fc.array(anything, { maxLength: count + 1 }) },
      );
      for (const raw of fc.sample(calls, { numRuns: deepRuns })) {
        const outcome = spec.call(raw);
        const said = outcome.ok ? outcome.value.value : wordFault(outcome.fault);
        if (!isSound(said) || /NaN|Infinity|undefined/.test(String(said))) {
          throw new Error(`${spec.name}(${JSON.stringify(raw)}) gives ${said}`);
        }
      }
    }, 600_000);
  }
});
