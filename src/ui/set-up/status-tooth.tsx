import { type ToothState, toothShape } from '../drawings/tooth-shape.ts';

/** One tooth of the strip by itself, beside the words that say the same. */
export const StatusTooth = ({ status }: { status: ToothState }) => {
  const shape = toothShape(status, 3, 36, 30);
  return (
    <svg viewBox="0 0 36 40" width="32" height="36" aria-hidden="true" style={{ flex: 'none' }}>
      <path
        d={shape.d}
        fill={shape.fill === 'solid' ? shape.colour : shape.fill === 'sheet' ? 'var(--sheet)' : 'none'}
        stroke={shape.colour}
        stroke-width={shape.stroke}
        stroke-linejoin="round"
      />
    </svg>
  );
};
