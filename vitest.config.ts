import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    allowOnly: false,
    retry: 0,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          environment: 'node',
          setupFiles: 'tests/fixed-seed.ts',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/bench/**'],
          // Nothing here is a measure of speed: a machine with other work takes several times as long.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/support/global-setup.ts',
          fileParallelism: false,
          maxWorkers: 1,
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // After the unit tests, so that the page does not fight them for the processor.
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
