interface Props {
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly y: number;
}

/** Ticks of an axis with what they say below; the first and last keep inside the picture. */
export const AxisMarks = ({ ticks, y }: Props) => (
  <>
    {ticks.map(({ x, label }, i) => (
      <g key={x}>
        <path d={`M${x} ${y}v6`} stroke="var(--line)" stroke-width="1.5" />
        <text
          x={x}
          y={y + 22}
          text-anchor={i === 0 ? 'start' : i === ticks.length - 1 ? 'end' : 'middle'}
          fill="var(--soft)"
        >
          {label}
        </text>
      </g>
    ))}
  </>
);

/** An interval on a line: a heavy line, a tooth at the estimate. */
export const IntervalMark = ({ low, high, at, y }: Record<'low' | 'high' | 'at' | 'y', number>) => (
  <>
    <path d={`M${low} ${y}H${high}`} stroke="var(--blue)" stroke-width="5" stroke-linecap="round" />
    <path d={`M${at - 8} ${y - 2}l8 -14l8 14Z`} fill="var(--blue)" />
  </>
);
