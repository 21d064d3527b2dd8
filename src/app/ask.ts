import { signal } from '@preact/signals-core';
import { forget } from '../storage/connection.ts';
import { asFailure, type FailureReason } from '../storage/failure.ts';

/** So long a query may take before the screen says what is waited for, and the connection is taken for dead. */
const LATE_MS = 1_000;
/** So long until a way out is offered. */
const STUCK_MS = 10_000;
/** Between one failed try and the next. */
const AGAIN_MS = 1_000;

/** A query without an answer yet, when that takes longer than it should. */
interface Late {
  readonly isStuck: boolean;
  /** Why its last try failed; null when it simply did not answer. */
  readonly reason: FailureReason | null;
}

/** What the screen waits for. */
export const late = signal<readonly Late[]>([]);

/**
 * Asks until there is an answer, and hands it over once. A query that fails or does not answer in time is asked again with a new
 * connection, however long it takes; `late` says so meanwhile. Returns how to give up.
 */
export const ask = <T>(query: () => Promise<T>, take: (answer: T) => void): (() => void) => {
  let mine: Late | undefined;
  let reason: FailureReason | null = null;
  let isOver = false;
  let again: ReturnType<typeof setTimeout> | undefined;

  const show = (next: Late | undefined): void => {
    late.value = [...late.peek().filter((other) => other !== mine), ...(next ? [next] : [])];
    mine = next;
  };
  const end = (): void => {
    isOver = true;
    for (const timer of [again, toLate, toStuck]) clearTimeout(timer);
    if (mine) show(undefined);
  };
  const tryIt = (): void => {
    query().then(
      (answer) => {
        if (isOver) return;
        end();
        take(answer);
      },
      (error: unknown) => {
        if (isOver) return;
        reason = asFailure(error).reason;
        if (!mine) return;
        show({ ...mine, reason });
        clearTimeout(again);
        again = setTimeout(tryIt, AGAIN_MS);
      },
    );
  };
  const toLate = setTimeout(() => {
    // Several queries of one page wait for the same connection; one of them drops it.
    if (late.peek().length === 0) forget();
    show({ isStuck: false, reason });
    tryIt();
  }, LATE_MS);
  const toStuck = setTimeout(() => show({ isStuck: true, reason }), STUCK_MS);
  tryIt();
  return end;
};
