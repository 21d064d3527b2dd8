import { signal } from '@preact/signals-core';
import type { Kind } from '../domain/box/records.ts';
import { asFailure, type FailureReason } from '../storage/failure.ts';

/** What a person was doing, as the message about its failure names it. */
export type Act =
  | Kind
  | ('bore' | 'tenon' | 'set-up' | 'step' | 'pass' | 'trial' | 'seat' | 'close' | 'later' | 'photo')
  | ('draft' | 'settings' | 'log' | 'demo' | 'backup' | 'table' | 'import');

/** Why: what the store, or the network where it is needed, could not do. */
export type Cause = FailureReason | 'no-connection';

/** Something that could not be done and has not been done since. */
export interface Failure {
  readonly act: Act;
  /** What it was done to: the same act on another box is another thing. */
  readonly of: string;
  readonly reason: Cause;
}

/** What failed, oldest first; the shell shows each until the same thing is done after all or it is dismissed. */
export const failures = signal<readonly Failure[]>([]);

const others = (act: Act, of: string): readonly Failure[] =>
  failures.peek().filter((failure) => failure.act !== act || failure.of !== of);

/** Takes a failure off the screen. */
export const dismiss = (act: Act, of: string): void => {
  if (failures.peek().length > 0) failures.value = others(act, of);
};

/** Puts a failure on the screen, in the place of an earlier one of the same act on the same thing. */
export const fail = (act: Act, reason: Cause, of = ''): void => {
  failures.value = [...others(act, of), { act, of, reason }];
};

/**
 * Does what a use case reads and writes. Resolves to undefined when it failed: nothing was saved, and the screen says so
 * until the same act on the same thing succeeds.
 */
export const attempt = async <T>(act: Act, work: () => Promise<T>, of = ''): Promise<T | undefined> => {
  try {
    const value = await work();
    dismiss(act, of);
    return value;
  } catch (error) {
    fail(act, asFailure(error).reason, of);
    return undefined;
  }
};
