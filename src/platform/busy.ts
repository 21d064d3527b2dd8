/** Held shared while a set-up or an unsaved form is on screen; whoever would reload needs it alone. */
const BUSY = 'lidwright-busy';
/** Held shared by every open page, so that pages can be counted. */
const OPEN = 'lidwright-open';

const hold = (name: string): (() => void) => {
  const leaving = new AbortController();
  let release = (): void => leaving.abort();
  navigator.locks
    ?.request(
      name,
      { mode: 'shared', signal: leaving.signal },
      () =>
        new Promise<void>((resolve) => {
          release = resolve;
        }),
    )
    .catch(() => {});
  return () => release();
};

/** Says that this page must not be reloaded now; call the result when it may. */
export const holdBusy = (): (() => void) => hold(BUSY);

/** Says that this page is open, until it closes. */
export const countAsOpen = (): void => void hold(OPEN);

/** Runs `work` if no page is busy and this is the only page open; else answers false at once. */
export const whenAlone = async (work: () => Promise<void> | void): Promise<boolean> => {
  if (!navigator.locks) return false;
  return navigator.locks.request(BUSY, { ifAvailable: true }, async (lock) => {
    if (!lock) return false;
    const { held = [] } = await navigator.locks.query();
    if (held.filter((other) => other.name === OPEN).length !== 1) return false;
    await work();
    return true;
  });
};
