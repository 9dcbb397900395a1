/** Numbers of the terms that `word.ts` hands out. Generated from `formula.grammar` by `npm run grammar`. */
export declare const cell: number;
export declare const truth: number;
