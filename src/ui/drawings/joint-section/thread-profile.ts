/** One piece of the joint as plain numbers, mm and radians. */
export interface ThreadedPiece {
  /** Turned diameter: bore of the recess, outside of the tenon. */
  readonly diameter: number;
  readonly depth: number;
  readonly tipFlat: number;
  /** Lean of its grooves, ds/dr with s from the mouth of that piece; 0 when not given. */
  readonly lean?: number;
  /** Movement of its wood since it was cut, as a radial strain; 0 when not given. */
  readonly strain?: number;
}

export interface ThreadedPair {
  readonly pitch: number;
  readonly halfAngle: number;
  readonly recess: ThreadedPiece;
  readonly tenon: ThreadedPiece;
  /** Pulled home the tenon bears on one flank and the play lies at the other; centred it lies at both. */
  readonly pose: 'home' | 'centred';
}

/** Along the axis into the recess, and out from the axis, mm. */
export type Point = readonly [z: number, r: number];

/** A groove about z = 0: its radii, and how far each wall stands from the middle at a radius. */
export interface Groove {
  readonly crest: number;
  readonly root: number;
  /** The wall further along +z and the one further along -z, as functions of the radius. */
  readonly ahead: (r: number) => number;
  readonly behind: (r: number) => number;
  /** Mouth, corners of the tip, mouth: from -z to +z. */
  readonly points: readonly [Point, Point, Point, Point];
}

/**
 * The groove that a leaning 60 degree tip leaves: the wall further into the piece stands at the half angle plus the lean as
 * seen from the root, the other at the half angle less it. The corner of the tip that leads reaches the full depth. A cut
 * deeper than the V takes the crest down with it. z runs into the recess, so the tenon, which meets it end for end, is reversed.
 */
export const grooveOf = (
  part: 'recess' | 'tenon',
  piece: ThreadedPiece,
  pitch: number,
  halfAngle: number,
): Groove => {
  const outward = part === 'recess' ? 1 : -1;
  const swell = 1 + (piece.strain ?? 0);
  const lean = -outward * (piece.lean ?? 0);
  const [sin, half] = [Math.sin(lean), piece.tipFlat / 2];
  const across = half * Math.cos(lean);
  const inner = { slope: Math.tan(halfAngle + lean), corner: half * (Math.abs(sin) - sin) };
  const mouth = { slope: Math.tan(halfAngle - lean), corner: half * (Math.abs(sin) + sin) };
  const sharp =
    (pitch - 2 * across + inner.slope * inner.corner + mouth.slope * mouth.corner) /
    (inner.slope + mouth.slope);
  const depth = Math.min(piece.depth, sharp);
  const cutTo = piece.diameter / 2 + outward * piece.depth;
  const radius = (height: number): number => (cutTo - outward * height) * swell;
  const height = (r: number): number => outward * (cutTo - r / swell);
  const wall =
    ({ slope, corner }: { slope: number; corner: number }) =>
    (r: number): number =>
      across + (height(r) - corner) * slope;
  const [ahead, behind] = part === 'recess' ? [inner, mouth] : [mouth, inner];
  const crest = radius(depth);
  const [toAhead, toBehind] = [wall(ahead), wall(behind)];
  return {
    crest,
    root: radius(0),
    ahead: toAhead,
    behind: toBehind,
    points: [
      [-toBehind(crest), crest],
      [-across, radius(behind.corner)],
      [across, radius(ahead.corner)],
      [toAhead(crest), crest],
    ],
  };
};

interface MatedFlanks {
  /** Axial gap at each side of the ridge, least over the engaged height, tenon as posed. */
  readonly gapAhead: number;
  readonly gapBehind: number;
  /** Free axial play; negative when the pair cannot go together. */
  readonly play: number;
  /** How far the tenon stands from the middle, along +z. */
  readonly shift: number;
  /** Crest of the recess to crest of the tenon; no thread when `to` is not beyond `from`. */
  readonly engaged: { readonly from: number; readonly to: number };
  readonly tenonCrestGap: number;
  readonly recessCrestGap: number;
}

/** How two grooves stand to each other, a ridge of the recess in a groove of the tenon. */
export const mate = (
  recess: Groove,
  tenon: Groove,
  pitch: number,
  pose: ThreadedPair['pose'],
): MatedFlanks => {
  const engaged = { from: recess.crest, to: tenon.crest };
  const least = (gap: (r: number) => number): number => Math.min(gap(engaged.from), gap(engaged.to));
  // The ridge lies between two grooves of the recess, half a pitch off: its far wall is the near wall of the groove ahead.
  const ahead = least((r) => tenon.ahead(r) + recess.behind(r) - pitch / 2);
  const behind = least((r) => tenon.behind(r) + recess.ahead(r) - pitch / 2);
  // A pair that cannot go together has no flank to be pulled home on.
  const shift = pose === 'home' && ahead + behind >= 0 ? -ahead : (behind - ahead) / 2;
  return {
    gapAhead: ahead + shift,
    gapBehind: behind - shift,
    play: ahead + behind,
    shift,
    engaged,
    tenonCrestGap: recess.root - tenon.crest,
    recessCrestGap: recess.crest - tenon.root,
  };
};

/** The outline of a thread of so many turns from z = 0, its first groove half a pitch in, moved along by `shift`. */
export const outlineOf = (groove: Groove, pitch: number, turns: number, shift: number): Point[] =>
  Array.from({ length: turns }, (_, i) => (i + 0.5) * pitch + shift).flatMap((z) =>
    groove.points.map(([dz, r]): Point => [z + dz, r]),
  );
