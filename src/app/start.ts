import { signal } from '@preact/signals-core';
import { withoutStorage } from '../storage/connection.ts';
import { followOtherTabs } from './changes.ts';
import { followDevice, openSession } from './session.ts';

/** The first screen waits no longer for the store; it then says itself what it waits for. */
const FIRST_SCREEN_MS = 1_000;

/** What is entered is kept in memory alone and lost with the page. */
export const isInMemory = signal(false);

/** Reads what this device remembers and follows the other tabs. Resolves when the first screen may be shown, answered or not. */
export const start = async (): Promise<void> => {
  withoutStorage(async () => {
    await import('../storage/in-memory.ts');
    isInMemory.value = true;
  });
  followOtherTabs();
  followDevice();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const enough = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, FIRST_SCREEN_MS);
  });
  await Promise.race([openSession(), enough]);
  clearTimeout(timer);
};
