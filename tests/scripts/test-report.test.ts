import { describe, expect, test } from 'vitest';
import { count, faults, type TestReport } from '../../scripts/test-report.ts';

function file(name: string, statuses: readonly string[], status: 'passed' | 'failed' = 'passed') {
  return {
    name,
    status,
    assertionResults: statuses.map((each, index) => ({ fullName: `test ${index}`, status: each })),
  };
}

const good: TestReport = {
  testResults: [
    file('/p/tests/trade/a.test.ts', ['passed', 'passed']),
    file('/p/tests/browser/b.test.ts', ['passed']),
  ],
};

describe('the closing count', () => {
  test('adds up every file', () => {
    expect(count(good)).toEqual({ passed: 3, failed: 0, skipped: 0 });
  });

  test('counts a file that does not load as one failed test', () => {
    expect(count({ testResults: [file('/p/tests/a.test.ts', [], 'failed')] })).toEqual({
      passed: 0,
      failed: 1,
      skipped: 0,
    });
  });

  test('counts a failing file once for each failed test', () => {
    expect(
      count({ testResults: [file('/p/tests/a.test.ts', ['failed', 'passed', 'todo'], 'failed')] }),
    ).toEqual({
      passed: 1,
      failed: 1,
      skipped: 1,
    });
  });
});

describe('what makes a run bad though no test failed', () => {
  test('nothing, when all ran and the page was among it', () => {
    expect(faults(good, { whole: true })).toEqual([]);
  });

  test.each(['skipped', 'pending', 'todo'])('a test that is %s', (status) => {
    const report = { testResults: [...good.testResults, file('/p/tests/c.test.ts', [status])] };
    expect(faults(report, { whole: true })).toEqual([
      'No test may be skipped or left to do. Finish or delete: test 0 (/p/tests/c.test.ts).',
    ]);
  });

  test('no test in a browser', () => {
    const report = { testResults: good.testResults.slice(0, 1) };
    expect(faults(report, { whole: true })).toEqual([
      'No test ran in a browser, so the page was not tested.',
    ]);
  });

  test('neither of these when only a part was asked for', () => {
    expect(faults({ testResults: [file('/p/tests/c.test.ts', ['skipped'])] }, { whole: false })).toEqual([]);
  });
});
