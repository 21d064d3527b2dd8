import './drawings.css';
import { AxisMarks, IntervalMark } from './axis-marks.tsx';

interface Props {
  /** Boxes in 100, more (+) or fewer (-) that failed where the step was missed. */
  readonly low: number;
  readonly high: number;
  readonly estimate: number;
  readonly label: string;
  /** What the ends of the axis say: 50 fewer, 100 more. */
  readonly fewer: string;
  readonly more: string;
}

const WIDTH = 362;
const LEFT = 10;
const FROM = -50;
const TO = 100;
const LINE = 22;
const at = (boxes: number): number =>
  LEFT + ((WIDTH - 2 * LEFT) * (Math.min(TO, Math.max(FROM, boxes)) - FROM)) / (TO - FROM);

/** A difference with its interval on an axis through zero: a heavy line, a tooth at the estimate. */
export const DifferenceInterval = ({ low, high, estimate, label, fewer, more }: Props) => (
  <svg class="drawing" viewBox={`0 0 ${WIDTH} 48`} role="img" aria-label={label}>
    <path d={`M${LEFT} ${LINE}H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
    <AxisMarks
      y={LINE}
      ticks={[
        { x: at(-50), label: fewer },
        { x: at(0), label: '0' },
        { x: at(50), label: '50' },
        { x: at(100), label: more },
      ]}
    />
    <path d={`M${at(0)} 2V${LINE + 8}`} stroke="var(--ink)" stroke-width="2" />
    <IntervalMark low={at(low)} high={at(high)} at={at(estimate)} y={LINE} />
  </svg>
);
