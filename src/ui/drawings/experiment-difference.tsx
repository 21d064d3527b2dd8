import './drawings.css';
import { AxisMarks, IntervalMark } from './axis-marks.tsx';

interface Props {
  readonly low: number;
  readonly high: number;
  readonly difference: number;
  readonly label: string;
  /** What the ends of the axis say: 0.20 mm less, 0.20 mm more. */
  readonly end: (difference: number) => string;
}

const WIDTH = 362;
const LEFT = 10;
const LINE = 22;

/** The interval of an experiment's difference, on an axis with zero in the middle: a heavy line, a tooth at the difference found. */
export const ExperimentDifference = ({ low, high, difference, label, end }: Props) => {
  const far = 1.1 * Math.max(Math.abs(low), Math.abs(high));
  const at = (value: number): number => WIDTH / 2 + ((WIDTH / 2 - LEFT) * value) / far;
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} 48`} role="img" aria-label={label}>
      <path d={`M${LEFT} ${LINE}H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
      <AxisMarks
        y={LINE}
        ticks={[-far, 0, far].map((value) => ({ x: at(value), label: value === 0 ? '0' : end(value) }))}
      />
      <path d={`M${at(0)} 2V${LINE + 8}`} stroke="var(--ink)" stroke-width="2" />
      <IntervalMark low={at(low)} high={at(high)} at={at(difference)} y={LINE} />
    </svg>
  );
};
