import './drawings.css';

interface Props {
  /** Shares of 100. */
  readonly low: number;
  readonly high: number;
  readonly estimate: number;
  readonly label: string;
}

const WIDTH = 362;
const LEFT = 8;
const SPAN = WIDTH - 2 * LEFT;
const at = (share: number): number => LEFT + SPAN * Math.min(1, Math.max(0, share));

/** A share with its interval on a line from none to all: a heavy line, and a tooth at the estimate. */
export const ShareInterval = ({ low, high, estimate, label }: Props) => {
  const x = at(estimate);
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} 34`} role="img" aria-label={label}>
      <path d={`M${LEFT} 24H${WIDTH - LEFT}`} stroke="var(--line)" stroke-width="1.5" />
      {[0, 0.25, 0.5, 0.75, 1].map((tick) => (
        <path key={tick} d={`M${at(tick)} 24v6`} stroke="var(--line)" stroke-width="1.5" />
      ))}
      <path d={`M${at(low)} 24H${at(high)}`} stroke="var(--blue)" stroke-width="5" stroke-linecap="round" />
      <path d={`M${x - 8} 22L${x} 8L${x + 8} 22Z`} fill="var(--blue)" />
    </svg>
  );
};
