import type { ReadonlySignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { type Callout, type Column, placeCallouts } from './place-callouts.ts';

/** Labels in a column, each led by a thin line from its place. */
export const Callouts = ({ callouts, ...column }: Column & { callouts: readonly Callout[] }) => {
  const dots = useId();
  return (
    <g>
      <Dots id={dots} />
      {placeCallouts(callouts, column).map(({ name, ...mark }) => (
        <CalloutMark key={name} {...mark} {...column} dots={dots} />
      ))}
    </g>
  );
};

type Tone = 'soft' | 'blue';
const toneOf = (look: boolean | undefined): Tone => (look ? 'blue' : 'soft');

/** The dots at the places that labels speak of: defined once for a drawing, they follow the lines that begin at them. */
export const Dots = ({ id }: { id: string }) => (
  <>
    {(['soft', 'blue'] satisfies Tone[]).map((tone) => (
      <marker key={tone} id={`${id}${tone}`} overflow="visible" markerUnits="userSpaceOnUse">
        <circle r="3" fill={`var(--${tone})`} stroke="none" />
      </marker>
    ))}
  </>
);

type Live<T> = T | ReadonlySignal<T>;

interface MarkProps extends Pick<Column, 'x' | 'side'> {
  readonly y: Live<number>;
  readonly leader: Live<string>;
  readonly text: Live<string>;
  readonly look?: boolean | undefined;
  /** Id of the drawing's dots. */
  readonly dots: string;
}

/** One label with its line and the dot where that begins. */
export const CalloutMark = ({ x, y, leader, text, look, side = 'right', dots }: MarkProps) => {
  const tone = toneOf(look);
  const colour = `var(--${tone})`;
  return (
    <g>
      <polyline points={leader} marker-start={`url(#${dots}${tone})`} stroke={colour} stroke-width="1" />
      <text
        x={x}
        y={y}
        fill={colour}
        font-weight={look ? 700 : 400}
        text-anchor={side === 'right' ? 'start' : 'end'}
      >
        {text}
      </text>
    </g>
  );
};
