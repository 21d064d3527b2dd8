const NAME = 'lidwright';

let opened: BroadcastChannel | undefined;

const channel = (): BroadcastChannel | undefined => {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  opened ??= new BroadcastChannel(NAME);
  return opened;
};

/** Tells the other tabs; nobody hears it where the browser has no channel. */
export const post = (message: unknown): void => channel()?.postMessage(message);

/** Hears the other tabs, never this one. Returns how to stop; null where the browser has no channel. */
export const listen = (hear: (message: unknown) => void): (() => void) | null => {
  const on = channel();
  if (!on) return null;
  const receive = (event: MessageEvent): void => hear(event.data);
  on.addEventListener('message', receive);
  return () => on.removeEventListener('message', receive);
};
