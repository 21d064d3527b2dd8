/** Chance that can be replayed: the same seed and stream give the same numbers on every machine. Not for secrets. */
export interface Random {
  /** In [0, 1), 32 bits. */
  unit(): number;
  between(min: number, max: number): number;
  /** A whole number from `min` to `max`, both included. */
  whole(min: number, max: number): number;
  normal(mean: number, deviation: number): number;
  chance(probability: number): boolean;
  /** One of a list, which must not be empty. */
  pick<T>(list: readonly T[]): T;
  /** One of a list that is not empty, as often as its weight says. */
  weighted<T>(list: readonly T[], weight: (item: T) => number): T;
}

/** Spreads a seed over the whole state, so that neighbouring seeds share nothing (the finaliser of MurmurHash3, from memory). */
export const mixed = (value: number): number => {
  let h = value | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/** The generator sfc32 of C. Doty-Humphrey (from memory; public domain). Streams of one seed are independent of each other. */
export const seededRandom = (seed: number, stream = 0): Random => {
  let [a, b, c, counter] = [mixed(seed), mixed(stream ^ 0x9e3779b9), mixed(seed + 0x6a09e667), 1];
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 15; i++) next();

  const random: Random = {
    unit: next,
    between: (min, max) => min + next() * (max - min),
    whole: (min, max) => min + Math.floor(next() * (max - min + 1)),
    normal: (mean, deviation) => {
      // The polar method of Marsaglia, one of its two numbers thrown away.
      for (;;) {
        const [x, y] = [2 * next() - 1, 2 * next() - 1];
        const square = x * x + y * y;
        if (square > 0 && square < 1)
          return mean + deviation * x * Math.sqrt((-2 * Math.log(square)) / square);
      }
    },
    chance: (probability) => next() < probability,
    pick: <T>(list: readonly T[]) => list[Math.floor(next() * list.length)] as T,
    weighted: <T>(list: readonly T[], weight: (item: T) => number) => {
      let left = next() * list.reduce((sum, item) => sum + weight(item), 0);
      return (list.find((item) => {
        left -= weight(item);
        return left < 0;
      }) ?? list.at(-1)) as T;
    },
  };
  return random;
};
