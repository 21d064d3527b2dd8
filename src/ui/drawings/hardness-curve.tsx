import './drawings.css';
import { extent } from 'd3-array';
import { area, line } from 'd3-shape';
import { AxisMarks } from './axis-marks.tsx';

interface CurvePoint {
  readonly hardness: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

interface Props {
  readonly points: readonly CurvePoint[];
  /** Hardness of the woods behind it, newton. */
  readonly woods: readonly number[];
  readonly label: string;
  readonly newton: (hardness: number) => string;
}

const WIDTH = 362;
const LEFT = 44;
const RIGHT = 352;
const TOP = 12;
const FOOT = 150;
const TICKS = [1000, 3000, 10_000];

/** Threads that hold, along the hardness: a line in its band, and a stroke at the foot for every wood tried. */
export const HardnessCurve = ({ points, woods, label, newton }: Props) => {
  const [from = 1, to = 2] = extent(points, ({ hardness }) => Math.log(hardness)) as [number, number];
  const x = (hardness: number) => LEFT + ((RIGHT - LEFT) * (Math.log(hardness) - from)) / (to - from);
  const y = (share: number) => FOOT - (FOOT - TOP) * share;
  const band = area<CurvePoint>(
    (p) => x(p.hardness),
    (p) => y(p.low),
    (p) => y(p.high),
  );
  const middle = line<CurvePoint>(
    (p) => x(p.hardness),
    (p) => y(p.value),
  );
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${FOOT + 28}`} role="img" aria-label={label}>
      <path d={band([...points]) ?? ''} fill="var(--wood)" />
      {[0, 0.5, 1].map((share) => (
        <g key={share}>
          <path d={`M${LEFT} ${y(share)}H${RIGHT}`} stroke="var(--line)" stroke-width="1" />
          <text x={LEFT - 6} y={y(share) + 5} text-anchor="end" fill="var(--soft)">
            {100 * share}
          </text>
        </g>
      ))}
      <path d={middle([...points]) ?? ''} fill="none" stroke="var(--blue)" stroke-width="4" />
      <path
        d={woods.map((hardness) => `M${x(hardness)} ${FOOT}v-10`).join('')}
        stroke="var(--ink)"
        stroke-width="2"
      />
      <AxisMarks y={FOOT} ticks={TICKS.map((hardness) => ({ x: x(hardness), label: newton(hardness) }))} />
    </svg>
  );
};
