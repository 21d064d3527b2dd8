import '../drawings.css';
import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { usePicked } from '../../parts/use-picked.ts';
import { Dots } from './callouts.tsx';
import { LEFT, type SectionOf, sectionFigure, TOP, WIDTH } from './section-figure.ts';
import { Labels, Lines, PitchMark } from './section-parts.tsx';

export interface JointSectionProps extends SectionOf {
  /** The whole drawing in one sentence. */
  readonly label: string;
}

/** The joint in section, as it is given. */
export const JointSection = (props: JointSectionProps) => {
  const of = useSignal(props);
  of.value = props;
  return <LiveSection of={of} />;
};

/**
 * The joint in section while it is moved. What moves is tied to its own attribute, and drawn by points: unlike the shape of
 * a path they are no style, so no style sheet is asked again.
 */
export const LiveSection = ({ of }: { of: ReadonlySignal<JointSectionProps> }) => {
  const id = useId();
  const figure = usePicked(of, sectionFigure);
  const bears = usePicked(figure, ({ overlaps }) => (overlaps ? 'var(--chipped)' : 'var(--blue)'));
  const height = usePicked(figure, (drawn) => drawn.height).value;
  const right = usePicked(figure, (drawn) => drawn.right).value;
  const pitch = usePicked(figure, (drawn) => drawn.pitch).value;
  const pitchName = usePicked(of, ({ labels }) => labels?.pitch).value;
  return (
    <svg
      class="drawing"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={usePicked(of, ({ label }) => label)}
      fill="none"
      stroke="var(--ink)"
      stroke-width="1.4"
      stroke-linejoin="round"
    >
      <clipPath id={id}>
        <path d={`M${LEFT} ${TOP}H${right}V${height - 6}H${LEFT}Z`} />
      </clipPath>
      <Dots id={id} />
      <g clip-path={`url(#${id})`}>
        <polygon
          class="recess"
          points={usePicked(figure, (drawn) => drawn.recess)}
          fill="var(--wood)"
          fill-opacity="0.5"
        />
        <polygon class="tenon" points={usePicked(figure, (drawn) => drawn.tenon)} fill="var(--wood)" />
        <path class="grain" d={usePicked(figure, (drawn) => drawn.grain)} stroke-width="0.8" />
        <Lines figure={figure} kind="unmoved" stroke-dasharray="3 3" />
        <Lines figure={figure} kind="flanks" stroke={bears} stroke-width="3.5" stroke-linecap="round" />
      </g>
      {pitchName && <PitchMark to={pitch} name={pitchName} />}
      <Labels figure={figure} dots={id} />
    </svg>
  );
};
