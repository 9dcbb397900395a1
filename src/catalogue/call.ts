import { done, failed } from '../base/outcome.ts';
import { isFault } from '../base/value.ts';
import type { Arguments, Given, RawArgument } from './argument.ts';
import type { AnyTradeFunction, TradeFunction, Worked } from './define.ts';

/** Seals a spec: from here on it is called with raw cell values, in the order of its arguments. */
export function defineFunction<const A extends Arguments, W>(spec: TradeFunction<A, W>): AnyTradeFunction {
  const names = Object.keys(spec.arguments);
  const call: AnyTradeFunction['call'] = (raw) => {
    if (raw.length > names.length)
      return failed({ code: 'too_many', got: raw.length, allowed: names.length });
    const given: Record<string, unknown> = {};
    const read: Worked['read'][number][] = [];
    for (const [index, argument] of names.entries()) {
      const one = spec.arguments[argument];
      const value: RawArgument = raw[index] ?? null;
      if (!one) continue;
      if (isFault(value)) return failed({ code: 'argument_in_fault', argument, fault: value });
      const isLeftOut = value === null || value === '';
      if (isLeftOut && one.usual === undefined) return failed({ code: 'missing', argument, says: one.says });
      if (isLeftOut) {
        given[argument] = one.usual?.value;
        read.push({ argument, raw: (one.usual?.value ?? null) as RawArgument, isUsual: true }); // usual values are plain
        continue;
      }
      const outcome = one.read(value, argument);
      if (!outcome.ok) return outcome;
      given[argument] = outcome.value;
      read.push({ argument, raw: value, isUsual: false });
    }
    const complete = given as Given<A>; // every name of the spec has been filled above
    const working = spec.work(complete);
    if (!working.ok) return working;
    const steps = () => spec.steps(working.value, complete);
    return done({
      value: withoutMinusZero(spec.result(working.value)),
      unit: spec.unitOf?.(complete) ?? spec.gives.unit,
      read,
      steps,
      drawing: () => spec.drawing?.(working.value, complete) ?? null,
      cautions: () => spec.cautions?.(working.value, complete) ?? [],
      sources: () => [
        ...new Set([...spec.sources, ...steps().flatMap((step) => (step.source ? [step.source] : []))]),
      ],
    });
  };
  return { ...spec, call };
}

/** The engine knows one zero only. */
function withoutMinusZero(value: number | string): number | string {
  return typeof value === 'number' ? value + 0 : value;
}
