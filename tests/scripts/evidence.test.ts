import { describe, expect, it } from 'vitest';
import { evidenceIn, kindOf } from '../../scripts/evidence/evidence.ts';

describe('what a figure rests on is told by its status', () => {
  it.each([
    ['read at source', 'published'],
    ['computed here; table read at source', 'exact'],
    ['quoted by a secondary source', 'quoted'],
    ['computed here; inputs from memory, not verified', 'from memory'],
    ['exact formula, worked here', 'exact'],
    ['run here', 'exact'],
    ['read in a third-party copy of the standard', 'quoted'],
    ['common practice, no source', 'common practice'],
  ])('%s', (status, kind) => {
    expect(kindOf(status)).toBe(kind);
  });
});

it('words that say nothing of it are not taken for a published figure', () => {
  expect(() => kindOf('as the row above')).toThrow('does not say what the figure rests on');
});

it('rows are counted by their file, and other tests are not', () => {
  const fullName = 'figures of insulation-checks.csv RV-02: R (t=2) is 5.6 - data sheet [read at source]';
  const report = {
    testResults: [
      {
        name: 'tests/published/insulation.test.ts',
        status: 'passed' as const,
        assertionResults: [
          { fullName, status: 'passed' },
          { fullName: 'figures of insulation-checks.csv each has a proof', status: 'passed' },
        ],
      },
    ],
  };
  expect(evidenceIn(report)).toEqual([
    { name: fullName, group: 'insulation', kind: 'published', holds: true },
  ]);
});
