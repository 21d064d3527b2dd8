import { axialGap } from '../../src/domain/alignment/play.ts';
import type { BoreReading, TenonReading } from '../../src/domain/box/records.ts';
import { SLOPE } from '../../src/domain/joint/profile.ts';
import type { Random } from '../../src/domain/random.ts';
import {
  type Degrees,
  degrees,
  type Millimetres,
  mm,
  radFromDegrees,
} from '../../src/domain/units/brands.ts';
import { fitWith, type Order, soundIn, wantedTenon } from './draw-plan.ts';
import { expected, SCENARIO } from './scenario.ts';
import { typedInches } from './typed.ts';

/** Which of the things that truly matter were not seen to on this joint. */
export interface Neglect {
  readonly gap: boolean;
  readonly touchOff: boolean;
  /** The groove had to be found again and was not picked up. */
  readonly pickUp: boolean;
}

/** A joint as it truly is, beside what was read and written down. */
export interface Joint {
  readonly bore: readonly BoreReading[];
  readonly tenon: readonly TenonReading[];
  /** Clearance that follows from what was written down. */
  readonly recorded: Millimetres;
  /** True clearance at the mouth, and what creep has taken of it by the shoulder. */
  readonly clearance: Millimetres;
  readonly creepLoss: Millimetres;
  /** The clearance that runs freely on this joint, and half the band that is right. */
  readonly wanted: Millimetres;
  readonly halfBand: Millimetres;
  readonly engagedHeight: Millimetres;
  /** Pitch diameter, near enough for rocking. */
  readonly diameter: Millimetres;
  readonly sound: boolean;
  readonly doubled: boolean;
  /** Angle between the turning and the threading axis, from a chip behind the chuck. */
  readonly chuckTilt: Degrees;
  /** Moisture lost between threading and the first trial, percent points. */
  readonly drying: number;
}

/** Reading error of a caliper in a practised hand, mm. */
const READING = 0.006;

const readBore = (random: Random, bore: number): readonly BoreReading[] => {
  const read = (size: number) => typedInches(mm(size + random.normal(0, READING)));
  const across = random.chance(0.6);
  const mouth = read(bore);
  const first: BoreReading = {
    ...{ id: 'bore-1', seq: 0 },
    where: 'mouth',
    along: mouth,
    across: across ? read(bore) : null,
    overCrests: false,
  };
  return random.chance(0.5)
    ? [first, { id: 'bore-2', seq: 0, where: 'relief', along: read(bore), across: null, overCrests: false }]
    : [first];
};

/** Mean of all that was read. */
export const meanBore = (bore: readonly BoreReading[]): Millimetres => {
  const all = bore.flatMap((r) => (r.across ? [r.along.mm, r.across.mm] : [r.along.mm]));
  return mm(all.reduce((sum, x) => sum + x, 0) / all.length);
};

const oddsOf = (p: number): number => p / (1 - p);
const fromOdds = (odds: number): number => odds / (1 + odds);

/** Cuts a joint: chance decides what went wrong unseen, geometry what clearance is left. */
export const cutJoint = (random: Random, order: Order, neglect: Neglect): Joint => {
  const { plan, truth, pitchName } = order;
  const { harm, steps, woods } = SCENARIO;
  const trueBore = plan.opening.mm + random.between(-0.2, 0.2);
  const bore = readBore(random, trueBore);
  const trueTenon = wantedTenon(order, meanBore(bore)) + random.normal(0, truth.turningErrorMm);
  const tenonRead = typedInches(mm(trueTenon + random.normal(0, READING)));
  const tenon: readonly TenonReading[] = [
    { id: 'tenon-1', seq: 0, where: 'end', diameter: tenonRead, overCrests: false },
  ];

  const touchedWrong = random.chance(steps['touch-off'][neglect.touchOff ? 'outWhenMissed' : 'outWhenDone']);
  const depthError = touchedWrong
    ? random.between(...harm.depthErrorOfPitch) * plan.pitch.mm * (random.chance(0.5) ? 1 : -1)
    : 0;
  const outOfTrue = random.chance(steps.gap[neglect.gap ? 'outWhenMissed' : 'outWhenDone']);
  const creeps = outOfTrue && random.chance(harm.creepShare);
  const creep = radFromDegrees(degrees(random.between(...harm.creepDegrees)));
  const mismatch = radFromDegrees(degrees(random.between(...harm.mismatchDegrees)));

  const real = fitWith(order, mm(trueBore), mm(trueTenon), mm(order.depth.mm + depthError));
  const eaten =
    outOfTrue && !creeps ? expected(axialGap(mm(Math.max(0, real.engagedHeight)), mismatch)) / SLOPE : 0;
  const odds = oddsOf(soundIn(order.weakestWood, pitchName));
  return {
    bore,
    tenon,
    recorded: fitWith(order, meanBore(bore), tenonRead.mm).clearance,
    clearance: mm(real.clearance - eaten),
    // The post turns, the lever swings the cutter into the bore or the tenon: twice that on the diameter.
    creepLoss: mm(creeps ? 2 * harm.creepLeverMm * creep : 0),
    wanted: mm(random.normal(truth.clearanceMm, truth.spreadMm)),
    halfBand: mm(truth.halfBandMm),
    engagedHeight: real.engagedHeight,
    diameter: mm((trueBore + trueTenon) / 2),
    sound: random.chance(fromOdds(odds * (order.hardener === 'thin-ca' ? woods.hardenerOdds : 1))),
    doubled: neglect.pickUp && random.chance(steps['pick-up'].doubledWhenMissed),
    chuckTilt: degrees(random.chance(0.04) ? random.between(0.3, 0.6) : Math.abs(random.normal(0, 0.03))),
    drying: random.chance(0.025) ? random.between(2, 4) : random.between(0, 0.3),
  };
};
