import './drawings.css';
import { ticks } from 'd3-array';

interface Props {
  /** Boxes in 100, more (+) or fewer (-) that failed where the step was missed. */
  readonly low: number;
  readonly high: number;
  readonly estimate: number;
  readonly label: string;
  readonly fewer: string;
  readonly more: string;
}

const WIDTH = 362;
const LEFT = 10;
const FROM = -50;
const TO = 100;
const at = (boxes: number): number =>
  LEFT + ((WIDTH - 2 * LEFT) * (Math.min(TO, Math.max(FROM, boxes)) - FROM)) / (TO - FROM);

/** A difference with its interval on an axis through nought: a heavy line, a tooth at the estimate. */
export const DifferenceInterval = ({ low, high, estimate, label, fewer, more }: Props) => {
  const x = at(estimate);
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} 62`} role="img" aria-label={label}>
      <path d={`M${LEFT} 26H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
      {ticks(FROM, TO, 6).map((tick) => (
        <path key={tick} d={`M${at(tick)} 26v5`} stroke="var(--line)" stroke-width="1.5" />
      ))}
      <path d={`M${at(0)} 6V34`} stroke="var(--ink)" stroke-width="2" />
      <path d={`M${at(low)} 26H${at(high)}`} stroke="var(--blue)" stroke-width="5" stroke-linecap="round" />
      <path d={`M${x - 8} 24L${x} 10L${x + 8} 24Z`} fill="var(--blue)" />
      <text x={at(0) - 6} y="52" text-anchor="end" fill="var(--soft)">
        {fewer}
      </text>
      <text x={at(0) + 6} y="52" fill="var(--soft)">
        {more}
      </text>
    </svg>
  );
};
