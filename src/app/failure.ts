import { signal } from '@preact/signals-core';
import { asFailure, type FailureReason } from '../storage/failure.ts';

/** What the store last could not do; the shell shows it until it is dismissed or a write succeeds. */
export const failure = signal<FailureReason | null>(null);

/** Runs a write and remembers why it failed. Resolves to undefined on failure: nothing was saved, and the screen says so. */
export const attempt = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
  try {
    const value = await work();
    failure.value = null;
    return value;
  } catch (error) {
    failure.value = asFailure(error).reason;
    return undefined;
  }
};
