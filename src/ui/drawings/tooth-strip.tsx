import './drawings.css';
import { type ToothState, toothShape } from './tooth-shape.ts';

export interface Tooth {
  readonly key: string;
  readonly state: ToothState;
  readonly hold: boolean;
}

const WIDTH = 362;
const HEIGHT = 50;
const BASE = 42;
/** A pitch past this would push the taller tooth of the step in hand out of the strip. */
const WIDEST = 26;

const paint = { solid: (colour: string) => colour, sheet: () => 'var(--sheet)', none: () => 'none' };

/** A set-up as a thread, a tooth a step. The label says in words what the teeth show. */
export const ToothStrip = ({ teeth, label }: { teeth: readonly Tooth[]; label: string }) => {
  const pitch = Math.min(WIDEST, (WIDTH - 6) / Math.max(1, teeth.length));
  const left = (WIDTH - pitch * teeth.length) / 2;
  // The step in hand is drawn last, so that its neighbours do not cut its flanks.
  const placed = teeth.map((tooth, i) => ({ ...tooth, x: left + i * pitch }));
  const inOrder = [...placed.filter((t) => t.state !== 'now'), ...placed.filter((t) => t.state === 'now')];
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {inOrder.map(({ key, state, hold, x }) => {
        const shape = toothShape(state, x, BASE, pitch);
        const settled = state !== 'to-come' && state !== 'not-needed';
        return (
          <g key={key}>
            <path
              class="tooth"
              data-state={state}
              d={shape.d}
              fill={paint[shape.fill](shape.colour)}
              stroke={shape.colour}
              stroke-width={shape.stroke}
              stroke-linejoin="round"
            />
            {hold && (
              <path
                class="hold"
                d={`M${x + pitch / 2 - 2} ${BASE + 3}h4v4h-4z`}
                fill={settled ? 'var(--ink)' : 'var(--line)'}
              />
            )}
          </g>
        );
      })}
    </svg>
  );
};
