import type { AnyTradeFunction } from './define.ts';

/** Every trade function. A function is in the product once it stands here. */
export const tradeFunctions: readonly AnyTradeFunction[] = [];

/** Upper and lower case are alike, as in formulas. */
export function findFunction(name: string): AnyTradeFunction | undefined {
  const wanted = name.toUpperCase();
  return tradeFunctions.find((one) => one.name === wanted);
}
