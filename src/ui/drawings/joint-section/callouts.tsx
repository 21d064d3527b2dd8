export interface Callout {
  /** Tells it from the others however place and text change. */
  readonly name: string;
  /** The place it speaks of. */
  readonly at: readonly [x: number, y: number];
  readonly text: string;
  readonly look?: boolean;
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

/** Labels in a column at x, each led by a thin line from its place. */
export const Callouts = ({
  callouts,
  x,
  low,
  high,
  side = 'right',
}: {
  callouts: readonly Callout[];
  x: number;
  low: number;
  high: number;
  side?: 'left' | 'right';
}) => {
  const heights = spread(
    callouts.map((c) => c.at[1]),
    20,
    low,
    high,
  );
  const back = side === 'right' ? -1 : 1;
  return (
    <g>
      {callouts.map(({ name, at, text, look }, i) => {
        const y = heights[i] ?? low;
        const colour = look ? 'var(--blue)' : 'var(--soft)';
        return (
          <g key={name}>
            <path
              d={`M${at[0]} ${at[1]}L${x + back * 14} ${y}H${x + back * 4}`}
              stroke={colour}
              stroke-width="1"
              fill="none"
            />
            <circle cx={at[0]} cy={at[1]} r="3" fill={colour} stroke="none" />
            {/* Moved as a whole: a text whose own place changes is set anew. */}
            <g transform={`translate(${x} ${y + 5.5})`}>
              <text
                fill={colour}
                font-weight={look ? 700 : 400}
                text-anchor={side === 'right' ? 'start' : 'end'}
              >
                {text}
              </text>
            </g>
          </g>
        );
      })}
    </g>
  );
};
