import { type Cutter, outsideBy, type Span, spanIn } from './cutter-solid.ts';
import { jigAt, type Rigid, type Turn, turned, type Vec } from './rigid.ts';
import { leastBetween, leastOver } from './search.ts';

/** One cut: the fixed cutter, and the work carried past it on the jig's screw. A left-hand screw has a negative pitch. */
export interface Sweep {
  readonly cutter: Cutter;
  readonly part: 'tenon' | 'recess';
  readonly pitch: number;
  /** Pose of the jig at a crank angle; the same for all unless something gives. */
  readonly jig: (crank: number) => Rigid;
}

const place = (jig: Rigid, turn: Turn, v: Vec): Vec => {
  const [x, y, z] = turned(turn, v);
  return [x + jig.shift[0], y + jig.shift[1], z + jig.shift[2]];
};

/** A point of the work (cylindrical, s along the work's axis into the piece) as it stands in the lathe at a crank angle. */
export const inLathe = (sweep: Sweep, radius: number, azimuth: number, s: number, crank: number): Vec => {
  const jig = sweep.jig(crank);
  const at: Vec = [
    radius * Math.cos(azimuth + crank),
    radius * Math.sin(azimuth + crank),
    s + (sweep.pitch * crank) / (2 * Math.PI),
  ];
  return place(jig, jig.turn, at);
};

/** Crank angle at which an azimuth of the work faces the cutter, `turns` turns further on. */
const facing = (sweep: Sweep, azimuth: number, turns = 0): number => {
  const { shift } = sweep.jig(0);
  return Math.atan2(-shift[1], -shift[0]) - azimuth + 2 * Math.PI * turns;
};

const spanAt = (sweep: Sweep, radius: number, azimuth: number, crank: number): Span => {
  const { turn } = sweep.jig(crank);
  return spanIn(sweep.cutter, inLathe(sweep, radius, azimuth, 0, crank), [
    turn[0][2],
    turn[1][2],
    turn[2][2],
  ]);
};

const SIDEWAYS = { tenon: Math.PI / 3, recess: Math.PI / 2 } as const;

/**
 * The walls that the whole sweep leaves at a radius and an azimuth: the union, over the crank, of the lengths of the axial line that lie
 * in the cutter. Tracked without jumps in azimuth, so neighbouring turns lie a pitch apart.
 */
export const wallsAt = (sweep: Sweep, radius: number, azimuth: number, turns = 0): Span => {
  const middle = facing(sweep, azimuth, turns);
  const wide = SIDEWAYS[sweep.part];
  const pieces = 600;
  const edge = (of: (span: Span) => number) =>
    leastOver(
      (crank) => {
        const span = spanAt(sweep, radius, azimuth, crank);
        return span.low <= span.high ? of(span) : Number.POSITIVE_INFINITY;
      },
      middle - wide,
      middle + wide,
      pieces,
    );
  return { low: edge((span) => span.low), high: -edge((span) => -span.high) };
};

/** Radius of the bottom of the groove at an azimuth and turn: the last axial line that the sweep still touches. */
export const rootAt = (sweep: Sweep, azimuth: number, turns = 0): number => {
  const middle = facing(sweep, azimuth, turns);
  const axial = -(sweep.pitch * middle) / (2 * Math.PI);
  const touches = (radius: number): boolean =>
    leastBetween(
      (crank) =>
        leastBetween(
          (s) => outsideBy(sweep.cutter, inLathe(sweep, radius, azimuth, s, crank)),
          axial - 4,
          axial + 4,
          34,
        ),
      middle - 0.2,
      middle + 0.2,
      30,
    ) <= 0;
  const { shift } = sweep.jig(middle);
  const reach = Math.hypot(shift[0], shift[1]) + (sweep.part === 'tenon' ? -1 : 1) * sweep.cutter.radius;
  const out = sweep.part === 'tenon' ? 1 : -1;
  // `deep` is past the bottom, `shallow` in the groove.
  let [deep, shallow] = [reach - out, reach + out];
  for (let step = 0; step < 34; step += 1) {
    const mid = (deep + shallow) / 2;
    if (touches(mid)) shallow = mid;
    else deep = mid;
  }
  return (deep + shallow) / 2;
};

/** How a groove is wanted: the jig in front of the lathe's axis has x < 0. */
export interface Wanted {
  readonly part: 'tenon' | 'recess';
  readonly pitch: number;
  readonly cutter: Cutter;
  /** Radius of the turned piece. */
  readonly radius: number;
  readonly depth: number;
  /** The side of the work that the cutter touches: 1 the rear, -1 the front. */
  readonly side: 1 | -1;
  readonly yawDeg?: number;
  readonly tiltDeg?: number;
}

/**
 * The cut whose leading corner reaches the depth, counted along the work's own radius. (A dial feeds across the lathe, and falls short of
 * that by 1 - cos of the yaw: a thousandth of a millimetre at 2 degrees.)
 */
export const cutTo = (wanted: Wanted): Sweep => {
  const { part, pitch, cutter, radius, depth, side, yawDeg = 0, tiltDeg = 0 } = wanted;
  const out = part === 'tenon' ? 1 : -1;
  const at = (distance: number): Sweep => {
    const jig = jigAt(-side * distance, 0, yawDeg, tiltDeg);
    return { cutter, part, pitch, jig: () => jig };
  };
  const root = radius - out * depth;
  let distance = root + out * cutter.radius;
  for (let again = 0; again < 3; again += 1) distance += root - rootAt(at(distance), 0);
  return at(distance);
};
