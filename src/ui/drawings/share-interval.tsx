import './drawings.css';
import { AxisMarks, IntervalMark } from './axis-marks.tsx';

interface Props {
  /** Shares of 1. */
  readonly low: number;
  readonly high: number;
  readonly estimate: number;
  readonly label: string;
  /** What the right end of the axis says. */
  readonly all: string;
}

const WIDTH = 362;
const LEFT = 10;
const LINE = 22;
const at = (share: number): number => LEFT + (WIDTH - 2 * LEFT) * Math.min(1, Math.max(0, share));

/** A share with its interval on a line from none to all: a heavy line, and a tooth at the estimate. */
export const ShareInterval = ({ low, high, estimate, label, all }: Props) => (
  <svg class="drawing" viewBox={`0 0 ${WIDTH} 48`} role="img" aria-label={label}>
    <path d={`M${LEFT} ${LINE}H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
    <AxisMarks
      y={LINE}
      ticks={[
        { x: at(0), label: '0' },
        { x: at(0.5), label: '50' },
        { x: at(1), label: all },
      ]}
    />
    <IntervalMark low={at(low)} high={at(high)} at={at(estimate)} y={LINE} />
  </svg>
);
