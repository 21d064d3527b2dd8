import { afterAll, afterEach, beforeEach } from 'vitest';
import { openedSoFar, undoDownTo } from '../tools/opened.mjs';

// Runs with every browser test file, and last of its hooks: what a test opened ends with the test, what the file opened with the
// file, whether they passed or failed.
let before = 0;
beforeEach(() => {
  before = openedSoFar();
});
afterEach(() => undoDownTo(before));
afterAll(() => undoDownTo(0));
