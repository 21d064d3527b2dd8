/** What lies by the lathe. */

/** A try square: stock along the bed's front edge, blade up. `x` is the edge of the blade that measures, on its right. */
export const Square = ({
  x,
  y,
  blade = 130,
  stock = 110,
}: {
  x: number;
  y: number;
  blade?: number;
  stock?: number;
}) => (
  <g>
    <path d={`M${x - 15} ${y - blade}h15V${y + 2}h-15z`} fill="var(--sheet)" />
    <path d={ticks(x, y - blade, blade - 10)} stroke-width="1.2" />
    <path d={`M${x - stock} ${y}h${stock}v16h-${stock}z`} fill="var(--wood)" />
    <path
      d={`M${x - stock + 8} ${y + 5}h${stock - 18}M${x - stock + 8} ${y + 11}h${stock - 18}`}
      stroke-width="1"
    />
  </g>
);

const ticks = (x: number, y: number, length: number): string => {
  let d = '';
  for (let i = 8; i < length; i += 8) d += `M${x} ${y + i}h-${i % 40 ? 4 : 8}`;
  return d;
};

/** A plug drawn from the wall: pins to the left. */
export const Plug = ({ x, y }: { x: number; y: number }) => (
  <g>
    <path d={`M${x - 20} ${y - 9}h20M${x - 20} ${y + 9}h20`} stroke-width="5" stroke-linecap="butt" />
    <path d={`M${x} ${y - 19}h20l16 10v18l-16 10h-20z`} fill="var(--sheet)" />
  </g>
);

/** A socket on the wall, from the side: the wall is the line at x. */
export const Socket = ({ x, y }: { x: number; y: number }) => (
  <g>
    <path d={`M${x} ${y - 44}v88`} stroke-width="4" />
    <path d={`M${x} ${y - 24}h14v48h-14z`} fill="var(--sheet)" />
    <path d={`M${x + 5} ${y - 9}h9M${x + 5} ${y + 9}h9`} stroke-width="4" stroke-linecap="butt" />
  </g>
);

/** The plug beside its socket, small: a reminder that the power is still off. */
export const Unplugged = ({ at }: { at: string }) => (
  <g transform={`${at} scale(.42)`}>
    <path d="M96 0h20c12 0 10 14 34 14" stroke-width="8" />
    <Socket x={2} y={0} />
    <Plug x={62} y={0} />
  </g>
);

/** A chuck key: its T at 0, 0, its square end below. */
export const Key = ({ at }: { at: string }) => (
  <g transform={at} fill="var(--sheet)">
    <path d="M-5 0h10v30h-10z" />
    <path d="M-4 30h8v10h-8z" fill="var(--ink)" />
    <path d="M-22-6h44a5 5 0 0 1 0 10h-44a5 5 0 0 1 0-10z" />
  </g>
);

/** The pin that locks the spindle, with its ring. */
export const Pin = ({ at }: { at: string }) => (
  <g transform={at}>
    <circle cy="-6" r="8" />
    <path d="M-4 2h8v30l-4 5l-4-5z" fill="var(--sheet)" />
  </g>
);
