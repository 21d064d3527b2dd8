/**
 * The zero of a function that is negative (or zero) at `low` and positive at `high`, found by bisection: slow, but safe where a
 * faster method fails (flat stretches, jumps). It stops when the interval is shorter than `tolerance` (relative, with a small
 * absolute part), and always after 200 halvings. When the sign does not change, returns the end that is nearer to the zero.
 */
export const bisect = (f: (x: number) => number, low: number, high: number, tolerance = 1e-16): number => {
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
