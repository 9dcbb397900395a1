/** The result of something that is expected to fail now and then: a value, or a fault that carries data. */
export type Outcome<T, F> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: F };

export function done<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function failed<F>(fault: F): { readonly ok: false; readonly fault: F } {
  return { ok: false, fault };
}

/** Ends a `switch` over a union: the compiler refuses the call while a case is missing. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
