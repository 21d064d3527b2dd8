import type { GoingOn, Seated } from '../../src/domain/box/trial-words.ts';
import {
  degreesFromRad,
  inches,
  type Millimetres,
  mm,
  mmFromInches,
  moisture,
  rad,
} from '../../src/domain/units/brands.ts';
import { leastClearance } from '../../src/domain/wood/movement.ts';
import type { Joint } from './cut-joint.ts';
import { expected } from './scenario.ts';
import { strainIn } from './woods.ts';

/** What is felt and seen when the lid is tried. */
export interface Felt {
  readonly goingOn: GoingOn | null;
  /** Turns it went on before it stopped. */
  readonly turnsOn: number | null;
  readonly seated: Seated | null;
  /** Widest gap under the lid, mm. */
  readonly open: Millimetres;
}

/** One correction with the dial: half a mark, in depth. */
export const HALF_MARK: Millimetres = mmFromInches(inches(0.002));

/** A gap under the lid that nobody would see, mm. */
const UNSEEN = 0.05;
const TAN_30 = Math.tan(Math.PI / 6);
/** Rim of the lid outside the thread, mm. */
const RIM = 8;

/** Gap at the rim when the thread stands askew and play cannot take it up: rim diameter times (tilt - play/(diameter + length tan A)). */
const gapUnderLid = (joint: Joint, clearance: number, pitch: number, threads: number): number => {
  const play = Math.max(0, clearance) * TAN_30;
  const rocking = degreesFromRad(rad(play / (joint.diameter + threads * pitch * TAN_30)));
  const left = Math.max(0, joint.chuckTilt - rocking);
  return (joint.diameter + RIM) * ((left * Math.PI) / 180);
};

const pinched = (joint: Joint, clearance: number, wood: string): number => {
  const piece = { strain: strainIn(wood), grain: 'end', change: moisture(-joint.drying) } as const;
  return expected(leastClearance(mm(clearance), joint.diameter, piece, piece, rad(Math.PI / 2)));
};

/** Tries the lid after the tenon was deepened by so much. Everything here follows from the joint's numbers. */
export const tryLid = (
  joint: Joint,
  deepened: Millimetres,
  fitted: { readonly pitch: Millimetres; readonly threads: number; readonly wood: string },
): Felt => {
  const mouth = joint.clearance + 2 * deepened;
  const byShoulder = mouth - joint.creepLoss;
  const tight = joint.wanted - joint.halfBand;
  const slack = joint.wanted + joint.halfBand;
  const stuck = (goingOn: GoingOn, turnsOn: number | null): Felt => ({
    goingOn,
    turnsOn,
    seated: null,
    open: mm(0),
  });
  if (mouth <= 0) return stuck('will-not-start', 0);
  if (joint.creepLoss > 0 && byShoulder < tight) {
    const way = Math.max(0, (mouth - tight) / joint.creepLoss);
    return stuck('drags-more-each-turn', Math.max(0.5, Math.round(2 * way * fitted.threads) / 2));
  }
  if (mouth < tight) return stuck('stiff-all-the-way', null);
  if (pinched(joint, byShoulder, fitted.wood) < tight / 2) return stuck('tight-twice-a-turn', null);
  const open = gapUnderLid(joint, byShoulder, fitted.pitch, fitted.threads);
  const loose = mouth > slack + 2 * joint.halfBand ? 'rattles-sideways' : mouth > slack ? 'end-play' : null;
  return {
    goingOn: loose,
    turnsOn: null,
    seated: open > UNSEEN ? 'open-one-side' : 'flush',
    open: mm(open > UNSEEN ? open : 0),
  };
};
