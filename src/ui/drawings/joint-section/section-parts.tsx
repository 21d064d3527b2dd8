import type { ReadonlySignal } from '@preact/signals';
import type { SVGAttributes } from 'preact';
import { usePicked } from '../../parts/use-picked.ts';
import { CalloutMark } from './callouts.tsx';
import { LABELS, LEFT, type SectionFigure, TOP } from './section-figure.ts';

type OfFigure = { readonly figure: ReadonlySignal<SectionFigure> };
type Kind = 'unmoved' | 'flanks';

/** As many lines of one kind as the figure has, in one pen. */
export const Lines = ({ figure, kind, ...pen }: OfFigure & { kind: Kind } & SVGAttributes<SVGGElement>) => {
  const count = usePicked(figure, (drawn) => drawn[kind].length).value;
  return (
    <g class={kind} {...pen}>
      {Array.from({ length: count }, (_, at) => (
        <OneLine key={at} figure={figure} kind={kind} at={at} />
      ))}
    </g>
  );
};

const OneLine = ({ figure, kind, at }: OfFigure & { kind: Kind; at: number }) => (
  <polyline points={usePicked(figure, (drawn) => drawn[kind][at] ?? '')} />
);

/** The labels that the figure has, each a lasting element while others appear and disappear. */
export const Labels = ({ figure, dots }: OfFigure & { dots: string }) => {
  const names = usePicked(figure, ({ callouts }) => callouts.map(({ name }) => name).join(' ')).value;
  return (
    <g>
      {names
        .split(' ')
        .filter(Boolean)
        .map((name) => (
          <Label key={name} figure={figure} name={name} dots={dots} />
        ))}
    </g>
  );
};

const Label = ({ figure, name, dots }: OfFigure & { name: string; dots: string }) => {
  const own = usePicked(figure, ({ callouts }) => callouts.find((callout) => callout.name === name));
  const [y, leader, text] = [
    usePicked(own, (callout) => callout?.y ?? 0),
    usePicked(own, (callout) => callout?.leader ?? ''),
    usePicked(own, (callout) => callout?.text ?? ''),
  ];
  const { right } = figure.peek();
  return (
    <CalloutMark x={right + LABELS} y={y} leader={leader} text={text} look={own.peek()?.look} dots={dots} />
  );
};

/** One turn between two ticks, and how it is called. */
export const PitchMark = ({ to, name }: { to: number; name: string }) => (
  <g stroke="var(--soft)" stroke-width="1">
    <path d={`M${LEFT} ${TOP - 8}v14M${to} ${TOP - 8}v14M${LEFT} ${TOP - 4}H${to}`} />
    <text x={to + 8} y={TOP - 8} fill="var(--soft)">
      {name}
    </text>
  </g>
);
