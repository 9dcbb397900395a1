import { spawn } from 'node:child_process';
import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { count, faults, readReport } from './test-report.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const report = `${root}.cache/vitest.json`;

/** What was typed after `npm test --`, for vitest: a folder, a file, `-t` and part of a name. */
const asked = process.argv.slice(2);

async function test(): Promise<void> {
  await step('Types', 'npm', ['run', '--silent', 'check']);
  await step('Lint', 'npm', ['run', '--silent', 'lint']);

  await rm(report, { force: true });
  const code = await run(process.execPath, [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...asked,
  ]);
  const results = await readReport(report);
  if (results === null) stop('The tests ended without a report, so nothing can be said of them.');
  const counts = count(results);
  const wrong = faults(results, { whole: asked.length === 0 });
  for (const sentence of wrong) console.error(sentence);
  if (code !== 0 && counts.failed === 0) console.error(`vitest ended with ${code}; its words are above.`);
  console.log(`\n${counts.passed} passed, ${counts.failed} failed`);
  console.log(`Stretchout: ${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  process.exitCode = code !== 0 || wrong.length > 0 || counts.failed > 0 ? 1 : 0;
}

async function step(name: string, command: string, args: readonly string[]): Promise<void> {
  console.log(`${name} ...`);
  const code = await run(command, args);
  if (code !== 0) stop(`${name} failed, so no test was run.`);
}

/** The exit code of a program that writes straight to this terminal. */
function run(command: string, args: readonly string[]): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      stdio: 'inherit',
      // npm is a batch file there, which only a shell can start.
      shell: process.platform === 'win32' && command === 'npm',
    });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

function stop(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

await test();
