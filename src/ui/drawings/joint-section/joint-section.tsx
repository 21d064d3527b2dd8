import '../drawings.css';
import { useId } from 'preact/hooks';
import { type Callout, Callouts } from './callouts.tsx';
import { grooveOf, mate, outlineOf, type Point, type ThreadedPair } from './thread-profile.ts';

/** Words and numbers at the parts of the section, made by the caller in the turner's unit; what is not given is not shown. */
export interface SectionLabels {
  readonly pitch?: string;
  readonly recess?: string;
  readonly tenon?: string;
  readonly recessDepth?: string;
  readonly tenonDepth?: string;
  readonly play?: string;
  readonly tenonCrestGap?: string;
  readonly recessCrestGap?: string;
}

export interface JointSectionProps extends ThreadedPair {
  /** Turns of thread shown, 2 to 6. */
  readonly threads: number;
  readonly labels?: SectionLabels;
  /** The whole drawing in one sentence. */
  readonly label: string;
}

const WIDTH = 362;
const LEFT = 4;
const TOP = 26;
/** Wood shown behind the roots, in pitches. */
const BODY = 0.45;
const HEIGHT_STEP = 12;

/** The joint in section and to scale: recess above, tenon below, one wall, the axis to the bottom. */
export const JointSection = ({ threads, labels = {}, label, ...pair }: JointSectionProps) => {
  const frame = useId();
  const { pitch, halfAngle } = pair;
  const recess = grooveOf('recess', pair.recess, pitch, halfAngle);
  const tenon = grooveOf('tenon', pair.tenon, pitch, halfAngle);
  const fit = mate(recess, tenon, pitch, pair.pose);

  const right = Object.values(labels).some((text) => text !== labels.pitch) ? 226 : WIDTH - LEFT;
  const scale = (right - LEFT) / (threads * pitch);
  const top = Math.max(recess.root, tenon.crest) + BODY * pitch;
  const bottom = Math.min(tenon.root, recess.crest) - BODY * pitch;
  // In steps, so that what stands below does not creep while a slider is moved.
  const height = HEIGHT_STEP * Math.ceil((TOP + (top - bottom) * scale + 8) / HEIGHT_STEP);
  const x = (z: number): number => Math.round((LEFT + z * scale) * 100) / 100;
  const y = (r: number): number => Math.round((TOP + (top - r) * scale) * 100) / 100;
  const line = (points: readonly Point[]): string =>
    `M${points.map(([z, r]) => `${x(z)} ${y(r)}`).join('L')}`;

  // A turn more at either end, cut off by the frame, so that the leaning of the last tooth is seen too.
  const along = (groove: typeof recess, shift: number): Point[] =>
    outlineOf(groove, pitch, threads + 3, shift - pitch);
  const recessLine = along(recess, 0);
  const tenonLine = along(tenon, fit.shift - pitch / 2);
  const unmoved = (part: 'recess' | 'tenon', shift: number): string =>
    line(along(grooveOf(part, { ...pair[part], strain: 0 }, pitch, halfAngle), shift));
  const closed = (points: readonly Point[], r: number): string =>
    `${line(points)}V${y(r)}H${x(points[0]?.[0] ?? 0)}Z`;

  const bears = fit.play < 0 ? 'var(--chipped)' : 'var(--blue)';
  const engaged = fit.engaged.to > fit.engaged.from;
  const ridges = Array.from({ length: threads + 1 }, (_, i) => i * pitch + fit.shift);
  const { from, to } = fit.engaged;
  const flanks = ridges.flatMap((z) => {
    const wall = (r: number, behind = false): Point => [z + (behind ? -tenon.behind(r) : tenon.ahead(r)), r];
    const bearing = line([wall(from), wall(to)]);
    return pair.pose === 'home' && fit.play >= 0
      ? [bearing]
      : [bearing, line([wall(from, true), wall(to, true)])];
  });

  const middle = (a: number, b: number): number => (a + b) / 2;
  const last = threads * pitch;
  const ridge = (threads - 1) * pitch;
  const places: Readonly<Record<Exclude<keyof SectionLabels, 'pitch'>, Point>> = {
    recessDepth: [ridge - pitch / 2, recess.root],
    tenonCrestGap: [ridge + pitch / 2, middle(recess.root, tenon.crest)],
    tenon: [last - tenon.behind(tenon.crest) + fit.shift, tenon.crest],
    play: [ridge - tenon.behind(middle(from, to)) + fit.shift + fit.gapBehind / 2, middle(from, to)],
    recess: [ridge - pitch / 2 + recess.ahead(recess.crest), recess.crest],
    recessCrestGap: [ridge, middle(recess.crest, tenon.root)],
    tenonDepth: [ridge - pitch + fit.shift, tenon.root],
  };
  const callouts = (Object.keys(places) as (keyof typeof places)[]).flatMap((name): Callout[] => {
    const text = labels[name];
    const [z, r] = places[name];
    return text ? [{ name, at: [x(z), y(r)], text, look: name === 'play' }] : [];
  });

  return (
    <svg
      class="drawing"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={label}
      fill="none"
      stroke="var(--ink)"
      stroke-width="1.4"
      stroke-linejoin="round"
    >
      <clipPath id={frame}>
        <path d={`M${LEFT} ${TOP}H${right}V${height - 6}H${LEFT}Z`} />
      </clipPath>
      <g clip-path={`url(#${frame})`}>
        <path class="recess" d={closed(recessLine, top + pitch)} fill="var(--wood)" fill-opacity="0.5" />
        <path class="tenon" d={closed(tenonLine, bottom - pitch)} fill="var(--wood)" />
        <path
          class="grain"
          d={grain(right, y(top), y(recess.root), y(tenon.root), y(bottom))}
          stroke-width="0.8"
        />
        {pair.recess.strain ? <path class="unmoved" d={unmoved('recess', 0)} stroke-dasharray="3 3" /> : null}
        {pair.tenon.strain ? (
          <path class="unmoved" d={unmoved('tenon', fit.shift - pitch / 2)} stroke-dasharray="3 3" />
        ) : null}
        {engaged && (
          <path class="flank" d={flanks.join('')} stroke={bears} stroke-width="3.5" stroke-linecap="round" />
        )}
      </g>
      {labels.pitch && (
        <g stroke="var(--soft)" stroke-width="1">
          <path d={`M${x(0)} ${TOP - 8}v14M${x(pitch)} ${TOP - 8}v14M${x(0)} ${TOP - 4}H${x(pitch)}`} />
          <text x={x(pitch) + 8} y={TOP - 8} fill="var(--soft)">
            {labels.pitch}
          </text>
        </g>
      )}
      <Callouts callouts={callouts} x={right + 20} low={TOP + 4} high={height - 14} />
    </svg>
  );
};

/** A few growth lines in either body, along the axis. */
const grain = (right: number, top: number, root: number, tenonRoot: number, bottom: number): string =>
  [
    [0.35, top, root],
    [0.7, top, root],
    [0.35, tenonRoot, bottom],
    [0.75, tenonRoot, bottom],
  ]
    .map(([part, from, to]) => {
      const level = (from as number) + ((to as number) - (from as number)) * (part as number);
      return `M${LEFT} ${level.toFixed(1)}q${(right - LEFT) / 4} 4 ${(right - LEFT) / 2} 0t${(right - LEFT) / 2} 0`;
    })
    .join('');
