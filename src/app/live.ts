import { effect, type ReadonlySignal, signal } from '@preact/signals-core';
import { ask } from './ask.ts';
import { changes, type Topic } from './changes.ts';
import { logId } from './session.ts';

export type Live<T> = ReadonlySignal<T | undefined>;

/**
 * A query of the log on screen that runs again whenever one of its topics changes; undefined until the first answer, and when
 * another log comes on screen. Else the old answer stands until the new one is there. Returns the signal and how to stop.
 */
export const live = <T>(query: () => Promise<T>, topics: readonly Topic[]): [Live<T>, () => void] => {
  const result = signal<T | undefined>(undefined);
  let log = logId.peek();
  let giveUp = (): void => {};
  const stop = effect(() => {
    for (const topic of ['log', ...topics] as const) changes[topic].value;
    if (log !== logId.value) result.value = undefined;
    log = logId.value;
    giveUp();
    giveUp = ask(query, (answer) => {
      result.value = answer;
    });
  });
  return [
    result,
    () => {
      stop();
      giveUp();
    },
  ];
};
