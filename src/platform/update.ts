import type { Workbox } from 'workbox-window';
import { whenAlone } from './busy.ts';

/** `absent`: no service worker here (plain http or private mode), so no offline start. */
export type Offline = 'ready' | 'absent' | 'failed';

export interface Updates {
  readonly offline: Offline;
  /** Checks again whether a waiting version may be offered. Call it when a set-up or form is left. */
  readonly look: () => Promise<void>;
  /** Activates the waiting version and reloads, if nothing unsaved can be lost; otherwise answers false. */
  readonly take: () => Promise<boolean>;
}

/** A worker that has not taken over by then does not: the old version goes on, and no lock is held any longer. */
const TAKE_OVER_MS = 10_000;

const HOUR_MS = 60 * 60 * 1000;

const NONE: Omit<Updates, 'offline'> = { look: async () => {}, take: async () => false };

/**
 * Registers the service worker and watches for a new version. `onOffer(true)` when one waits, no page is busy and this is
 * the only page; `onOffer(false)` when that is no longer so. Otherwise the new version starts by itself once every page has
 * been closed. Call it after the first load.
 */
export const followUpdates = async (onOffer: (offered: boolean) => void): Promise<Updates> => {
  if (!('serviceWorker' in navigator)) return { offline: 'absent', ...NONE };
  const { Workbox } = await import('workbox-window');
  const worker = new Workbox('./sw.js');
  let registration: ServiceWorkerRegistration | undefined;

  const look = async (): Promise<void> =>
    onOffer(registration?.waiting != null && (await whenAlone(() => {})));
  worker.addEventListener('waiting', look);
  try {
    registration = await worker.register({ immediate: true });
  } catch {
    return { offline: 'failed', ...NONE };
  }

  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible') return;
    look();
    if (Date.now() - asked < HOUR_MS) return;
    asked = Date.now();
    // Without a network this fails; the next check is an hour later.
    registration?.update().catch(() => {});
  });
  await look();
  const take = async (): Promise<boolean> => {
    let hasTaken = false;
    await whenAlone(async () => {
      hasTaken = await takeOver(worker);
    });
    return hasTaken;
  };
  return { offline: 'ready', look, take };
};

/** Whether the waiting version took over in time; the page is then loading again. */
const takeOver = (worker: Workbox): Promise<boolean> =>
  new Promise((resolve) => {
    const done = (hasTaken: boolean): void => {
      clearTimeout(timer);
      worker.removeEventListener('controlling', reload);
      resolve(hasTaken);
    };
    const reload = (): void => {
      done(true);
      location.reload();
    };
    const timer = setTimeout(() => done(false), TAKE_OVER_MS);
    worker.addEventListener('controlling', reload);
    worker.messageSkipWaiting();
  });
