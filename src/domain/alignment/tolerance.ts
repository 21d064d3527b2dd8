import type { Hand } from '../box/records.ts';
import { LEAN_SHARE } from '../joint/clearance.ts';
import { SLOPE } from '../joint/profile.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse, within } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import { askewFlankShift } from './askew-flank-shift.ts';
import { length, size } from './inputs.ts';
import { bindingMismatch } from './play.ts';
import { type EngagedThread, rockingFreedom } from './rocking.ts';

/** What the alignment of a set-up must serve: a joint with both pieces cut to one depth. */
export interface AlignedJoint {
  readonly pitch: Millimetres;
  readonly hand: Hand;
  /** Recess diameter before threading. */
  readonly opening: Millimetres;
  readonly tenon: Millimetres;
  readonly depth: Millimetres;
  /** Diametral clearance of the flanks. */
  readonly clearance: Millimetres;
  /** Threads engaged. */
  readonly threads: number;
  readonly cutterRadius: Millimetres;
  /** Diameter over which the shoulder bears. */
  readonly shoulder: Millimetres;
}

/** The share of a good joint that misalignment may take. Choices of this project, no outside source. */
const ALLOWED = {
  /** Gap at the far end of the flanks, of the free play. */
  mismatchGap: LEAN_SHARE,
  /** Ridge thinned, of half the pitch. */
  thinning: 0.1,
  /** Gap at the rim that may be seen, mm: the thinnest paper. */
  rimGap: 0.05,
} as const;

export const engagedHeightOf = (joint: AlignedJoint): Millimetres => mm((joint.tenon - joint.opening) / 2);
const playOf = (joint: AlignedJoint): number => joint.clearance * SLOPE;

/** The engaged thread of the joint, with `lost` of its play (mm) taken off. The help of the helix is left out. */
export const threadOf = (joint: AlignedJoint, lost = 0): EngagedThread => ({
  play: mm(playOf(joint) - lost),
  pitchDiameter: mm((joint.opening + joint.tenon) / 2),
  engaged: mm(joint.threads * joint.pitch),
});

/** The refusal for a joint that no judgement can rest on: without clearance, or without overlap. */
const badJoint = (joint: AlignedJoint): Refusal | undefined => {
  const bad = firstRefusal(
    within('pitch', joint.pitch, 0.25, 12.7),
    size('opening', joint.opening),
    size('tenon', joint.tenon),
    size('depth', joint.depth, 24),
    size('clearance', joint.clearance, 6),
    within('threads', joint.threads, 0.5, 50, 'turns'),
    size('cutterRadius', joint.cutterRadius, 200),
    size('shoulder', joint.shoulder, 1500),
  );
  if (bad || joint.tenon - joint.opening >= 0.02) return bad;
  return {
    problem: 'conflict',
    field: 'tenon',
    other: 'opening',
    given: joint.tenon,
    otherGiven: joint.opening,
    nearest: null,
    quantity: 'length',
  };
};

interface LeanLimits {
  /** Of the pair: sum of leans cut on one side of the work, difference of leans cut on opposite sides. */
  readonly mismatch: Radians;
  /** Of each piece when both are cut on the same side. */
  readonly each: Radians;
  /** Mismatch at which the pair no longer goes together. */
  readonly binds: Radians;
}

/** How far the grooves may lean apart: the gap at the far end of the flanks within a quarter of the play. First order. */
export const leanLimits = (joint: AlignedJoint): Result<LeanLimits> => {
  const bad = badJoint(joint);
  if (bad) return refuse(bad);
  const binds = bindingMismatch(joint.clearance, engagedHeightOf(joint));
  if (!binds.ok) return binds;
  const off = ALLOWED.mismatchGap * binds.value;
  return ok({ mismatch: rad(off), each: rad(off / 2), binds: binds.value });
};

/** Radius of the work halfway down the groove. */
const halfwayDown = (joint: AlignedJoint, part: Part): number =>
  part === 'tenon' ? (joint.tenon - joint.depth) / 2 : (joint.opening + joint.depth) / 2;

/** Ridge thinned on one piece by a tilt of the wrong sign, over what the upright disc takes anyway, mm; halfway down the groove. */
export const thinningByTilt = (joint: AlignedJoint, part: Part, tilt: Radians): Result<Millimetres> => {
  const bad = badJoint(joint);
  if (bad) return refuse(bad);
  const shift = (helixTilt: number) =>
    askewFlankShift({
      part,
      wall: 'inner',
      pitch: joint.pitch,
      hand: joint.hand,
      radius: mm(halfwayDown(joint, part)),
      cutterRadius: mm(joint.cutterRadius - joint.depth / 2),
      lean: rad(0),
      helixTilt: rad(helixTilt),
    });
  const upright = shift(0);
  const wrongWay = (joint.hand === 'right' ? -1 : 1) * Math.abs(tilt);
  const tilted = upright.ok ? shift(wrongWay) : upright;
  return upright.ok && tilted.ok ? ok(mm(2 * (tilted.value - upright.value))) : tilted;
};

/** The tilt of the wrong sign that thins one piece's ridge by a tenth of half the pitch, rad. Within 10 % to 3 degrees. */
export const tiltLimit = (joint: AlignedJoint, part: Part): Result<Radians> => {
  // Thinning is quadratic, K ((lead + tilt)^2 - lead^2), so one trial tilt of the size of the lead (3 K lead^2) gives K.
  const lead = joint.pitch / (2 * Math.PI * halfwayDown(joint, part));
  const trial = Math.min(lead, 0.1);
  const thinned = thinningByTilt(joint, part, rad(trial));
  if (!thinned.ok) return thinned;
  const perSquare = thinned.value / (trial * trial + 2 * lead * trial);
  const allowed = (ALLOWED.thinning * joint.pitch) / 2;
  return ok(rad(Math.sqrt(lead * lead + allowed / perSquare) - lead));
};

interface SquareLimits {
  /** Both pieces together, and the lid still rocks flush. */
  readonly flush: Radians;
  /** Both together, and no more than the thinnest paper goes in at the rim. */
  readonly paperAtRim: Radians;
}

/** How far shoulder and thread may be out of square, summed over both pieces, rad, when lean has used up `lost` (mm) of the play. First order. */
export const squareLimits = (joint: AlignedJoint, lost: Millimetres = mm(0)): Result<SquareLimits> => {
  const bad = badJoint(joint) ?? firstRefusal(length('lost', lost, 6));
  if (bad) return refuse(bad);
  const freedom = rockingFreedom(threadOf(joint, lost));
  if (!freedom.ok) return freedom;
  return ok({ flush: freedom.value, paperAtRim: rad(freedom.value + ALLOWED.rimGap / joint.shoulder) });
};
