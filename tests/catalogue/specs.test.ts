import { describe, expect, it } from 'vitest';
import { units } from '../../src/base/unit.ts';
import type { CellFault } from '../../src/base/value.ts';
import type { Argument, RawArgument } from '../../src/catalogue/argument.ts';
import { type AnyTradeFunction, type FunctionExample, families } from '../../src/catalogue/define.ts';
import { drawingWidth } from '../../src/catalogue/drawing.ts';
import { findFunction, tradeFunctions } from '../../src/catalogue/list.ts';
import { sayValue } from '../../src/catalogue/say.ts';
import { sources } from '../../src/catalogue/sources.ts';
import { svgText } from '../../src/catalogue/svg.ts';
import { wordFault } from '../../src/catalogue/wording.ts';
import { clashesIn, outsideOf } from './drawing-faults.ts';

const argumentsOf = (spec: AnyTradeFunction): readonly [string, Argument<unknown>][] =>
  Object.entries(spec.arguments);

const rawOf = (spec: AnyTradeFunction, example: FunctionExample): readonly RawArgument[] =>
  argumentsOf(spec).map(([name]) => example.given[name] ?? null);

function workedExample(spec: AnyTradeFunction, example: FunctionExample) {
  const outcome = spec.call(rawOf(spec, example));
  if (!outcome.ok) throw new Error(`${spec.name}, ${example.says}: ${wordFault(outcome.fault)}`);
  return outcome.value;
}

/** Ends like a sentence, begins like one, and has no gap where a word should be. */
const isSentence = (text: string) =>
  /^[A-Z“0-9].*[.!?”]$/u.test(text) && !/undefined|null|NaN|Infinity|\[object| {2}/.test(text);

/** A formula as plain words: names without their escapes, in lower case. */
const wordsOf = (line: string) => line.replaceAll('\\_', '_').toLowerCase();

/** Takes the pairs away from the inside out; what is left has no partner. */
function unpaired(brackets: string): string {
  const fewer = brackets.replace(/\(\)|\{\}/g, '');
  return fewer === brackets ? brackets : unpaired(fewer);
}

it('no two functions share a name, whatever the case', () => {
  const names = tradeFunctions.map((spec) => spec.name.toUpperCase());
  expect(new Set(names).size).toBe(names.length);
  expect(names.map((name) => findFunction(name.toLowerCase())?.name)).toEqual(
    tradeFunctions.map((spec) => spec.name),
  );
  expect(findFunction('TAPE.NOTHING')).toBeUndefined();
});

describe.each(tradeFunctions.map((spec) => [spec.name, spec] as const))('%s', (_, spec) => {
  it('has a legal name, a sentence, words to find it by, and examples', () => {
    expect(spec.name).toMatch(new RegExp(`^(${families.join('|')})\\.[A-Z]{2,}$`));
    expect(spec.says).toSatisfy(isSentence);
    expect(spec.words.length).toBeGreaterThanOrEqual(3);
    expect(spec.words.every((word) => word === word.trim() && word !== '')).toBe(true);
    expect(spec.gives.label).not.toBe('');
    expect(Object.keys(units)).toContain(spec.gives.unit);
    expect(spec.examples.length).toBeGreaterThanOrEqual(1);
  });

  it('says of every argument what it is, what it allows, and why it has its usual value', () => {
    for (const [name, argument] of argumentsOf(spec)) {
      expect(name).toMatch(/^[a-z][a-z_]*$/);
      expect(argument.says.length, name).toBeGreaterThan(8);
      expect(argument.allows.length, name).toBeGreaterThan(2);
      if (argument.usual) expect(argument.usual.why.length, name).toBeGreaterThan(8);
    }
  });

  it('has its rule in mathematics, with brackets in pairs and every number that must be given by name', () => {
    expect(spec.formula.length).toBeGreaterThanOrEqual(1);
    for (const line of spec.formula) {
      // Each kind by itself: a bracket may open in one \text{…} and close in the next.
      expect(unpaired(line.replace(/\\[{}]|[^{}]/g, '')), line).toBe('');
      expect(unpaired(line.replace(/[^()]/g, '')), line).toBe('');
      expect(line.split('\\left').length, line).toBe(line.split('\\right').length);
      expect(line).not.toMatch(/undefined|NaN|\n|\$/);
    }
    const rule = spec.formula.map(wordsOf).join('\n');
    for (const [name, { range, usual }] of argumentsOf(spec)) {
      if (!range || usual) continue;
      const written = new RegExp(`(?<![a-z_])${name.replaceAll('_', '[_ ]')}(?![a-z_])`);
      expect(rule, name).toMatch(written);
    }
  });

  it('takes its usual values as if they had been typed', () => {
    for (const [name, { usual, read }] of argumentsOf(spec)) {
      const value = usual?.value;
      if (typeof value !== 'number' && typeof value !== 'string' && typeof value !== 'boolean') continue;
      expect(read(value, name), name).toEqual({ ok: true, value });
    }
  });

  it('takes a number at either end of its range, and refuses one beyond with the limits and the reason', () => {
    for (const [name, { range, read }] of argumentsOf(spec)) {
      if (!range) continue;
      const { least, most, unit, whole } = range;
      for (const edge of [least, most])
        expect(read(edge, name), `${name} ${edge}`).toMatchObject({ ok: true });
      const step = whole ? 1 : Math.max(1e-6, Math.abs(most) * 1e-6);
      for (const beyond of [least - step, most + step]) {
        const outcome = read(beyond, name);
        if (outcome.ok) throw new Error(`${spec.name} takes ${beyond} as ${name}`);
        const sentence = wordFault(outcome.fault);
        expect(sentence).toContain(sayValue(least, unit));
        expect(sentence).toContain(sayValue(most, unit));
        expect(sentence).toMatch(/because .{8,}/);
        expect(sentence).toSatisfy(isSentence);
      }
    }
  });

  it('refuses what makes no sense in a sentence', () => {
    const [example] = spec.examples;
    if (!example) throw new Error('no example');
    const good = rawOf(spec, example);
    const fault: CellFault = { fault: 'divided_by_zero', sentence: 'Nothing can be divided by zero.' };
    const odd: readonly RawArgument[] = [
      '?',
      '',
      null,
      true,
      -1,
      1e300,
      fault,
      [],
      [['x', 1]],
      'x'.repeat(500),
    ];
    for (const [index, [name, argument]] of argumentsOf(spec).entries()) {
      for (const value of odd) {
        const outcome = spec.call(good.map((one, place) => (place === index ? value : one)));
        if (outcome.ok) continue;
        expect(wordFault(outcome.fault), `${name} = ${String(value)}`).toSatisfy(isSentence);
      }
      if (argument.usual) continue;
      const without = spec.call(good.map((one, place) => (place === index ? null : one)));
      expect(without, name).toMatchObject({ ok: false, fault: { code: 'missing', argument: name } });
    }
    expect(spec.call([...good, 1])).toMatchObject({ ok: false, fault: { code: 'too_many' } });
  });

  describe.each(spec.examples.map((example) => [example.says, example] as const))('%s', (_says, example) => {
    const given = Object.keys(example.given);

    it('names arguments that there are, and gives what it says', () => {
      expect(Object.keys(spec.arguments)).toEqual(expect.arrayContaining(given));
      const { value, unit } = workedExample(spec, example);
      expect([spec.gives.unit, ...(spec.gives.orUnits ?? [])]).toContain(unit);
      if (typeof example.gives === 'string') return expect(value).toBe(example.gives);
      if (typeof value !== 'number') throw new Error(`${spec.name} gives a text.`);
      expect(Math.abs(value - example.gives), `got ${value}`).toBeLessThanOrEqual(example.tolerance ?? 1e-9);
    });

    it('is worked in steps that end in the result', () => {
      const worked = workedExample(spec, example);
      const steps = worked.steps();
      expect(steps.at(-1)?.value).toBe(worked.value);
      for (const step of steps) {
        expect(step.label).toSatisfy((label: string) => /^[A-Z]/.test(label));
        expect(step.sum).not.toMatch(/undefined|null|NaN|Infinity|\[object/);
        if (typeof step.value === 'number') expect(Number.isFinite(step.value), step.label).toBe(true);
      }
    });

    it('cites sources that there are', () => {
      const worked = workedExample(spec, example);
      expect(worked.sources().length).toBeGreaterThan(0);
      const cited = [...worked.sources(), ...worked.cautions().map((caution) => caution.source)];
      for (const id of [...cited, example.source]) if (id !== undefined) expect(sources).toHaveProperty([id]);
    });

    it('has its cautions in sentences', () => {
      for (const { sentence } of workedExample(spec, example).cautions())
        expect(sentence).toSatisfy(isSentence);
    });

    it('has a drawing that stays in its bounds, with texts that do not overlap', () => {
      const drawing = workedExample(spec, example).drawing();
      if (!drawing) return;
      expect(drawing.describes).toSatisfy(isSentence);
      expect(svgText(drawing)).not.toMatch(/NaN|Infinity|undefined/);
      expect(outsideOf(drawing, drawingWidth)).toEqual([]);
      expect(clashesIn(drawing)).toEqual([]);
    });
  });
});
