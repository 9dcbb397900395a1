/** A program that may turn out to be a Chromium. */
export interface Candidate {
  readonly path: string;
  /** What it needs beside the usual environment, such as the place of its own libraries. */
  readonly env: Readonly<Record<string, string>>;
}

/** Candidates, the best first, or the sentence why this way has none. */
export type Way = (say: (line: string) => void) => Promise<readonly Candidate[] | string>;
