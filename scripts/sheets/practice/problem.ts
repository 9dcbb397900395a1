import type { Cell } from '../../../src/workbook/document.ts';

/** A problem that marks itself. In its formulas `a`, `b` and `c` are its numbers and `answer` is what was answered, each
 *  put between braces: `PI()*{a}`. */
export interface Problem {
  /** Its numbers, from the number of the apprentice: `6+set`. */
  readonly numbers: readonly string[];
  /** The problem in words, with its numbers in it. */
  readonly asks: string;
  readonly answer: Partial<Omit<Cell, 'content'>>;
  readonly least: number;
  readonly most: number;
  /** What is right. */
  readonly key: string;
  /** How far an answer may lie from it. */
  readonly within: number;
  /** Slips that are often made, each with what to think of. */
  readonly slips: readonly (readonly [formula: string, hint: string])[];
  /** What any other answer is told. */
  readonly hint: string;
  /** How it is worked, told when the answer is right. */
  readonly how: string;
}

export interface Topic {
  readonly id: string;
  readonly name: string;
  readonly says: string;
  readonly problems: readonly Problem[];
}
