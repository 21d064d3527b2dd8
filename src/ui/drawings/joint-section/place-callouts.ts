export interface Callout {
  /** Tells it from the others however place and text change. */
  readonly name: string;
  /** The place that it names. */
  readonly at: readonly [x: number, y: number];
  readonly text: string;
  readonly look?: boolean;
}

/** Where labels stand: all at x, between the two heights, and on which side of the drawing. */
export interface Column {
  readonly x: number;
  readonly low: number;
  readonly high: number;
  readonly side?: 'left' | 'right';
}

/** A label with its base line and the line that leads to it. */
export interface PlacedCallout extends Callout {
  readonly y: number;
  readonly leader: string;
}

/**
 * Heights for labels that want to stand at `wanted` but need `apart` between them, within [low, high]: in order, none
 * nearer than `apart` to the next, pushed back from the end when they would run over it.
 */
export const spread = (wanted: readonly number[], apart: number, low: number, high: number): number[] => {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const placed = new Array<number>(wanted.length).fill(low);
  let free = low;
  for (const i of order) {
    placed[i] = Math.max(free, wanted[i] ?? low);
    free = (placed[i] ?? low) + apart;
  }
  let last = high;
  for (const i of order.reverse()) {
    placed[i] = Math.min(last, placed[i] ?? high);
    last = (placed[i] ?? high) - apart;
  }
  return placed;
};

const APART = 20;
/** Labels move in steps of this size, so that they stay still while the places that they name move slightly. */
const STEP = 4;

export const placeCallouts = (
  callouts: readonly Callout[],
  { x, low, high, side = 'right' }: Column,
): PlacedCallout[] => {
  const heights = spread(
    callouts.map(({ at }) => STEP * Math.round(at[1] / STEP)),
    APART,
    low,
    high,
  );
  const back = side === 'right' ? -1 : 1;
  return callouts.map((callout, i) => {
    const y = heights[i] ?? low;
    const [atX, atY] = callout.at;
    return {
      ...callout,
      y: y + 5.5,
      leader: `${atX},${atY} ${x + back * 14},${y} ${x + back * 4},${y}`,
    };
  });
};
