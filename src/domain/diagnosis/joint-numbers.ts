import { fullEngagement } from '../joint/engagement.ts';
import { grooveReach } from '../joint/fit.ts';
import { HALF_ANGLE, SLOPE } from '../joint/profile.ts';
import type { Part } from '../setup/events.ts';
import type { DiagnosisView, MoveMade } from './view.ts';

/** Everything here is cut with a 60 degree cutter. */

/** What a recorded "same setting again" may have cut, mm: what had sprung back is not known. An estimate, no source. */
const RELEASED_BY_SAME_SETTING = 0.05;

/** Wood rubbed square off a flank opens the groove like a cut this many times as deep: 1/sin 30. */
export const RUBBED_TO_DEPTH = 1 / Math.sin(HALF_ANGLE);

/** Reading error of a caliper in a turner's hand, one standard deviation, mm. Common practice, no source. */
const CALIPER = 0.03;

/** The numbers of one box as plain numbers, as they stood at its first trial. */
export interface JointNumbers {
  readonly pitch: number;
  readonly wanted: number;
  readonly threads: number;
  readonly shiftRecess: number;
  readonly shiftTenon: number;
  /** Radial overlap that is 100 % of 0.75 H. */
  readonly full: number;
  readonly bore: number;
  readonly boreSd: number;
  readonly tenon: number;
  readonly tenonSd: number;
  readonly depthRecess: number;
  readonly depthTenon: number;
  readonly plannedDepth: number;
  readonly tip: number;
  readonly tipSd: number;
  readonly floor: number;
  /** Out of round for one point of moisture, diametral; the mean of both woods. */
  readonly ovalPerPoint: number;
  readonly furs: number;
  readonly crumbles: number;
  readonly finished: boolean;
  /** The tenon on the box now where an earlier one was replaced: what the last `new-tenon` of the record made. */
  readonly remade: { readonly tenon: number; readonly sd: number; readonly depth: number } | null;
}

/** What the moves of a list cut from a part, radial mm. */
export const cutBy = (moves: readonly MoveMade[], part: Part): number =>
  moves.reduce(
    (sum, { kind, by, part: of }) =>
      of !== part
        ? sum
        : kind === 'deepen'
          ? sum + Math.max(0, by ?? 0)
          : kind === 'rub-flanks'
            ? sum + RUBBED_TO_DEPTH * Math.max(0, by ?? 0)
            : kind === 'same-setting-again' || kind === 'harden-and-recut'
              ? sum + RELEASED_BY_SAME_SETTING
              : sum,
    0,
  );

const deepenedBy = (moves: readonly MoveMade[], part: Part): number =>
  cutBy(
    moves.filter(({ kind }) => kind === 'deepen'),
    part,
  );

const meanOf = (a: number, b: number): number => (a + b) / 2;

/** One cutter cuts both grooves, so a learned allowance says how wide its tip really is: tan 30 (wanted - learned)/2 more than assumed. */
const tipOf = ({ joint }: DiagnosisView): readonly [mean: number, sd: number] =>
  joint.learned
    ? [
        joint.tipFlat + (SLOPE * (joint.wanted - joint.learned.clearance)) / 2,
        (SLOPE * joint.learned.uncertainty) / 2 + 0.01,
      ]
    : [joint.tipFlat, joint.tipFlatUncertainty];

export const jointNumbers = (view: DiagnosisView): JointNumbers => {
  const { joint, bench, trials } = view;
  const moves = trials.flatMap((trial) => trial.moves);
  const remadeAt = moves.findLastIndex(({ kind }) => kind === 'new-tenon');
  const depthRecess = Math.max(0, joint.depth.recess - deepenedBy(moves, 'recess'));
  const depthNow = Math.max(0, joint.depth.tenon - deepenedBy(moves.slice(remadeAt + 1), 'tenon'));
  const [tip, tipSd] = tipOf(view);
  const [shiftRecess, shiftTenon] = [joint.flankShift.recess, joint.flankShift.tenon];
  const reach = (depth: number, shift: number): number =>
    grooveReach(depth, joint.tipFlat, shift, joint.pitch);
  const isRemade = remadeAt >= 0;
  // The record keeps only the present tenon. An earlier one is taken as planned, known no better than a plan is met.
  const planned =
    joint.bore + 2 * (reach(depthRecess, shiftRecess) + reach(joint.plannedDepth, shiftTenon)) - joint.wanted;
  const tenonSd = Math.hypot(joint.tenonUncertainty, CALIPER);
  const spread = (part: Part): number =>
    Math.abs(joint.wood[part].tangential - joint.wood[part].radial) * joint.bore;
  return {
    pitch: joint.pitch,
    wanted: joint.wanted,
    threads: joint.threads,
    shiftRecess,
    shiftTenon,
    full: fullEngagement(joint.pitch, '0.75H'),
    bore: joint.bore,
    boreSd: Math.hypot(joint.boreUncertainty, CALIPER),
    tenon: isRemade ? planned : joint.tenon,
    tenonSd: isRemade ? 0.12 : tenonSd,
    depthRecess,
    depthTenon: isRemade ? joint.plannedDepth : depthNow,
    plannedDepth: joint.plannedDepth,
    tip,
    tipSd,
    floor: joint.bottomGap,
    ovalPerPoint: meanOf(spread('recess'), spread('tenon')),
    furs: Math.max(joint.wood.recess.furs, joint.wood.tenon.furs),
    crumbles: Math.max(joint.wood.recess.crumbles, joint.wood.tenon.crumbles),
    finished: bench.finished || trials.some(({ afterFinish }) => afterFinish),
    remade: isRemade ? { tenon: joint.tenon, sd: tenonSd, depth: depthNow } : null,
  };
};
