import { DEVICE_KEYS } from './names.ts';
import { read, write } from './write.ts';

type DeviceKey = (typeof DEVICE_KEYS)[keyof typeof DEVICE_KEYS];

/** Values that belong to this phone and to no log. Of these a backup carries the settings only. */
export const getDevice = async <T>(key: DeviceKey): Promise<T | undefined> =>
  (await read(['device'], (tx) => tx.objectStore('device').get(key))) as T | undefined;

export const putDevice = (key: DeviceKey, value: unknown): Promise<void> =>
  write(['device'], async (tx) => {
    await tx.objectStore('device').put(value, key);
  });

/** Changes the stored value inside the transaction, so that two tabs do not overwrite each other's changes. */
export const changeDevice = <T>(key: DeviceKey, change: (now: T | undefined) => T): Promise<T> =>
  write(['device'], async (tx) => {
    const store = tx.objectStore('device');
    const next = change((await store.get(key)) as T | undefined);
    await store.put(next, key);
    return next;
  });

/** This installation's writer id. The first call stores the id given; an import replaces it. */
export const ensureWriter = (fresh: string): Promise<string> =>
  write(['device'], async (tx) => {
    const store = tx.objectStore('device');
    const held = (await store.get(DEVICE_KEYS.writer)) as string | undefined;
    if (held === undefined) await store.put(fresh, DEVICE_KEYS.writer);
    return held ?? fresh;
  });
