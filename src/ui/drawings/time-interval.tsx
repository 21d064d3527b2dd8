import './drawings.css';
import { ticks } from 'd3-array';
import { AxisMarks, IntervalMark } from './axis-marks.tsx';

interface Props {
  readonly low: number;
  readonly high: number;
  readonly usual: number;
  /** Right end of the axis, the same for all steps shown together, ms. */
  readonly longest: number;
  readonly label: string;
  /** What a tick says. */
  readonly axis: (ms: number) => string;
  /** Steps above the last one share its axis. */
  readonly withAxis: boolean;
}

const WIDTH = 362;
const LEFT = 10;
const LINE = 20;

/** One step's usual time with the middle half of its times, on an axis from zero. */
export const TimeInterval = ({ low, high, usual, longest, label, axis, withAxis }: Props) => {
  const at = (ms: number): number => LEFT + ((WIDTH - 2 * LEFT) * ms) / longest;
  const marks = ticks(0, longest / 60_000, 3).map((minutes) => ({
    x: at(minutes * 60_000),
    label: axis(minutes * 60_000),
  }));
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${withAxis ? 46 : 26}`} role="img" aria-label={label}>
      <path d={`M${LEFT} ${LINE}H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
      {withAxis ? (
        <AxisMarks y={LINE} ticks={marks} />
      ) : (
        <path d={marks.map(({ x }) => `M${x} ${LINE}v5`).join('')} stroke="var(--line)" stroke-width="1.5" />
      )}
      <IntervalMark low={at(low)} high={at(high)} at={at(usual)} y={LINE} />
    </svg>
  );
};
