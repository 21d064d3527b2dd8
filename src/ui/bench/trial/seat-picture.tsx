import type { Seated } from '../../../domain/box/trial-words.ts';

/** Lid over base; the wood has the line of ink that it has everywhere. */
const WOOD = { fill: 'var(--wood)', stroke: 'var(--ink)', 'stroke-width': 1.6 } as const;
const LID = { x: 9, width: 34, height: 11, ...WOOD } as const;

const lid: Readonly<Record<Exclude<Seated, 'flush'>, { y: number; x?: number; tilt?: number }>> = {
  'open-one-side': { y: 3, tilt: -8 },
  'gap-all-round': { y: 1 },
  rocks: { y: 5, tilt: -6 },
  'proud-outside': { y: 5, x: 13 },
};

/** How a lid sits that does not sit flush. */
export const SeatPicture = ({ of }: { of: Exclude<Seated, 'flush'> }) => {
  const { y, x = LID.x, tilt = 0 } = lid[of];
  return (
    <svg viewBox="0 0 52 32" width="52" height="32" aria-hidden="true">
      <rect {...LID} y="18" />
      <rect {...LID} x={x} y={y} transform={tilt ? `rotate(${tilt} 26 16)` : undefined} />
      {of === 'rocks' && (
        <path
          d="M4 10v9m-3-4 3 4 3-4M48 19v-9m-3 4 3-4 3 4"
          fill="none"
          stroke="var(--blue)"
          stroke-width="2"
        />
      )}
    </svg>
  );
};
