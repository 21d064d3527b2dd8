import { defineConfig } from 'vitest/config';

/** A short run in the other engines. One that is not installed fails. */
export default defineConfig({
  root: new URL('../../..', import.meta.url).pathname,
  test: {
    environment: 'node',
    setupFiles: ['tests/browser/undo-opened.ts'],
    include: ['tests/browser/engines/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 180_000,
    hookTimeout: 60_000,
  },
});
