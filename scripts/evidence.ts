import { spawn } from 'node:child_process';
import { mkdir, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { tradeFunctions } from '../src/catalogue/list.ts';
import { type EvidenceTest, evidenceIn, kinds, untestedFigures } from './evidence/evidence.ts';
import { readReport } from './test-report.ts';

/** Runs the tests that hold our figures against others', and counts what they rest on. */
const root = fileURLToPath(new URL('..', import.meta.url));
const report = `${root}.cache/evidence.json`;

await mkdir(`${root}.cache`, { recursive: true });
await rm(report, { force: true });
const code = await new Promise<number | null>((resolve) => {
  spawn(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      'tests/published',
      '--project=unit',
      '--reporter=json',
      `--outputFile=${report}`,
    ],
    { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] },
  ).on('close', resolve);
});
const results = await readReport(report);
if (results === null) {
  console.error('The tests ended without a report, so nothing can be said of the figures.');
  process.exit(1);
}
const tests = evidenceIn(results);
print('Figures held against others, by what they rest on', tests);
const untested = untestedFigures(tradeFunctions);
console.log(
  untested.length === 0
    ? '\nEvery cited figure of an example has its test.'
    : `\nCited, but with no example that a test runs:\n${untested.map((one) => `  ${one}`).join('\n')}`,
);
process.exitCode = code === 0 ? 0 : 1;

function print(title: string, all: readonly EvidenceTest[]): void {
  const groups = [...new Set(all.map((test) => test.group))].sort();
  const width = Math.max(...groups.map((group) => group.length), 5);
  console.log(`${title}\n`);
  console.log(`  ${''.padEnd(width)}  ${kinds.map((kind) => kind.padStart(16)).join('')}`);
  for (const group of [...groups, 'all']) {
    const own = group === 'all' ? all : all.filter((test) => test.group === group);
    const counts = kinds.map((kind) => String(own.filter((test) => test.kind === kind).length).padStart(16));
    console.log(`  ${group.padEnd(width)}  ${counts.join('')}`);
  }
  const failed = all.filter((test) => !test.holds);
  for (const test of failed) console.log(`  does not hold: ${test.name}`);
}
