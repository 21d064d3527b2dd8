import { computed, type ReadonlySignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';

/**
 * What is picked of a signal, as a signal: given to an attribute or a text it changes that alone, and nothing is rendered again.
 * `pick` leans on what it is given, on other signals, and on nothing else that changes while `of` is the same signal.
 */
export const usePicked = <T, R>(of: ReadonlySignal<T>, pick: (value: T) => R): ReadonlySignal<R> =>
  useMemo(() => computed(() => pick(of.value)), [of]);
