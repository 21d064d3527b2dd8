/** `refused`: the browser has wake locks but refused one (battery saver, or a home-screen app on an older iOS). */
export type Waking = 'on' | 'off' | 'refused' | 'absent';

/** Keeps the screen on until the returned function is called. The system drops the lock whenever the page is hidden, so it is asked for again on return. */
export const keepAwake = (onState: (state: Waking) => void): (() => void) => {
  if (!('wakeLock' in navigator)) {
    onState('absent');
    return () => {};
  }
  let isWanted = true;
  let held: WakeLockSentinel | undefined;

  const request = async (): Promise<void> => {
    if (!isWanted || document.visibilityState !== 'visible' || (held && !held.released)) return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      if (!isWanted) return void lock.release();
      held = lock;
      lock.addEventListener('release', () => onState('off'));
      onState('on');
    } catch {
      onState('refused');
    }
  };

  document.addEventListener('visibilitychange', request);
  request();
  return () => {
    isWanted = false;
    document.removeEventListener('visibilitychange', request);
    held?.release();
  };
};
