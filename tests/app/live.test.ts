// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
// Components follow signals.
import '@preact/signals';
import { cleanup, renderHook, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ask, late } from '../../src/app/ask.ts';
import { boxById, changeBox } from '../../src/app/boxes.ts';
import { live } from '../../src/app/live.ts';
import { logId } from '../../src/app/session.ts';
import { startBox } from '../../src/app/start-box.ts';
import * as connections from '../../src/storage/connection.ts';
import { useLive } from '../../src/ui/parts/use-live.ts';
import { freshPhone, openNever, PLAN } from './faulty-store.ts';

beforeEach(async () => {
  late.value = [];
  await freshPhone();
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.restoreAllMocks();
  logId.value = 'mine';
});

const clockOnly = () => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
const boxName = async (id: string) => (await boxById(id))?.box.name;

describe('asking', () => {
  test('an answer in time is handed over once, and nothing is said', async () => {
    const take = vi.fn();
    ask(async () => 7, take);
    await vi.waitFor(() => expect(take).toHaveBeenCalledWith(7));
    expect(late.value).toEqual([]);
  });

  test('without an answer: said after one second, asked again, a way out after ten; then the answer', async () => {
    clockOnly();
    const take = vi.fn();
    const query = vi.fn(() => new Promise<number>(() => {}));
    const giveUp = ask(query, take);
    await vi.advanceTimersByTimeAsync(999);
    expect(late.value).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(late.value).toEqual([{ isStuck: false, reason: null }]);
    expect(query).toHaveBeenCalledTimes(2);
    await vi.advanceTimersByTimeAsync(9_000);
    expect(late.value).toEqual([{ isStuck: true, reason: null }]);
    expect(take).not.toHaveBeenCalled();
    giveUp();
  });

  test('a query that fails is asked again until it answers, and the reason is said meanwhile', async () => {
    clockOnly();
    const take = vi.fn();
    let tries = 0;
    ask(async () => {
      tries += 1;
      if (tries < 4) throw new DOMException('full', 'QuotaExceededError');
      return tries;
    }, take);
    await vi.advanceTimersByTimeAsync(1_000);
    expect(late.value).toEqual([{ isStuck: false, reason: 'full' }]);
    await vi.advanceTimersByTimeAsync(2_000);
    expect(take.mock.calls).toEqual([[4]]);
    expect(late.value).toEqual([]);
  });

  test('given up, it says and does nothing more', async () => {
    clockOnly();
    const take = vi.fn();
    const query = vi.fn(() => new Promise<number>(() => {}));
    const giveUp = ask(query, take);
    await vi.advanceTimersByTimeAsync(1_000);
    giveUp();
    expect(late.value).toEqual([]);
    await vi.advanceTimersByTimeAsync(20_000);
    expect(late.value).toEqual([]);
    expect(query).toHaveBeenCalledTimes(2);
  });

  test('an open that is never answered is followed by a new one, and the box comes', async () => {
    clockOnly();
    connections.forget();
    openNever();
    const take = vi.fn();
    ask(() => boxName('box-1'), take);
    await vi.advanceTimersByTimeAsync(900);
    expect(take).not.toHaveBeenCalled();
    vi.mocked(indexedDB.open).mockRestore();
    await vi.advanceTimersByTimeAsync(100);
    await vi.waitFor(() => expect(take).toHaveBeenCalledWith(''));
  });
});

describe('a live query', () => {
  test('is asked again when its topic changes, and not after it was stopped', async () => {
    const [result, stop] = live(() => boxName('box-1'), ['box']);
    await vi.waitFor(() => expect(result.value).toBe(''));
    await changeBox('box-1', (box) => ({ ...box, name: 'one' }));
    await vi.waitFor(() => expect(result.value).toBe('one'));
    stop();
    await changeBox('box-1', (box) => ({ ...box, name: 'two' }));
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(result.value).toBe('one');
  });

  test('another log on screen: the old answer goes at once, without a topic or a key', async () => {
    const [result, stop] = live(async () => boxById('box-1'), []);
    await vi.waitFor(() => expect(result.value?.id).toBe('box-1'));
    logId.value = 'demo';
    expect(result.value).toBeUndefined();
    await vi.waitFor(() => expect(result.value).toBeNull());
    stop();
  });

  test('its arguments are its identity: never the answer for another box', async () => {
    await startBox('box-2', PLAN, undefined, 'second');
    const { result, rerender } = renderHook(({ id }) => useLive(boxName, ['box'], id).value, {
      initialProps: { id: 'box-1' },
    });
    await waitFor(() => expect(result.current).toBe(''));
    rerender({ id: 'box-2' });
    expect(result.current).toBeUndefined();
    await waitFor(() => expect(result.current).toBe('second'));
  });

  test('a load made while rendering comes to no answer: it is noticed at once', async () => {
    const { result } = renderHook(() => useLive(() => boxName('box-1'), ['box']).value);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(result.current).toBeUndefined();
  });
});
