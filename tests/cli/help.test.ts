import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { stretchout, timeout } from './run.ts';

describe('stretchout', { timeout }, () => {
  test.each([['--help'], ['-h'], []])('%s tells of every command', async (...words) => {
    const { exit, out } = await stretchout(...words);
    expect(exit).toBe(0);
    for (const form of ["figure '=FORMULA' [--in FILE [--sheet NAME]]", 'check FILE', 'takeoff FILE']) {
      expect(out).toContain(`stretchout ${form}\n`);
    }
    expect(out).toContain('the usual allowances of the');
  });

  test('a command tells of itself alone', async () => {
    const { exit, out } = await stretchout('takeoff', '--help');
    expect(exit).toBe(0);
    expect(out).toContain('named “order”');
    expect(out).not.toContain('stretchout check FILE');
  });

  test.each([
    ['fold', 'There is no command “fold”. The commands are figure, check, takeoff, compare, lots, new;'],
    ['--loud', 'There is no flag “--loud”.'],
    ['', 'There is no command “”.'],
  ])('“%s” is no command', async (word, says) => {
    const { exit, out, error } = await stretchout(word);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(error.replace(/\s+/g, ' ')).toContain(says);
  });

  test('whoever stops reading early gets no fault', () => {
    const root = fileURLToPath(new URL('../..', import.meta.url));
    const line = 'node bin/stretchout.js check sheets/demo.job.stretchout.json | head -1';
    expect(execFileSync('bash', ['-o', 'pipefail', '-c', line], { cwd: root, encoding: 'utf8' })).toBe(
      'Larkspur Lane, lot 7\n',
    );
  });
});
