/** The threading jig from above, its nose to the left. `y` is the jig's own axis. */

/** Body with post beneath and lead-screw; `x` is the face of the body. */
export const Jig = ({
  x,
  y = 96,
  nose = false,
  screw = 56,
}: {
  x: number;
  y?: number;
  nose?: boolean;
  screw?: number;
}) => (
  <g>
    {nose && <Nose x={x} y={y} />}
    <path d={`M${x + 56} ${y - 8}h${screw}v16h-${screw}z`} fill="var(--sheet)" />
    <path d={threads(x + 60, y, screw - 8)} stroke-width="1.3" />
    <path d={`M${x} ${y - 25}h56v50h-56z`} fill="var(--sheet)" />
    <circle cx={x + 30} cy={y} r="11" stroke-dasharray="4 4" />
  </g>
);

const threads = (x: number, y: number, length: number): string => {
  let d = '';
  for (let i = 0; i + 4 <= length; i += 8) d += `M${x + i} ${y + 8}l4-16`;
  return d;
};

/** The nose that carries the chuck: a shoulder against the body, then its thread. `x` is the face of the body. */
const Nose = ({ x, y = 96 }: { x: number; y?: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x - 26} ${y - 11}h20v22h-20z`} />
    <path d={`M${x - 6} ${y - 18}h6v36h-6z`} />
    <path
      d={`M${x - 24} ${y + 11}l4-22M${x - 18} ${y + 11}l4-22M${x - 12} ${y + 11}l4-22`}
      stroke-width="1.3"
    />
  </g>
);

/** Crank on the end of the lead-screw: arm towards the turner, knob to the right. `x` is the screw's end. */
export const Crank = ({ x, y = 96, arm = 34 }: { x: number; y?: number; arm?: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x + 4} ${y + arm - 7}h20a7 7 0 0 1 0 14h-20z`} />
    <path d={`M${x - 4} ${y - 7}a5 5 0 0 1 10 0v${arm + 14}h-10z`} />
    <circle cx={x + 1} cy={y} r="2" fill="var(--ink)" />
  </g>
);

/** Chuck with its jaws closed on the work; `x` is the back of the chuck, the work stands out to the left. */
export const Chuck = ({ x, y = 96, jaws = 15 }: { x: number; y?: number; jaws?: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x - 30} ${y - 34}h30v68h-30z`} />
    <path
      d={`M${x - 44} ${y - jaws - 11}h14v11h-14zM${x - 44} ${y - 5.5}h14v11h-14zM${x - 44} ${y + jaws}h14v11h-14z`}
    />
    <path d={`M${x - 8} ${y - 34}v68`} stroke="var(--line)" />
  </g>
);

/** A tenon piece: its mouth at x, held `l` deep. With `thread`, the groove shows on its sides. */
export const Work = ({
  x,
  y = 96,
  l = 30,
  r = 15,
  thread = false,
}: {
  x: number;
  y?: number;
  l?: number;
  r?: number;
  thread?: boolean;
}) => (
  <g>
    <path d={`M${x} ${y - r}h${l}v${2 * r}h-${l}z`} fill="var(--wood)" />
    <path
      d={`M${x + 2} ${y - r * 0.5}q${l / 3} 2 ${l - 4} 0M${x + 2} ${y + r * 0.1}q${l / 2} -2 ${l - 4} 0M${x + 2} ${y + r * 0.6}q${l / 3} 2 ${l - 4} 0`}
      stroke-width="1"
    />
    {thread && <path d={`M${x + 4} ${y + r}l3-${2 * r}m5 ${2 * r}l3-${2 * r}`} stroke-width="1.5" />}
  </g>
);

/** The banjo across the bed; `x` is its left side, which goes to the square. The lever stands at the front. */
export const Banjo = ({
  x,
  y = 96,
  w = 34,
  lever = true,
}: {
  x: number;
  y?: number;
  w?: number;
  lever?: boolean;
}) => (
  <g fill="var(--ground)">
    <path
      d={`M${x} ${y - 40}a8 8 0 0 1 8-8h${w - 16}a8 8 0 0 1 8 8v104a8 8 0 0 1-8 8h-${w - 16}a8 8 0 0 1-8-8z`}
    />
    {lever && (
      <g>
        <path d={`M${x + w / 2} ${y + 58}h44`} stroke-width="5" />
        <circle cx={x + w / 2} cy={y + 58} r="6" />
        <circle cx={x + w / 2 + 46} cy={y + 58} r="5" fill="var(--ink)" />
      </g>
    )}
  </g>
);
