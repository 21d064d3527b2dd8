// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { takeUpdate, updateOffered, watchForUpdates } from '../../src/app/updates.ts';
import { countAsOpen } from '../../src/platform/busy.ts';

/** The service worker that waits; `controls` is how it takes over. */
const { controls, Workbox } = vi.hoisted(() => {
  const heard = new Set<() => void>();
  return {
    controls: () => {
      for (const hear of heard) hear();
    },
    Workbox: class {
      addEventListener = (kind: string, hear: () => void) => kind === 'controlling' && heard.add(hear);
      removeEventListener = (_: string, hear: () => void) => heard.delete(hear);
      register = async () => ({ waiting: {}, update: async () => {} });
      messageSkipWaiting = () => {};
    },
  };
});
vi.mock('workbox-window', () => ({ Workbox }));

/** Locks as far as pages use them here: shared ones beside each other, the exclusive one alone. */
const held: { name: string; exclusive: boolean }[] = [];
const locks = {
  request: async (
    name: string,
    { mode = 'exclusive', ifAvailable = false },
    work: (lock: object | null) => Promise<unknown>,
  ) => {
    const lock = { name, exclusive: mode === 'exclusive' };
    const others = held.filter((other) => other.name === name);
    if (ifAvailable && others.some((other) => lock.exclusive || other.exclusive)) return work(null);
    held.push(lock);
    try {
      return await work(lock);
    } finally {
      held.splice(held.indexOf(lock), 1);
    }
  },
  query: async () => ({ held }),
};
const isBusy = () => held.some(({ name }) => name === 'lidwright-busy');
const reload = vi.fn();

beforeEach(async () => {
  held.length = 0;
  reload.mockReset();
  vi.stubGlobal('navigator', { serviceWorker: {}, locks });
  vi.stubGlobal('location', { reload });
  countAsOpen();
  await watchForUpdates();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a waiting version is offered when this is the only page and nothing is open', () => {
  expect(updateOffered.value).toBe(true);
  expect(isBusy()).toBe(false);
});

test('taken, it loads the page again once the new version is in control', async () => {
  const taking = takeUpdate();
  await vi.advanceTimersByTimeAsync(0);
  expect(isBusy()).toBe(true);
  controls();
  await taking;
  expect(reload).toHaveBeenCalledOnce();
});

test('a version that never takes control lets go of the lock after ten seconds, and does not reload later', async () => {
  const taking = takeUpdate();
  await vi.advanceTimersByTimeAsync(9_999);
  expect(isBusy()).toBe(true);
  await vi.advanceTimersByTimeAsync(1);
  await taking;
  expect(isBusy()).toBe(false);
  expect(updateOffered.value).toBe(false);
  controls();
  expect(reload).not.toHaveBeenCalled();
});
