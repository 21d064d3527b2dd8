/** Whether the browser protects this storage from being cleared when space runs short. */
export type Keeping = 'promised' | 'not-promised' | 'absent';

export const keeping = async (): Promise<Keeping> => {
  if (!navigator.storage?.persisted) return 'absent';
  return (await navigator.storage.persisted()) ? 'promised' : 'not-promised';
};

/**
 * Asks for that protection. Some browsers ask the user, who may never answer, and then this never settles, so nothing may
 * wait for it.
 */
export const askToKeep = async (): Promise<Keeping> => {
  if (!navigator.storage?.persist) return 'absent';
  try {
    return (await navigator.storage.persist()) ? 'promised' : 'not-promised';
  } catch {
    return 'not-promised';
  }
};

export interface Space {
  readonly usedBytes: number;
  readonly quotaBytes: number;
}

/** Space used and allowed; null where the browser does not say. */
export const space = async (): Promise<Space | null> => {
  if (!navigator.storage?.estimate) return null;
  const { usage, quota } = await navigator.storage.estimate();
  return usage === undefined || quota === undefined ? null : { usedBytes: usage, quotaBytes: quota };
};
