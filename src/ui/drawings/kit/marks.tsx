import type { ComponentChildren } from 'preact';

/** What to look at: everything inside is drawn in marking blue. */
export const Look = ({ children }: { children: ComponentChildren }) => (
  <g stroke="var(--blue)" stroke-width="3">
    {children}
  </g>
);

/** Where one thing touches another or is held; nothing else has a dot. */
export const Dots = ({ at, r = 4.5 }: { at: readonly (readonly [number, number])[]; r?: number }) => (
  <g fill="var(--blue)" stroke="var(--sheet)" stroke-width="1.5">
    {at.map(([x, y]) => (
      <circle key={`${x} ${y}`} cx={x} cy={y} r={r} />
    ))}
  </g>
);

/** A barb at the end of a line that arrives at x, y heading `deg` degrees clockwise from the right. */
const barb = (x: number, y: number, deg: number): string => {
  const arm = (turn: number): string => {
    const a = ((deg + turn) * Math.PI) / 180;
    return `${(x + 10 * Math.cos(a)).toFixed(1)} ${(y + 10 * Math.sin(a)).toFixed(1)}`;
  };
  return `M${arm(150)}L${x} ${y}L${arm(210)}`;
};

/** A straight arrow; `both` gives it a barb at either end. */
export const Arrow = ({
  from: [x1, y1],
  to: [x2, y2],
  both = false,
}: {
  from: readonly [number, number];
  to: readonly [number, number];
  both?: boolean;
}) => {
  const deg = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  return <path d={`M${x1} ${y1}L${x2} ${y2}${barb(x2, y2, deg)}${both ? barb(x1, y1, deg + 180) : ''}`} />;
};

/** Part of a turn about x, y, from one bearing to another in degrees clockwise from the right; `ry` flattens it. */
export const Turn = ({
  at: [x, y],
  r,
  ry = r,
  from,
  to,
}: {
  at: readonly [number, number];
  r: number;
  ry?: number;
  from: number;
  to: number;
}) => {
  const on = (deg: number): [number, number] => {
    const a = (deg * Math.PI) / 180;
    return [x + r * Math.cos(a), y + ry * Math.sin(a)];
  };
  const [x1, y1] = on(from);
  const [x2, y2] = on(to);
  const way = to > from ? 1 : -1;
  // The barb follows the chord of the last 20 degrees, which looks truer on a flat ellipse than the tangent does.
  const [px, py] = on(to - way * 20);
  const deg = (Math.atan2(y2 - py, x2 - px) * 180) / Math.PI;
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const n = (v: number): number => Math.round(v * 10) / 10;
  return (
    <path
      d={`M${n(x1)} ${n(y1)}A${r} ${ry} 0 ${large} ${way > 0 ? 1 : 0} ${n(x2)} ${n(y2)}${barb(n(x2), n(y2), deg)}`}
    />
  );
};

/** Where a thing was or will be. */
export const Ghost = ({ children }: { children: ComponentChildren }) => (
  <g stroke="var(--line)" stroke-dasharray="5 5">
    {children}
  </g>
);
