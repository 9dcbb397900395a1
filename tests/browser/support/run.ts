import { spawn } from 'node:child_process';

/** Runs a program to its end. Null when it went well, else the end of what it said. */
export async function run(
  command: string,
  args: readonly string[],
  options: { readonly cwd?: string; readonly env?: Readonly<Record<string, string>> } = {},
): Promise<string | null> {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      ...(options.cwd === undefined ? {} : { cwd: options.cwd }),
      env: { ...process.env, ...options.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    const hear = (words: Buffer) => {
      said = (said + words.toString()).slice(-1000);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', (fault) => resolve(fault.message));
    child.on('close', (code) => resolve(code === 0 ? null : `${command} ended with ${code}: ${said.trim()}`));
  });
}
