import { defineConfig } from 'vitest/config';

export default defineConfig({
  // Packages of ours are read from their sources, so that a test never sees an old build.
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    include: ['packages/*/src/**/*.test.{ts,tsx}', 'tools/**/*.test.mjs'],
    environment: 'node',
  },
});
