import { type Callout, type PlacedCallout, placeCallouts } from './place-callouts.ts';
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

export interface SectionOf extends ThreadedPair {
  /** Turns of thread shown, 2 to 6. */
  readonly threads: number;
  readonly labels?: SectionLabels;
}

/** What the section draws, in units of the drawing; outlines are lists of points "x,y x,y". */
export interface SectionFigure {
  readonly height: number;
  /** Right edge of the wood. */
  readonly right: number;
  readonly pitch: number;
  readonly recess: string;
  readonly tenon: string;
  /** A piece as it was cut, where its wood has moved since. */
  readonly unmoved: readonly string[];
  readonly grain: string;
  readonly flanks: readonly string[];
  /** The flanks overlap: the pair cannot go together. */
  readonly overlaps: boolean;
  readonly callouts: readonly PlacedCallout[];
}

export const WIDTH = 362;
export const LEFT = 4;
export const TOP = 26;
/** Wood shown behind the roots, in pitches. */
const BODY = 0.45;
const HEIGHT_STEP = 12;
/** From the wood to the labels. */
export const LABELS = 20;

/** The joint in section and to scale: recess above, tenon below, one wall, the axis to the bottom. */
export const sectionFigure = ({ threads, labels = {}, ...pair }: SectionOf): SectionFigure => {
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
  const line = (points: readonly Point[]): string => points.map(([z, r]) => `${x(z)},${y(r)}`).join(' ');

  // A turn more at either end, cut off by the frame, so that the leaning of the last tooth is seen too.
  const along = (groove: typeof recess, shift: number): Point[] =>
    outlineOf(groove, pitch, threads + 3, shift - pitch);
  const tenonAt = fit.shift - pitch / 2;
  const closed = (points: readonly Point[], r: number): string =>
    line([...points, [points.at(-1)?.[0] ?? 0, r], [points[0]?.[0] ?? 0, r]]);
  const unmoved = (part: 'recess' | 'tenon', shift: number): string[] =>
    pair[part].strain
      ? [line(along(grooveOf(part, { ...pair[part], strain: 0 }, pitch, halfAngle), shift))]
      : [];

  const { from, to } = fit.engaged;
  const bearing = (z: number, isBehind: boolean): string => {
    const wall = (r: number): Point => [z + (isBehind ? -tenon.behind(r) : tenon.ahead(r)), r];
    return line([wall(from), wall(to)]);
  };
  const bearsOnOne = pair.pose === 'home' && fit.play >= 0;
  const ridges = to > from ? Array.from({ length: threads + 1 }, (_, i) => i * pitch + fit.shift) : [];

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
  return {
    height,
    right,
    pitch: x(pitch),
    recess: closed(along(recess, 0), top + pitch),
    tenon: closed(along(tenon, tenonAt), bottom - pitch),
    unmoved: [...unmoved('recess', 0), ...unmoved('tenon', tenonAt)],
    grain: grain(right, y(top), y(recess.root), y(tenon.root), y(bottom)),
    flanks: ridges.flatMap((z) => (bearsOnOne ? [bearing(z, false)] : [bearing(z, false), bearing(z, true)])),
    overlaps: fit.play < 0,
    callouts: placeCallouts(callouts, { x: right + LABELS, low: TOP + 4, high: height - 14 }),
  };
};

/** Growth lines lie to so many units: decorative lines need not be drawn again at every move of a slider. */
const GRAIN_STEP = 4;

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
      return `M${LEFT} ${GRAIN_STEP * Math.round(level / GRAIN_STEP)}q${(right - LEFT) / 4} 4 ${(right - LEFT) / 2} 0t${(right - LEFT) / 2} 0`;
    })
    .join('');
