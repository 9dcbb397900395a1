import { areaDuct } from './area/duct.ts';
import { blankLengthways } from './blank/length.ts';
import { blankRectangular } from './blank/rectangular.ts';
import { blankRound } from './blank/round.ts';
import type { AnyTradeFunction } from './define.ts';
import { gaugeThickness } from './gauge/thickness.ts';
import { gaugeWeight } from './gauge/weight.ts';
import { tapeRead } from './tape/read.ts';
import { tapeRound } from './tape/round.ts';
import { tapeWrite } from './tape/write.ts';
import { weightBlank } from './weight/blank.ts';
import { weightDuct } from './weight/duct.ts';

/** Every trade function. A function is in the product once it stands here. */
export const tradeFunctions: readonly AnyTradeFunction[] = [
  blankRound,
  blankRectangular,
  blankLengthways,
  areaDuct,
  weightDuct,
  weightBlank,
  gaugeThickness,
  gaugeWeight,
  tapeRead,
  tapeWrite,
  tapeRound,
];

/** Upper and lower case are alike, as in formulas. */
export function findFunction(name: string): AnyTradeFunction | undefined {
  const wanted = name.toUpperCase();
  return tradeFunctions.find((one) => one.name === wanted);
}
