/** A new random id. randomUUID is missing on plain http, where the app still runs, only not offline. */
export const newId = (): string =>
  typeof crypto.randomUUID === 'function'
    ? crypto.randomUUID()
    : Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
        byte.toString(16).padStart(2, '0'),
      ).join('');

/** A random seed, for drawing lots. */
export const freshSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
