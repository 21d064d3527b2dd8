const NAME = 'lidwright';

let opened: BroadcastChannel | undefined;

const channel = (): BroadcastChannel | undefined => {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  opened ??= new BroadcastChannel(NAME);
  return opened;
};

/** Sends a message to the other tabs; does nothing where the browser has no BroadcastChannel. */
export const post = (message: unknown): void => channel()?.postMessage(message);

/** Receives messages of the other tabs. Returns a function that stops it; null where the browser has no BroadcastChannel. */
export const listen = (onMessage: (message: unknown) => void): (() => void) | null => {
  const on = channel();
  if (!on) return null;
  const receive = (event: MessageEvent): void => onMessage(event.data);
  on.addEventListener('message', receive);
  return () => on.removeEventListener('message', receive);
};
