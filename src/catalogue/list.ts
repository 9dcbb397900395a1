import type { AnyTradeFunction } from './define.ts';
import { tapeRead } from './tape/read.ts';
import { tapeRound } from './tape/round.ts';
import { tapeWrite } from './tape/write.ts';

/** Every trade function. A function is in the product once it stands here. */
export const tradeFunctions: readonly AnyTradeFunction[] = [tapeRead, tapeWrite, tapeRound];

/** Upper and lower case are alike, as in formulas. */
export function findFunction(name: string): AnyTradeFunction | undefined {
  const wanted = name.toUpperCase();
  return tradeFunctions.find((one) => one.name === wanted);
}
