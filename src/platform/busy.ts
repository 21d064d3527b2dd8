/** A shared lock held while a set-up or an unsaved form is on screen; a reload needs it exclusively. */
const BUSY = 'lidwright-busy';
/** A shared lock held by every open page, so that pages can be counted. */
const OPEN = 'lidwright-open';

/** Locks of this page that are being released. */
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

/** Forbids a reload until the returned function is called. */
export const holdBusy = (): (() => void) => hold(BUSY);

/** Counts this page as open until it closes. */
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
