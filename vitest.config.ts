import { defineConfig } from 'vitest/config';

/** A loaded machine is slow and not wrong; ms. */
const PATIENCE = { testTimeout: 30_000, hookTimeout: 60_000 };

/** Packages whose tests share nothing that lasts: no process, no file, no socket. They may share a worker. */
const PURE = [
  'clinical',
  'physiology',
  'practice',
  'record',
  'words',
  'exchange',
  'report',
  'api',
  'web',
].map((name) => `packages/${name}/src/**/*.test.ts`);

// Packages of ours are read from their sources, so that a test never sees an old build.
const sources = { resolve: { conditions: ['source'] }, ssr: { resolve: { conditions: ['source'] } } };

export default defineConfig({
  test: {
    // Half of the tests wait for a database or a server: one worker more than the two processors of a small machine.
    maxWorkers: 3,
    projects: [
      {
        ...sources,
        test: {
          ...PATIENCE,
          name: 'pure',
          include: PURE,
          environment: 'node',
          pool: 'threads',
          isolate: false,
        },
      },
      {
        ...sources,
        test: {
          ...PATIENCE,
          name: 'with processes',
          include: ['packages/*/src/**/*.test.{ts,tsx}', 'tools/**/*.test.mjs'],
          exclude: [...PURE, '**/node_modules/**'],
          environment: 'node',
          // In processes that are used again: the program read anew for each file: that took a third of the whole time.
          pool: 'forks',
          isolate: false,
        },
      },
    ],
  },
});
