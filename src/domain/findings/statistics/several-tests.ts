/** Holm's step-down adjustment: with it, one false alarm among all tests stays as rare as one test's. Order is kept. */
export const holm = (ps: readonly number[]): readonly number[] => {
  const order = inOrder(ps);
  const adjusted = new Array<number>(ps.length);
  let worst = 0;
  order.forEach((at, rank) => {
    worst = Math.max(worst, Math.min(1, (ps.length - rank) * (ps[at] as number)));
    adjusted[at] = worst;
  });
  return adjusted;
};

const inOrder = (ps: readonly number[]): readonly number[] =>
  ps.map((_, i) => i).sort((i, j) => (ps[i] as number) - (ps[j] as number) || i - j);
