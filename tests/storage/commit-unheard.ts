import { vi } from 'vitest';

/** So many writes are committed, and the page is told that they were not: as when the connection dies between the two. */
export const commitUnheard = (times: number): void => {
  const real = IDBTransaction.prototype.addEventListener;
  const unheard = new Set<IDBTransaction>();
  vi.spyOn(IDBTransaction.prototype, 'addEventListener').mockImplementation(function (
    this: IDBTransaction,
    type: string,
    listener: EventListenerOrEventListenerObject | null,
  ) {
    if (!listener) return;
    if (this.mode === 'readwrite' && unheard.size < times) unheard.add(this);
    if (!unheard.has(this)) return real.call(this, type, listener);
    if (type === 'complete') return;
    if (type === 'abort') real.call(this, 'complete', listener);
    real.call(this, type, listener);
  });
};
