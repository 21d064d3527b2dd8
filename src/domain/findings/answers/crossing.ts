/**
 * Where a function that is negative (or zero) at `low` and positive at `high` crosses zero, by halving: slow, and never
 * wrong. Works on values that a faster method would stumble over (flat stretches, jumps). 200 halvings are more than the
 * doubles between any two numbers, so it always ends; `tolerance` (relative, plus absolute) ends it sooner.
 * If the sign does not change, the end nearer to zero is returned.
 */
export const crossing = (f: (x: number) => number, low: number, high: number, tolerance = 1e-16): number => {
  let [from, to] = [low, high];
  if (f(from) > 0) return from;
  if (f(to) < 0) return to;
  for (let i = 0; i < 200; i++) {
    const middle = from + (to - from) / 2;
    if (middle === from || middle === to || to - from <= tolerance * (Math.abs(middle) + 1e-3)) break;
    if (f(middle) > 0) to = middle;
    else from = middle;
  }
  return from + (to - from) / 2;
};
