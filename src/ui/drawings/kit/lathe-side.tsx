/** The lathe from the turner's side, headstock on the left. `y` is the lathe's axis, `bed` the top of its ways. */

export const BedSide = ({ bed = 150, x1 = 8, x2 = 354 }: { bed?: number; x1?: number; x2?: number }) => (
  <g>
    <path d={`M${x1} ${bed}H${x2}v26H${x1}z`} fill="var(--ground)" />
    <path d={`M${x1} ${bed + 8}H${x2}`} stroke="var(--line)" />
  </g>
);

export const HeadstockSide = ({
  x = 8,
  y = 82,
  w = 66,
  bed = 150,
}: {
  x?: number;
  y?: number;
  w?: number;
  bed?: number;
}) => (
  <g fill="var(--sheet)">
    <path d={`M${x + w} ${y - 10}h14v20h-14z`} />
    <path d={`M${x} ${bed}V${y - 30}a12 12 0 0 1 12-12h${w - 24}a12 12 0 0 1 12 12V${bed}z`} />
    <circle cx={x + w / 2} cy={y} r="13" stroke="var(--line)" />
  </g>
);

/** Banjo on the bed with its boss; `x` is the centre of the post. The post's foot shows through, dashed. */
export const BanjoSide = ({ x, bed = 150 }: { x: number; bed?: number }) => (
  <g>
    <path d={`M${x - 62} ${bed}v-16h34v-38h56v38h34v16z`} fill="var(--ground)" />
    <path
      d={`M${x - 12} ${bed - 54}v40M${x + 12} ${bed - 54}v40M${x - 12} ${bed - 14}h24`}
      stroke="var(--line)"
      stroke-dasharray="5 4"
    />
  </g>
);

/** The lock: a lever out of the boss with its ball. */
export const LockLever = ({
  x,
  y,
  dx = 40,
  dy = -18,
}: {
  x: number;
  y: number;
  dx?: number;
  dy?: number;
}) => (
  <g>
    <path d={`M${x} ${y}h8`} stroke-width="9" />
    <path d={`M${x + 8} ${y}l${dx} ${dy}`} stroke-width="5" />
    <circle cx={x + 8 + dx} cy={y + dy} r="6" fill="var(--ink)" />
  </g>
);

/** The jig on its post; `x` is the centre of the post, which ends at `foot`. */
export const JigSide = ({ x, y = 40, foot }: { x: number; y?: number; foot: number }) => (
  <g fill="var(--sheet)">
    <path d={`M${x - 12} ${y + 22}h24V${foot}h-24z`} />
    <path d={`M${x + 48} ${y - 8}h58v16h-58z`} />
    <path
      d={`M${x + 52} ${y + 8}l4-16M${x + 60} ${y + 8}l4-16M${x + 68} ${y + 8}l4-16M${x + 76} ${y + 8}l4-16M${x + 84} ${y + 8}l4-16M${x + 92} ${y + 8}l4-16`}
      stroke-width="1.3"
    />
    <path d={`M${x - 48} ${y - 24}h96v48h-96z`} />
    <path d={`M${x - 48} ${y + 12}h96`} stroke="var(--line)" />
  </g>
);

/** The collar that sets the height of the post on the boss. */
export const Collar = ({ x, y }: { x: number; y: number }) => (
  <g>
    <path d={`M${x - 24} ${y}h48v15h-48z`} fill="var(--sheet)" />
    <circle cx={x} cy={y + 7.5} r="3.5" fill="var(--ink)" />
  </g>
);
