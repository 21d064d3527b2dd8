/** Held shared while a set-up or an unsaved form is on screen; whoever would reload needs it alone. */
const BUSY = 'lidwright-busy';
/** Held shared by every open page, so that pages can be counted. */
const OPEN = 'lidwright-open';

/** Locks of this page that are being let go of. */
let leaving: Promise<unknown> = Promise.resolve();

const hold = (name: string): (() => void) => {
  const given = new AbortController();
  let release = (): void => given.abort();
  const held = navigator.locks
    ?.request(
      name,
      { mode: 'shared', signal: given.signal },
      () =>
        new Promise<void>((resolve) => {
          release = resolve;
        }),
    )
    .catch(() => {});
  return () => {
    leaving = Promise.all([leaving, held]);
    release();
  };
};

/** Says that this page must not be reloaded now; call the result when it may. */
export const holdBusy = (): (() => void) => hold(BUSY);

/** Says that this page is open, until it closes. */
export const countAsOpen = (): void => void hold(OPEN);

/** Runs `work` if no page is busy and this is the only page open; else answers false at once. */
export const whenAlone = async (work: () => Promise<void> | void): Promise<boolean> => {
  if (!navigator.locks) return false;
  await leaving;
  return navigator.locks.request(BUSY, { ifAvailable: true }, async (lock) => {
    if (!lock) return false;
    const { held = [] } = await navigator.locks.query();
    if (held.filter((other) => other.name === OPEN).length !== 1) return false;
    await work();
    return true;
  });
};
