import type { LRParser } from '@lezer/lr';

/** Generated from `formula.grammar` by `npm run grammar`. */
export declare const parser: LRParser;
