import '../drawings.css';
import type { ComponentChildren } from 'preact';
import type { DrawingKey } from '../drawing-key.ts';
import { DRAWING_LABELS, describeDrawing } from '../words.ts';

export interface StepDrawingProps {
  /** Words inside the drawing; off where it is shown too small to read them. */
  readonly labelled?: boolean | undefined;
}

/** Where a label stands: its baseline, 'look' for what to look at, 'wood' where it lies on wood, and how it is set from x. */
type LabelPlace = readonly [
  x: number,
  y: number,
  kind?: 'look' | 'aside' | 'wood',
  anchor?: 'middle' | 'end',
];

const INK = { look: 'var(--blue)', aside: 'var(--soft)', wood: 'var(--ink)' } as const;

/** The paper of one step drawing: 362 by 186, the kit's pen set, labels last so that no line crosses them. */
export const Sheet = ({
  of,
  labels,
  labelled = true,
  children,
}: StepDrawingProps & {
  of: DrawingKey;
  labels: readonly LabelPlace[];
  children: ComponentChildren;
}) => (
  <svg
    class="drawing"
    viewBox="0 0 362 186"
    role="img"
    aria-label={describeDrawing[of]}
    fill="none"
    stroke="var(--ink)"
    stroke-width="2"
    stroke-linejoin="round"
    stroke-linecap="round"
  >
    {children}
    {labelled &&
      labels.map(([x, y, kind, anchor], i) => (
        <text
          key={i}
          x={x}
          y={y}
          text-anchor={anchor}
          fill={INK[kind ?? 'aside']}
          font-weight={kind === 'look' ? 700 : 400}
        >
          {DRAWING_LABELS[of][i]}
        </text>
      ))}
  </svg>
);
