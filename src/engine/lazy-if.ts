type Method = (...given: unknown[]) => unknown;

/** The parts of a formula as the engine keeps them; only their kind matters here. */
interface Part {
  readonly type: string;
}

interface Evaluating {
  readonly evaluateAst: (part: Part, state: unknown) => unknown;
}

const nothing: Part & { readonly [key: string]: unknown } = { type: 'EMPTY' };

/** IF without the way that is not taken. The engine works out both ways and throws one away, so that every blank line of
 *  a form would cost as much as a full one. Where the condition is anything but plainly true or false, all is as before. */
export function takingOneWay(original: Method): Method {
  return function oneWay(this: Evaluating, ...given: unknown[]): unknown {
    const [formula, state] = given as [{ readonly args: readonly Part[] }, unknown]; // as the engine calls its methods
    const [condition, ...ways] = formula.args;
    if (!condition || ways.length === 0 || ways.length > 2) return original.apply(this, given);
    const met = this.evaluateAst(condition, state);
    if (typeof met !== 'boolean') return original.apply(this, given);
    const decided = { type: 'NUMBER', value: met ? 1 : 0 };
    const taken = met ? 0 : 1;
    const args = [decided, ...ways.map((way, at) => (at === taken ? way : nothing))];
    return original.call(this, { ...formula, args }, state);
  };
}
