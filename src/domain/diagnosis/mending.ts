import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { MINUTES, SET_UP_AGAIN } from './moves.ts';
import { FAULT_COUNT, FAULTS, type Fault, faultIndex, type Standing } from './standing.ts';

const F = faultIndex;
/** Minutes for a tenon made again, tried and all. Judgement, no source. */
const REMADE = 60;
const CUT = 5;
/** A crest that is cut no narrower than this, mm. */
const LEAST_CREST = 0.12;

/** The cheapest remedy of each fault that has a price of its own. */
const PRICE: Readonly<Partial<Record<Fault, number>>> = {
  floor: MINUTES['clear-floor'],
  relief: MINUTES['deepen-relief'],
  last: MINUTES['trim-last-thread'],
  lead: MINUTES['chamfer-start'],
  dent: MINUTES['find-dent'],
  once: MINUTES['ease-crests'],
  float: 10,
  four: MINUTES['slacken-jaws'],
  gritty: MINUTES['brush-out'],
  tilted: MINUTES['face-shoulder'],
  hump: MINUTES['face-shoulder'],
  struck: MINUTES['face-shoulder'],
};
const prices = Float64Array.from(FAULTS, (fault) => PRICE[fault] ?? 0);

/** Minutes to open the flanks by `by`, diametral: a cut for each half of the wanted clearance, or a new tenon where no crest would be left. */
const opening = (by: number, at: Standing, box: JointNumbers, setUp: number): number => {
  const count = Math.max(1, by / (box.wanted / 2));
  const crest = Math.max(at.flatTenon, at.flatRecess) - by * 0.577;
  return crest < LEAST_CREST ? REMADE : Math.min(REMADE, CUT * count + setUp);
};

/**
 * Minutes to mend everything that is wrong with a joint, by the cheapest remedy of each fault: what is left of a joint before and after a
 * move says what the move is worth. `canCut`: the setting holds, so a cut needs no set-up first.
 */
export const minutesToMend = (joint: Latent, box: JointNumbers, at: Standing, canCut: boolean): number => {
  const { faults } = at;
  const setUp = canCut ? 0 : box.finished ? REMADE : SET_UP_AGAIN;
  let sum = 0;
  let tenon = 0;
  for (let i = 0; i < FAULT_COUNT; i++) if ((faults[i] as number) > 0) sum += prices[i] as number;
  const tight = faults[F.tight] as number;
  if (tight > 0)
    tenon +=
      joint.fuzz * 0.6 > tight
        ? MINUTES['on-and-off-by-hand']
        : joint.film * 8 > tight
          ? MINUTES['rub-flanks']
          : opening(tight, at, box, setUp);
  const crest = faults[F.crest] as number;
  if (crest > 0) tenon += crest > 0.5 ? REMADE : MINUTES['ease-crests'];
  const late = faults[F.late] as number;
  if (late > 0) tenon += opening(late, at, box, setUp);
  if ((faults[F['crest-late']] as number) > 0) tenon += MINUTES['true-tenon'];
  const twice = faults[F.twice] as number;
  if (twice > 0) tenon += opening(twice, at, box, setUp);
  if ((faults[F.loose] as number) > 0 || (faults[F.thin] as number) > 0 || (faults[F.jumps] as number) > 0)
    tenon = REMADE;
  if ((faults[F.weak] as number) > 0) tenon += MINUTES['harden-and-recut'] + setUp;
  return sum + Math.min(REMADE, tenon);
};
