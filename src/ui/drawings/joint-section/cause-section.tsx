import '../drawings.css';
import { useId } from 'preact/hooks';
import { grooveOf, mate, outlineOf, type Point, type ThreadedPair } from './thread-profile.ts';

/** Where in a joint a cause acts. */
export type CausePlace = 'flanks' | 'crests' | 'floor' | 'shoulder' | 'start' | 'spot' | 'whole';

interface Props {
  readonly pair: ThreadedPair;
  /** Room between tenon end and floor, mm; drawn no less than a line apart. */
  readonly bottomGap: number;
  /** Null draws the joint alone. */
  readonly place: CausePlace | null;
  readonly names: { readonly recess: string; readonly tenon: string; readonly place: string | null };
  readonly label: string;
}

const WIDTH = 362;
const HEIGHT = 186;
const THREADS = 3;
/** Wood left and right of the thread, in pitches: base with its shoulder, floor of the recess. */
const BEFORE = 0.55;
const BEHIND = 0.8;

const round = (value: number): number => Math.round(value * 100) / 100;

/** Recess above, tenon below, one wall of this joint: shoulder on the left, floor on the right; the cause marked where it acts. */
export const CauseSection = ({ pair, bottomGap, place, names, label }: Props) => {
  const id = useId();
  const { pitch, halfAngle } = pair;
  const recess = grooveOf('recess', pair.recess, pitch, halfAngle);
  const tenon = grooveOf('tenon', pair.tenon, pitch, halfAngle);
  const { shift, engaged } = mate(recess, tenon, pitch, pair.pose);
  const length = THREADS * pitch;
  const scale = WIDTH / ((THREADS + BEFORE + BEHIND) * pitch);
  const middle = (engaged.from + engaged.to) / 2;
  const x = (z: number): number => round((z + BEFORE * pitch) * scale);
  const y = (r: number): number => round(HEIGHT / 2 - (r - middle) * scale);
  const line = (points: readonly Point[]): string => points.map(([z, r]) => `${x(z)},${y(r)}`).join(' ');

  const within = (points: readonly Point[]): Point[] =>
    points.map(([z, r]) => [Math.min(length, Math.max(0, z)), r]);
  const end = length + Math.max(0.04 * pitch, Math.min(0.35 * pitch, bottomGap));
  const [top, bottom, right] = [middle + 40 * pitch, middle - 40 * pitch, length + BEHIND * pitch];
  const recessLine = within(outlineOf(recess, pitch, THREADS + 2, -pitch));
  const tenonLine = within(outlineOf(tenon, pitch, THREADS + 2, shift - 1.5 * pitch));
  const relief = Math.max(recess.root, tenon.crest);
  const recessPiece: readonly Point[] = [
    [0, top],
    ...recessLine,
    [length, relief],
    [end, relief],
    [end, bottom],
    [right, bottom],
    [right, top],
  ];
  const tenonPiece: readonly Point[] = [
    [-BEFORE * pitch, bottom],
    [-BEFORE * pitch, top],
    [-0.012 * pitch, top],
    [-0.012 * pitch, tenon.crest],
    ...tenonLine,
    [length, bottom],
  ];

  const ridges = Array.from({ length: THREADS + 1 }, (_, i) => i * pitch + shift);
  const flank = (z: number, side: 1 | -1): string => {
    const wall = (r: number): Point => [z + (side > 0 ? tenon.ahead(r) : -tenon.behind(r)), r];
    return line(within([wall(engaged.from), wall(engaged.to)]));
  };
  const crest = (z: number): string => {
    const from = z + tenon.ahead(tenon.crest);
    return line(
      within([
        [from, tenon.crest],
        [z + pitch - tenon.behind(tenon.crest), tenon.crest],
      ]),
    );
  };
  const marked: Readonly<Record<CausePlace, readonly string[]>> = {
    // At either end half a groove has one flank inside the joint.
    flanks: ridges.flatMap((z, i) => [
      ...(i > 0 ? [flank(z, -1)] : []),
      ...(i < THREADS ? [flank(z, 1)] : []),
    ]),
    crests: ridges.slice(0, THREADS).map(crest),
    floor: [
      line([
        [end, relief],
        [end, middle - 3 * pitch],
      ]),
    ],
    shoulder: [
      line([
        [0, recess.crest],
        [0, middle + 3 * pitch],
      ]),
    ],
    start: [flank(length, -1), crest((THREADS - 1) * pitch + shift)],
    spot: [flank(2 * pitch + shift, 1)],
    whole: [line(recessLine), line(tenonLine)],
  };
  return (
    <svg
      class="drawing cause"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={label}
      data-place={place ?? undefined}
    >
      <clipPath id={id}>
        <rect width={WIDTH} height={HEIGHT} />
      </clipPath>
      <g clip-path={`url(#${id})`} stroke-linejoin="round">
        <rect width={WIDTH} height={HEIGHT} fill="var(--sheet)" />
        <polygon points={line(tenonPiece)} fill="var(--wood)" stroke="var(--ink)" stroke-width="1.6" />
        <polygon points={line(recessPiece)} fill="var(--wood)" stroke="var(--ink)" stroke-width="1.6" />
        <polygon points={line(recessPiece)} fill="var(--ink)" fill-opacity="0.1" />
        {[0.12, 0.3, 0.68, 0.86].map((part) => (
          <path
            key={part}
            d={`M0 ${round(HEIGHT * part)}q${WIDTH / 4} 5 ${WIDTH / 2} 0t${WIDTH / 2} 0`}
            fill="none"
            stroke="var(--ink)"
            stroke-opacity="0.25"
          />
        ))}
        {place && (
          <g fill="none" stroke="var(--blue)" stroke-width="6" stroke-linecap="round">
            {marked[place].map((points, at) => (
              <polyline key={`${place}${at}`} points={points} />
            ))}
          </g>
        )}
      </g>
      <g fill="var(--ink)" font-weight="700" class="names">
        <text x="36%" y="24">
          {names.recess}
        </text>
        <text x="8" y={HEIGHT - 10}>
          {names.tenon}
        </text>
        {names.place && (
          <text x={WIDTH - 8} y={HEIGHT - 10} text-anchor="end">
            {names.place}
          </text>
        )}
      </g>
    </svg>
  );
};
