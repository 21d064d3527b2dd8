// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { late } from '../../src/app/ask.ts';
import { failures } from '../../src/app/failure.ts';
import { changeSettings, logId, openSession, settings, showLog, writer } from '../../src/app/session.ts';
import { start } from '../../src/app/start.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/domain/log/settings.ts';
import { forget } from '../../src/storage/connection.ts';
import { getDevice, putDevice } from '../../src/storage/device.ts';
import { DEVICE_KEYS } from '../../src/storage/names.ts';
import { loseStore, openNever } from './faulty-store.ts';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  failures.value = [];
  settings.value = DEFAULT_SETTINGS;
  logId.value = 'mine';
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

const stored = () => getDevice<Settings>(DEVICE_KEYS.settings);
/** As another tab of the same phone would. */
const elsewhere = (topic: string) => {
  const channel = new BroadcastChannel('lidwright');
  channel.postMessage({ topic });
  channel.close();
};

describe('starting', () => {
  test('what this phone remembers is there before the first screen', async () => {
    await putDevice(DEVICE_KEYS.settings, { ...DEFAULT_SETTINGS, unit: 'in' });
    await putDevice(DEVICE_KEYS.writer, 'phone-a');
    await putDevice(DEVICE_KEYS.currentLog, 'demo');
    await start();
    expect([settings.value.unit, writer.value, logId.value]).toEqual(['in', 'phone-a', 'demo']);
  });

  test('a store that does not open holds the first screen up for a second and no longer; its answer still counts', async () => {
    await putDevice(DEVICE_KEYS.settings, { ...DEFAULT_SETTINGS, unit: 'in' });
    settings.value = { ...DEFAULT_SETTINGS, unit: 'mm' };
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    forget();
    openNever();
    const started = vi.fn();
    start().then(started);
    await vi.advanceTimersByTimeAsync(999);
    expect(started).not.toHaveBeenCalled();
    vi.mocked(indexedDB.open).mockRestore();
    await vi.advanceTimersByTimeAsync(1);
    expect(started).toHaveBeenCalled();
    await vi.waitFor(() => expect(settings.value.unit).toBe('in'));
    expect(late.value).toEqual([]);
  });

  test('a store that keeps failing: the screen stands, and says what it waits for', async () => {
    await putDevice(DEVICE_KEYS.currentLog, 'mine');
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    loseStore();
    const started = vi.fn();
    start().then(started);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(started).toHaveBeenCalled();
    expect(late.value).toEqual([{ isStuck: true, reason: 'lost' }]);
    vi.restoreAllMocks();
    await vi.advanceTimersByTimeAsync(1_000);
    await vi.waitFor(() => expect(late.value).toEqual([]));
  });
});

describe('what belongs to the phone', () => {
  test('a second tab puts back none of the settings that the first changed', async () => {
    await openSession();
    await changeSettings({ unit: 'in' });
    // The other tab, which read the settings before.
    settings.value = { ...DEFAULT_SETTINGS, unit: 'mm' };
    await changeSettings({ sound: false });
    expect(await stored()).toMatchObject({ unit: 'in', sound: false });
    expect(settings.value).toMatchObject({ unit: 'in', sound: false });
  });

  test('a setting that cannot be saved is said, and does not look chosen', async () => {
    await openSession();
    const before = settings.value.unit;
    loseStore();
    await changeSettings({ unit: before === 'in' ? 'mm' : 'in' });
    expect(settings.value.unit).toBe(before);
    expect(failures.value).toMatchObject([{ act: 'settings', reason: 'lost' }]);
  });

  test('what another tab changed of the phone holds here at once: its writer after an import, its settings', async () => {
    await start();
    await putDevice(DEVICE_KEYS.writer, 'after the import');
    await putDevice(DEVICE_KEYS.settings, { ...DEFAULT_SETTINGS, unit: 'in' });
    elsewhere('device');
    await vi.waitFor(() => expect(writer.value).toBe('after the import'));
    expect(settings.value.unit).toBe('in');
  });

  test('the log on screen belongs to the tab', async () => {
    await start();
    await showLog('mine');
    await putDevice(DEVICE_KEYS.currentLog, 'demo');
    await putDevice(DEVICE_KEYS.writer, 'new');
    elsewhere('device');
    await vi.waitFor(() => expect(writer.value).toBe('new'));
    expect(logId.value).toBe('mine');
  });
});
