import { type CellBlock, type CellValue, isFault } from '../base/value.ts';
import type { AnyTradeFunction, Worked } from '../catalogue/define.ts';
import { findFunction } from '../catalogue/list.ts';
import { sayValue } from '../catalogue/say.ts';
import { type Source, sources } from '../catalogue/sources.ts';
import { wordFault } from '../catalogue/wording.ts';
import { type Call, type Expression, partsOf } from '../formula/expression.ts';
import { showValue } from '../workbook/show.ts';
import type { Ask, Say } from './ask.ts';
import type { Decision, GivenArgument, WorkedCall } from './explanation.ts';

interface Found {
  readonly calls: readonly WorkedCall[];
  readonly decisions: readonly Decision[];
}

/** Goes through a formula as the calculator does, down the ways that were taken, and works every trade function on them
 *  through once more with the values that it was given. Inner functions come before outer ones. */
export async function workThrough(expression: Expression, say: Say, ask: Ask): Promise<Found> {
  if (expression.type === 'call') {
    const choice = await choose(expression, say, ask);
    if (choice) {
      const found = await Promise.all(choice.reached.map((part) => workThrough(part, say, ask)));
      const inside = joined(found);
      return { ...inside, decisions: [...choice.decisions, ...inside.decisions] };
    }
  }
  const inside = joined(await Promise.all(partsOf(expression).map((part) => workThrough(part, say, ask))));
  const spec = expression.type === 'call' ? findFunction(expression.name) : undefined;
  if (expression.type !== 'call' || !spec) return inside;
  return { ...inside, calls: [...inside.calls, await workCall(expression, spec, say, ask)] };
}

/** IF and IFERROR take one way and leave the other: only what was reached is explained. */
async function choose(
  call: Call,
  say: Say,
  ask: Ask,
): Promise<{ readonly reached: readonly Expression[]; readonly decisions: readonly Decision[] } | null> {
  const [first, second, third] = call.arguments;
  if (!first || first.type === 'missing') return null;
  if (call.name === 'IF') {
    const [condition = null] = await ask([first]);
    if (Array.isArray(condition) || isFault(condition)) return { reached: [first], decisions: [] };
    const holds = condition !== '' && Boolean(condition);
    const taken = holds ? second : third;
    return {
      reached: [first, ...(taken && taken.type !== 'missing' ? [taken] : [])],
      decisions: isEmptyAsked(first) && !holds ? [] : [{ condition: say(first), holds }],
    };
  }
  if (call.name === 'IFERROR') {
    const [value = null] = await ask([first]);
    const hasFigure = !isFault(value);
    const taken = hasFigure ? first : second;
    return {
      reached: taken && taken.type !== 'missing' ? [taken] : [],
      decisions: hasFigure ? [] : [{ condition: `${say(first)} has a figure`, holds: false }],
    };
  }
  return null;
}

/** `A2=""` stands before most formulas of a sheet with lines to spare; that it does not hold says nothing. */
function isEmptyAsked(condition: Expression): boolean {
  return (
    condition.type === 'binary' &&
    condition.operator === '=' &&
    condition.right.type === 'text' &&
    condition.right.value === ''
  );
}

async function workCall(call: Call, spec: AnyTradeFunction, say: Say, ask: Ask): Promise<WorkedCall> {
  const written = call.arguments.flatMap((one) => (one.type === 'missing' ? [] : [one]));
  const values = await ask(written);
  const raw = call.arguments.map((one) =>
    one.type === 'missing' ? null : (values[written.indexOf(one)] ?? null),
  );
  const outcome = spec.call(raw);
  const texts = call.arguments.map((one) => (one.type === 'missing' ? '' : say(one)));
  return {
    name: spec.name,
    says: spec.says,
    given: givenArguments(spec, texts, raw, outcome.ok ? outcome.value : null),
    fault: outcome.ok ? null : { fault: 'trade', sentence: wordFault(outcome.fault) },
    steps: outcome.ok ? outcome.value.steps() : [],
    drawing: outcome.ok ? outcome.value.drawing() : null,
    cautions: outcome.ok ? outcome.value.cautions() : [],
    sources: (outcome.ok ? outcome.value.sources() : spec.sources).map((id): Source => sources[id]),
  };
}

function givenArguments(
  spec: AnyTradeFunction,
  texts: readonly string[],
  raw: readonly (CellValue | CellBlock)[],
  worked: Worked | null,
): readonly GivenArgument[] {
  return Object.entries(spec.arguments).map(([argument, about], index) => {
    const read = worked?.read.find((one) => one.argument === argument);
    const isUsual = read?.isUsual ?? false;
    return {
      argument,
      says: about.says,
      written: texts[index] ?? '',
      value: textOf(read ? read.raw : (raw[index] ?? null), about.range?.unit),
      usually: isUsual ? (about.usual?.why ?? '') : null,
    };
  });
}

function textOf(value: CellValue | CellBlock, unit: Parameters<typeof sayValue>[1] | undefined): string {
  if (isBlock(value)) return `a table of ${Math.max(0, value.length - 1)} rows`;
  if (typeof value === 'number' && unit) return sayValue(value, unit);
  return isFault(value) ? value.sentence : showValue(value).text;
}

function isBlock(value: CellValue | CellBlock): value is CellBlock {
  return Array.isArray(value);
}

function joined(found: readonly Found[]): Found {
  return {
    calls: found.flatMap((one) => one.calls),
    decisions: found.flatMap((one) => one.decisions),
  };
}
