import { signal } from '@preact/signals-core';
import { DEFAULT_SETTINGS, type Settings } from '../domain/log/settings.ts';
import { newId } from '../platform/ids.ts';
import { ensureWriter, getDevice, putDevice } from '../storage/device.ts';
import { DEVICE_KEYS } from '../storage/names.ts';
import type { Author } from '../storage/records.ts';
import { attempt } from './failure.ts';

export const MY_LOG = 'mine';
export const DEMO_LOG = 'demo';

/** The log on screen. */
export const logId = signal(MY_LOG);
export const settings = signal<Settings>(DEFAULT_SETTINGS);
/** The random id of this installation, set before the first screen. */
export const writer = signal('');

/** Reads what this device remembers. Without storage the app still runs, in memory, and the failure is shown. */
export const openSession = async (): Promise<void> => {
  writer.value = newId();
  await attempt(async () => {
    writer.value = await ensureWriter(writer.value);
    settings.value = { ...DEFAULT_SETTINGS, ...(await getDevice<Partial<Settings>>(DEVICE_KEYS.settings)) };
    logId.value = (await getDevice<string>(DEVICE_KEYS.currentLog)) ?? MY_LOG;
  });
};

export const changeSettings = async (change: Partial<Settings>): Promise<void> => {
  settings.value = { ...settings.value, ...change };
  await attempt(() => putDevice(DEVICE_KEYS.settings, settings.value));
};

export const showLog = async (id: string): Promise<void> => {
  await attempt(() => putDevice(DEVICE_KEYS.currentLog, id));
  logId.value = id;
};

export const author = (): Author => ({ writer: writer.value, now: Date.now() });
