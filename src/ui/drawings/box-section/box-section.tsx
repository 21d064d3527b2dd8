import '../drawings.css';
import { Callouts } from '../joint-section/callouts.tsx';
import type { Callout } from '../joint-section/place-callouts.ts';
import { type BoxFeature, FEATURES, featureAt } from './box-features.ts';
import { type BoxSizes, type Point, recessHalf, tenonHalf } from './box-profile.ts';

const WIDTH = 362;
const AXIS = WIDTH / 2;
const TOP = 10;
const APART = 22;
/** Room for the letters beside the box, and the tallest the box may stand, px. */
const BESIDE = 44;
const TALLEST = 300;

/** Lid over base in section, drawn apart and to scale, with the letters that the list of sizes goes by. */
export const BoxSection = ({
  box,
  letters = {},
  label,
}: {
  box: BoxSizes;
  letters?: Partial<Record<BoxFeature, string>>;
  label: string;
}) => {
  const total = box.lidHeight + box.baseHeight + box.tenonLength;
  const scale = Math.min((WIDTH - 2 * BESIDE) / box.outside, (TALLEST - APART) / total);
  const lidInTheRecess = box.recessIn === 'lid';
  // Mouth and shoulder in px: the tenon, up or down, stands in the space between them.
  const lidPlane = TOP + box.lidHeight * scale;
  const basePlane = lidPlane + box.tenonLength * scale + APART;
  const height = basePlane + box.baseHeight * scale + 10;
  const recessY = (s: number): number => (lidInTheRecess ? lidPlane - s * scale : basePlane + s * scale);
  const tenonY = (s: number): number => (lidInTheRecess ? basePlane - s * scale : lidPlane + s * scale);
  const pixel = (v: number): number => Math.round(v * 100) / 100;

  const outline = (half: (box: BoxSizes, turn: 0 | 0.5) => Point[], y: (s: number) => number): string => {
    const right = half(box, 0).map(([r, s]) => `${pixel(AXIS + r * scale)} ${pixel(y(s))}`);
    const left = half(box, 0.5).map(([r, s]) => `${pixel(AXIS - r * scale)} ${pixel(y(s))}`);
    return `M${right.join('L')}L${left.reverse().join('L')}Z`;
  };
  const ring = (side: 1 | -1): string => {
    const outer = AXIS + (side * (box.insert ?? 0) * scale) / 2;
    return `M${pixel(outer)} ${pixel(recessY(0))}V${pixel(recessY(box.recessDepth))}`;
  };

  const sides: Record<'left' | 'right', Callout[]> = { left: [], right: [] };
  for (const feature of FEATURES) {
    const text = letters[feature];
    const found = text ? featureAt(box, feature) : null;
    if (!text || !found) continue;
    const [r, s] = found.at;
    const side = found.piece === 'recess' ? 'right' : 'left';
    const x = side === 'right' ? AXIS + r * scale : AXIS - r * scale;
    sides[side].push({
      name: feature,
      at: [pixel(x), pixel(found.piece === 'recess' ? recessY(s) : tenonY(s))],
      text,
      look: true,
    });
  }

  return (
    <svg
      class="drawing"
      viewBox={`0 0 ${WIDTH} ${Math.ceil(height)}`}
      role="img"
      aria-label={label}
      fill="none"
      stroke="var(--ink)"
      stroke-width="1.6"
      stroke-linejoin="round"
    >
      <path class="recess" d={outline(recessHalf, recessY)} fill="var(--wood)" fill-opacity="0.5" />
      <path class="tenon" d={outline(tenonHalf, tenonY)} fill="var(--wood)" />
      {box.insert !== null && <path class="insert" d={ring(1) + ring(-1)} stroke-dasharray="6 3" />}
      <path
        d={`M${AXIS} ${TOP - 6}V${pixel(height - 4)}`}
        stroke="var(--line)"
        stroke-width="1"
        stroke-dasharray="14 4 3 4"
      />
      <Callouts callouts={sides.right} x={WIDTH - 22} low={TOP + 6} high={height - 12} />
      <Callouts callouts={sides.left} x={22} low={TOP + 6} high={height - 12} side="left" />
    </svg>
  );
};
