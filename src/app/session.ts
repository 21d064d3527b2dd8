import { signal } from '@preact/signals-core';
import { DEFAULT_SETTINGS, type Settings } from '../domain/log/settings.ts';
import { listen } from '../platform/channel.ts';
import { newId } from '../platform/ids.ts';
import { changeDevice, ensureWriter, getDevice, putDevice } from '../storage/device.ts';
import { DEVICE_KEYS } from '../storage/names.ts';
import type { Author } from '../storage/records.ts';
import { ask } from './ask.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';

export const MY_LOG = 'mine';
export const DEMO_LOG = 'demo';

/** The log on screen. */
export const logId = signal(MY_LOG);
export const settings = signal<Settings>(DEFAULT_SETTINGS);
/** The random id of this installation; one for this page alone until the store has answered. */
export const writer = signal(newId());

const readDevice = async () => ({
  writer: await ensureWriter(newId()),
  settings: await getDevice<Partial<Settings>>(DEVICE_KEYS.settings),
  log: await getDevice<string>(DEVICE_KEYS.currentLog),
});
type Device = Awaited<ReturnType<typeof readDevice>>;

const takeUp = (device: Device): void => {
  writer.value = device.writer;
  settings.value = { ...DEFAULT_SETTINGS, ...device.settings };
};

/** Reads what this device remembers; resolves once it has. */
export const openSession = (): Promise<void> =>
  new Promise((resolve) => {
    ask(readDevice, (device) => {
      takeUp(device);
      logId.value = device.log ?? MY_LOG;
      resolve();
    });
  });

/** What another tab changed of this device holds here too: one writer for all tabs, or a set-up in two of them becomes contested. */
export const followDevice = (): void => {
  listen((message) => {
    if ((message as { topic?: string }).topic === 'device') ask(readDevice, takeUp);
  });
};

/** Changes settings on top of what other tabs changed; what cannot be saved is put back. */
export const changeSettings = async (change: Partial<Settings>): Promise<void> => {
  const before = settings.value;
  settings.value = { ...before, ...change };
  const saved = await attempt('settings', () =>
    changeDevice<Partial<Settings>>(DEVICE_KEYS.settings, (now) => ({
      ...DEFAULT_SETTINGS,
      ...now,
      ...change,
    })),
  );
  settings.value = { ...DEFAULT_SETTINGS, ...(saved ?? before) };
  if (saved) announce('device');
};

export const showLog = async (id: string): Promise<void> => {
  await attempt('log', () => putDevice(DEVICE_KEYS.currentLog, id));
  logId.value = id;
};

export const author = (): Author => ({ writer: writer.value, now: Date.now() });
