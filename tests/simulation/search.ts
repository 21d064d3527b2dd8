const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Least value of a function with one valley between two places. */
export const leastBetween = (f: (at: number) => number, from: number, to: number, steps = 48): number => {
  let [a, b] = [from, to];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let step = 0; step < steps; step += 1) {
    if (fc < fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = f(d);
    }
  }
  return Math.min(fc, fd);
};

/** Least value over a range by a scan and a closer look about the best place; Infinity where `f` says so. */
export const leastOver = (f: (at: number) => number, from: number, to: number, pieces: number): number => {
  let [best, at] = [Number.POSITIVE_INFINITY, from];
  const step = (to - from) / pieces;
  for (let i = 0; i <= pieces; i += 1) {
    const value = f(from + i * step);
    if (value < best) [best, at] = [value, from + i * step];
  }
  return Number.isFinite(best) ? Math.min(best, leastBetween(f, at - step, at + step)) : best;
};
