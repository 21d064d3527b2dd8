import { defineConfig } from 'vitest/config';

/** A short run in the other engines. An engine that is not installed is a skipped test, and in CI a failure. */
export default defineConfig({
  root: new URL('../../..', import.meta.url).pathname,
  test: {
    environment: 'node',
    include: ['tests/browser/engines/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 180_000,
    hookTimeout: 60_000,
  },
});
