import type { Answer } from './answer.ts';

/** One command of the command line. */
export interface Command {
  readonly name: string;
  /** How it is written: `check FILE`. */
  readonly form: string;
  /** What it does, for the overview: one sentence. */
  readonly says: string;
  /** The rest of its help, a paragraph each. */
  readonly tells: readonly string[];
  readonly run: (words: readonly string[]) => Promise<Answer>;
}
