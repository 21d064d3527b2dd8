import { defineConfig } from 'vitest/config';

/** Browser tests drive the built app in real browsers, one at a time: they share two cores with the browsers. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    environment: 'node',
    setupFiles: ['tests/browser/undo-opened.ts'],
    include: ['tests/browser/*.test.ts', 'tests/faults/*.test.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
