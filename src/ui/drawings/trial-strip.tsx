import './drawings.css';
import { extent, ticks } from 'd3-array';

interface TrialMark {
  readonly clearance: number;
  readonly felt: 'tight' | 'right' | 'slack';
}

interface Props {
  readonly marks: readonly TrialMark[];
  readonly low: number;
  readonly high: number;
  readonly estimate: number;
  readonly label: string;
  /** What a tick of the axis says. */
  readonly axis: (clearance: number) => string;
  readonly words: Readonly<Record<TrialMark['felt'], string>>;
}

const WIDTH = 362;
const LEFT = 52;
const RIGHT = 12;
const ROW: Readonly<Record<TrialMark['felt'], number>> = { tight: 16, right: 40, slack: 64 };
const AXIS = 88;

/** Every trial by its clearance: tight above, right in the middle, slack below, with the clearance that suits on the axis. */
export const TrialStrip = ({ marks, low, high, estimate, label, axis, words }: Props) => {
  const [from = 0, to = 1] = extent([...marks.map((mark) => mark.clearance), low, high]) as [number, number];
  const pad = (to - from) * 0.05 || 0.05;
  const at = (clearance: number): number =>
    LEFT + ((WIDTH - LEFT - RIGHT) * (clearance - from + pad)) / (to - from + 2 * pad);
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} 124`} role="img" aria-label={label}>
      {(['tight', 'right', 'slack'] as const).map((felt) => (
        <g key={felt}>
          <text x="0" y={ROW[felt] + 5} fill="var(--soft)">
            {words[felt]}
          </text>
          <path
            d={marks
              .filter((mark) => mark.felt === felt)
              .map((mark) => `M${at(mark.clearance)} ${ROW[felt] - 8}v16`)
              .join('')}
            stroke={felt === 'right' ? 'var(--right)' : 'var(--ink)'}
            stroke-width="2"
          />
        </g>
      ))}
      <path d={`M${LEFT} ${AXIS}H${WIDTH - RIGHT}`} stroke="var(--line)" stroke-width="1.5" />
      {ticks(from, to, 3).map((tick) => (
        <g key={tick}>
          <path d={`M${at(tick)} ${AXIS}v6`} stroke="var(--line)" stroke-width="1.5" />
          <text x={at(tick)} y={AXIS + 24} text-anchor="middle" fill="var(--soft)">
            {axis(tick)}
          </text>
        </g>
      ))}
      <path
        d={`M${at(low)} ${AXIS}H${at(high)}`}
        stroke="var(--blue)"
        stroke-width="5"
        stroke-linecap="round"
      />
      <path d={`M${at(estimate) - 8} ${AXIS - 2}l8 -14l8 14Z`} fill="var(--blue)" />
    </svg>
  );
};
