import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import { asFailure } from '../storage/failure.ts';
import { changes, type Topic } from './changes.ts';
import { failure } from './failure.ts';

export type Live<T> = ReadonlySignal<T | undefined>;

/**
 * A query that runs again whenever one of its topics changes or a signal it reads does; undefined until the first answer.
 * The old value stays on screen meanwhile. Returns the signal and how to stop.
 */
export const live = <T>(query: () => Promise<T>, topics: readonly Topic[]): [Live<T>, () => void] => {
  const result = signal<T | undefined>(undefined);
  let latest = 0;
  const stop = effect(() => {
    for (const topic of topics) changes[topic].value;
    latest += 1;
    const mine = latest;
    query().then(
      (value) => {
        if (mine === latest) result.value = value;
      },
      (error: unknown) => {
        failure.value = asFailure(error).reason;
      },
    );
  });
  return [result, stop];
};
