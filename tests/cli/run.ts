import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'stretchout-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Each run starts a program, which takes its time on a busy machine. */
export const timeout = 60_000;

export interface Run {
  readonly exit: number;
  readonly out: string;
  readonly error: string;
}

/** Runs the real program, in a process of its own, as a shell would. */
export function stretchout(...words: readonly string[]): Promise<Run> {
  return new Promise((done) => {
    execFile(
      process.execPath,
      [join(root, 'bin/stretchout.js'), ...words],
      { cwd: root },
      (failure, out, error) => {
        done({ exit: typeof failure?.code === 'number' ? failure.code : failure ? -1 : 0, out, error });
      },
    );
  });
}

export const demo = 'sheets/demo.job.stretchout.json';

export function demoText(): string {
  return readFileSync(join(root, demo), 'utf8');
}

/** The demo as plain data, to be changed at will. */
export function demoData() {
  return JSON.parse(demoText());
}

/** A file in a folder of its own; gives its path. */
export function fileWith(name: string, content: string | object): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}
