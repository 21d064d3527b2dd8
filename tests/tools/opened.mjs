// What tests and tools open or make, each with how it is undone, so that nothing is left when they are done.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Newest last. Undoing twice does no harm. */
const undoings = [];
const folders = new Set();

export const undoLater = (undo) => {
  undoings.push(undo);
};

/** How much has been opened so far: what `undoDownTo` goes back to. */
export const openedSoFar = () => undoings.length;

/** Undoes what was opened since, newest first; one failure does not keep the rest open. */
export const undoDownTo = async (mark) => {
  const errors = [];
  while (undoings.length > mark) {
    try {
      await undoings.pop()();
    } catch (error) {
      errors.push(error);
    }
  }
  if (errors.length > 0) throw new AggregateError(errors, 'could not be closed or removed');
};

// A browser that has just ended may still be writing its last file.
const remove = (folder) => {
  rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  folders.delete(folder);
};
// For the tools, which no test runner tidies up after.
process.on('exit', () => folders.forEach(remove));

/** A folder in the temporary one, removed with whatever else was opened. */
export const tempFolder = (name) => {
  const folder = mkdtempSync(join(tmpdir(), `lidwright-${name}-`));
  folders.add(folder);
  undoLater(() => remove(folder));
  return folder;
};
