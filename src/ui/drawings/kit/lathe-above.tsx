/** The lathe from above, headstock on the left. `y` is the lathe's axis. */

export const Bed = ({ y = 96, x1 = 8, x2 = 354 }: { y?: number; x1?: number; x2?: number }) => (
  <g fill="var(--ground)">
    <path d={`M${x1} ${y - 26}H${x2}v11H${x1}zM${x1} ${y + 15}H${x2}v11H${x1}z`} />
  </g>
);

export const Headstock = ({ y = 96, x = 8, w = 50 }: { y?: number; x?: number; w?: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x + w} ${y - 11}h13v22h-13z`} />
    <path d={`M${x} ${y - 44}h${w}v88h-${w}z`} />
    <path d={`M${x + w * 0.3} ${y - 44}v88M${x + w * 0.7} ${y - 44}v88`} stroke="var(--line)" />
  </g>
);

export const Faceplate = ({ x, y = 96, r = 46 }: { x: number; y?: number; r?: number }) => (
  <path d={`M${x} ${y - r}h8v${2 * r}h-8z`} fill="var(--sheet)" />
);

/** The board on its edge, from above or from the side: long grain drawn along it. */
export const Board = ({ x, y, h, w = 11 }: { x: number; y: number; h: number; w?: number }) => (
  <g>
    <path d={`M${x} ${y}h${w}v${h}h-${w}z`} fill="var(--wood)" />
    <path
      d={`M${x + w * 0.36} ${y + 3}q2 ${h / 4} 0 ${h / 2}t0 ${h / 2 - 6}M${x + w * 0.7} ${y + 3}q-2 ${h / 3} 0 ${h / 2}t0 ${h / 2 - 6}`}
      stroke-width="1"
    />
  </g>
);

/** Tailstock with its cone; `x` is the cone's point. */
export const Tailstock = ({ x, y = 96 }: { x: number; y?: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x + 64} ${y - 36}h${Math.max(20, 352 - x - 64)}v72h-${Math.max(20, 352 - x - 64)}z`} />
    <path d={`M${x + 34} ${y - 11}h30v22h-30z`} />
    <path d={`M${x} ${y}l34-16v32z`} />
  </g>
);

/** The spindle's collet, open to the right; `x` is where it leaves the headstock. */
export const Collet = ({ x, y = 96 }: { x: number; y?: number }) => (
  <g>
    <path d={`M${x} ${y - 14}h12l8 4v20l-8 4h-12z`} fill="var(--sheet)" />
    <path d={`M${x + 4} ${y - 5}h16M${x + 4} ${y + 5}h16`} stroke-width="1.2" />
  </g>
);

/** The 60 degree cutter edge-on: `x` is its tooth, `r` its radius; the shank runs left into the collet. */
export const Cutter = ({
  x,
  y = 96,
  r = 20,
  shank = 16,
}: {
  x: number;
  y?: number;
  r?: number;
  shank?: number;
}) => (
  <path
    d={`M${x} ${y - r}l6.4 11v${2 * r - 22}l-6.4 11l-6.4-11v-${r - 16}h-${shank}v-10h${shank}v-${r - 16}z`}
    fill="currentColor"
    stroke="currentColor"
    stroke-width="1"
    style={{ color: 'var(--ink)' }}
  />
);
