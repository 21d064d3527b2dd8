/** The moment at which every tour begins: Saturday 14 March 2026, 10:30 UTC. The fixture's log ends just before it. */
export const BEGINS = Date.UTC(2026, 2, 14, 10, 30);

/** A thumb's pace, ms: longer than any time for which a button ignores a second tap. */
export const PACE = 4_000;

/**
 * Runs in the page before the app: time passes only when the tour says so, ids and seeds come in a fixed order, and
 * what depends on the machine (storage used, voices, the wake lock) is fixed. The counts outlive a reload.
 */
export const standStill = (begins) => {
  const counted = (name) => {
    let inMemory = 0;
    return {
      get: () => {
        try {
          return Number(sessionStorage.getItem(name) ?? 0);
        } catch {
          return inMemory;
        }
      },
      set: (value) => {
        inMemory = value;
        try {
          sessionStorage.setItem(name, String(value));
        } catch {
          // about:blank has no storage.
        }
      },
    };
  };
  const passed = counted('picture clock');
  const drawn = counted('picture ids');

  const RealDate = Date;
  const now = () => begins + passed.get();
  globalThis.Date = class extends RealDate {
    constructor(...given) {
      if (given.length === 0) super(now());
      else super(...given);
    }
    static now = now;
  };
  performance.now = () => 1_000 + passed.get();

  // What repeats by the clock does so when the clock is moved, and never by itself.
  const repeated = new Map();
  globalThis.setInterval = (work, _, ...given) => {
    const id = repeated.size + 1;
    repeated.set(id, () => work(...given));
    return id;
  };
  globalThis.clearInterval = (id) => {
    if (repeated.has(id)) repeated.set(id, () => {});
  };
  globalThis.letTimePass = (ms) => {
    passed.set(passed.get() + ms);
    for (const work of repeated.values()) work();
  };

  const next = () => {
    drawn.set(drawn.get() + 1);
    return drawn.get();
  };
  crypto.randomUUID = () => `00000000-0000-4000-8000-${String(next()).padStart(12, '0')}`;
  crypto.getRandomValues = (array) => {
    for (let i = 0; i < array.length; i += 1) array[i] = Math.imul(next(), 2_654_435_761);
    return array;
  };

  const always = (object, name, answer) =>
    object && Object.defineProperty(object, name, { value: async () => answer, configurable: true });
  always(navigator.storage, 'estimate', { usage: 1_234_567, quota: 1_000_000_000 });
  always(navigator.storage, 'persisted', false);
  always(navigator.storage, 'persist', false);
  // No voice is installed, which is known at once and not after a wait.
  speechSynthesis.getVoices = () => [];
  speechSynthesis.addEventListener = (_, work) => queueMicrotask(work);

  // Somebody may be waiting for an answer of the store.
  let asked = 0;
  let answered = 0;
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (...given) {
    const begun = transaction.apply(this, given);
    const end = () => {
      answered += 1;
    };
    asked += 1;
    begun.addEventListener('complete', end);
    begun.addEventListener('abort', end);
    return begun;
  };
  globalThis.storeAnswers = () => ({ waiting: asked - answered, answered });

  const lock = Object.assign(new EventTarget(), { released: false, release: async () => {} });
  always(navigator.wakeLock, 'request', lock);
};

/**
 * Runs in the page: resolves once nothing is busy, nothing has changed and the store has answered nothing for `quiet` ms,
 * and fonts and pictures are there.
 */
export const comeToRest = async (quiet) => {
  const { storeAnswers } = globalThis;
  await new Promise((resolve, reject) => {
    let timer;
    let limit;
    const watcher = new MutationObserver(() => wait());
    const end = (settle, value) => {
      clearTimeout(limit);
      clearTimeout(timer);
      watcher.disconnect();
      settle(value);
    };
    const wait = () => {
      clearTimeout(timer);
      const before = storeAnswers().answered;
      timer = setTimeout(() => {
        const { waiting, answered } = storeAnswers();
        const isBusy = document.querySelector('[aria-busy="true"]') !== null;
        if (isBusy || waiting > 0 || answered > before) wait();
        else end(resolve);
      }, quiet);
    };
    limit = setTimeout(() => end(reject, new Error('the page does not come to rest')), 60_000);
    watcher.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
    wait();
  });
  await document.fonts.ready;
  await Promise.all(Array.from(document.images, (image) => image.decode().catch(() => {})));
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
};

/** Runs in the page: scrolls whatever scrolls inside it to its start or its end; says how many things do. */
export const scrollInside = (toEnd) => {
  const scrollers = [...document.querySelectorAll('body *')].filter(
    (element) =>
      element.scrollHeight > element.clientHeight + 1 &&
      element.clientHeight > 0 &&
      ['auto', 'scroll'].includes(getComputedStyle(element).overflowY),
  );
  for (const element of scrollers) element.scrollTop = toEnd ? element.scrollHeight : 0;
  return scrollers.length;
};
