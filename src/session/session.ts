import type { CellAddress } from '../base/address.ts';
import type { Outcome } from '../base/outcome.ts';
import type { Calculator } from '../engine/calculator.ts';
import type { Command } from '../workbook/commands.ts';
import type { KeptWorkbook } from '../workbook/file.ts';
import type { Explanation } from './explanation.ts';
import type { Journal } from './journal.ts';
import type { SessionState } from './state.ts';

/** One open workbook: commands in, states out, workings on demand. */
export interface Session {
  getState(): SessionState;
  subscribe(listener: () => void): () => void;
  /** Carries a command out, or says in a sentence why not; then nothing has changed. */
  run(command: Command): Outcome<null, string>;
  /** Takes the last deed back; gives its name, or null where there is none. */
  undo(): string | null;
  redo(): string | null;
  /** How an entry would be read, while it is being typed: `12′ 4 ½″`, or why not. Null where there is nothing to say. */
  preview(sheetId: string, address: CellAddress, typed: string): Outcome<string, string> | null;
  explain(sheetId: string, address: CellAddress): Promise<Explanation>;
  /** Puts another workbook in place of the open one; its undo history starts empty. */
  replace(kept: KeptWorkbook): void;
  /** The open workbook as it goes into a file. */
  kept(): KeptWorkbook;
  /** Ready when every figure on the screen comes from the engine and everything stands on disk. */
  settled(): Promise<void>;
  close(): Promise<void>;
}

export interface SessionParts {
  readonly kept: KeptWorkbook;
  /** May still be loading; the workbook can be read and edited meanwhile. */
  readonly calculator: Promise<Calculator>;
  readonly journal?: Journal;
  readonly isReadOnly?: boolean;
}

export declare function createSession(parts: SessionParts): Session;
