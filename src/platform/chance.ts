/** A seed nobody chose, for drawing lots. */
export const freshSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
