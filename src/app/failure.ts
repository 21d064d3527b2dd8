import { signal } from '@preact/signals-core';
import { asFailure, type FailureReason } from '../storage/failure.ts';

/** What the store, or the network where it is needed, could not do. */
export type Failure = FailureReason | 'no-demo';

/** What last could not be done; the shell shows it until it is dismissed or a write succeeds. */
export const failure = signal<Failure | null>(null);

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
