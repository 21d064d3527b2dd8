import { ok, type Result, refuse } from '../result.ts';
import { advise, LEAST_CAUSE, type Shares, type Weighed } from './advise.ts';
import { blame, voices } from './blame.ts';
import { CAUSE_COUNT, CAUSES, priorsOf } from './causes.ts';
import { badView } from './check-view.ts';
import { confidenceOf, type Diagnosis, type PredictedJoint, type RankedCause } from './diagnosis.ts';
import { samplingFor } from './draw-joint.ts';
import { Draws } from './draws.ts';
import { trialEvidence } from './evidence.ts';
import { factsOf } from './facts.ts';
import { type JointNumbers, jointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { LIMITS, type Limit } from './limits.ts';
import { logFactor } from './log-factors.ts';
import { applyMove } from './moves.ts';
import { ensembleOf } from './outcomes.ts';
import { posteriorOf } from './posterior.ts';
import { emptyStanding, standingOf } from './standing.ts';
import type { DiagnosisView } from './view.ts';
import { evidenceFor, piecesOf, speaksAgainst, speaksFor } from './why.ts';

/** Joints drawn for one diagnosis. */
const JOINTS = 2600;

const sharesOf = (joints: readonly Latent[], box: JointNumbers, voice: Float64Array): Shares => {
  const at = emptyStanding();
  const each = new Float64Array(joints.length * CAUSE_COUNT);
  const of = new Float64Array(CAUSE_COUNT);
  joints.forEach((joint, j) => {
    standingOf(joint, box, at);
    const row = each.subarray(j * CAUSE_COUNT, (j + 1) * CAUSE_COUNT);
    blame(joint, box, at, voice, row);
    for (let c = 0; c < CAUSE_COUNT; c++) of[c] = (of[c] as number) + (row[c] as number) / joints.length;
  });
  return { each, of };
};

/** Tighter than this a joint binds, mm. */
const BINDS = 0.01;

const predictedOf = (joints: readonly Latent[], box: JointNumbers): PredictedJoint => {
  const at = emptyStanding();
  const sum = {
    clearance: 0,
    clearance2: 0,
    free: 0,
    free2: 0,
    tenonGap: 0,
    recessGap: 0,
    recess: 0,
    tenon: 0,
    engaged: 0,
    binding: 0,
    late: 0,
    onCrests: 0,
  };
  for (const joint of joints) {
    standingOf(joint, box, at);
    sum.clearance += at.clearance;
    sum.clearance2 += at.clearance ** 2;
    sum.free += at.one;
    sum.free2 += at.one ** 2;
    sum.tenonGap += at.tenonGap;
    sum.recessGap += at.recessGap;
    sum.recess += at.flatRecess;
    sum.tenon += at.flatTenon;
    sum.engaged += at.engaged;
    const [tight, late] = [at.tightness > BINDS, at.lateness > BINDS];
    if (!tight && !late) continue;
    sum.binding++;
    if (!tight) sum.late++;
    if (-2 * (tight ? at.gap : at.gapDeep) > joint.low - (tight ? at.one : at.deep)) sum.onCrests++;
  }
  const n = joints.length;
  const spread = (of: number, squares: number): { mean: number; sd: number } => ({
    mean: of / n,
    sd: Math.sqrt(Math.max(0, squares / n - (of / n) ** 2)),
  });
  return {
    clearance: spread(sum.clearance, sum.clearance2),
    free: spread(sum.free, sum.free2),
    tenonCrestGap: sum.tenonGap / n,
    recessCrestGap: sum.recessGap / n,
    crestFlat: { recess: sum.recess / n, tenon: sum.tenon / n },
    engaged: sum.engaged / n,
    binds:
      sum.binding * 2 < n
        ? null
        : { on: sum.onCrests * 2 > sum.binding ? 'crest' : 'flank', late: sum.late * 2 > sum.binding },
  };
};

/** `diagnose` with limits of one's own: tests switch one off at a time. */
export const diagnoseWithin = (view: DiagnosisView, limits: readonly Limit[]): Result<Diagnosis> => {
  const bad = badView(view);
  if (bad) return refuse(bad);
  const box = jointNumbers(view);
  const sampling = samplingFor(
    priorsOf(box, (cause) => logFactor(cause, view.log)),
    JOINTS,
  );
  const trials = trialEvidence(view);
  const last = view.trials.at(-1) as DiagnosisView['trials'][number];
  const { joints, contradiction, pending } = posteriorOf(view, box, sampling, trials, new Draws(view.seed));
  const said = trials.at(-1) as (typeof trials)[number];
  const voice = voices(said.said);
  const atTrial = sharesOf(joints, box, voice);
  const pieces = piecesOf(said, joints, box);
  for (const move of pending) for (const joint of joints) applyMove(move, joint, box);
  const shares = last.moves.length > 0 ? sharesOf(joints, box, voice) : atTrial;
  const ranked = CAUSES.map((cause, c): RankedCause => {
    const share = atTrial.of[c] as number;
    const evidence = share >= LEAST_CAUSE ? evidenceFor(cause, pieces, atTrial.each, view.log) : [];
    return { cause, share, for: speaksFor(evidence), against: speaksAgainst(evidence) };
  })
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
  const found = { causes: ranked, confidence: confidenceOf(ranked[0]?.share ?? 0), contradiction };
  const predicted = predictedOf(joints, box);
  if (last.right && last.moves.length === 0)
    return ok({
      ...found,
      move: null,
      next: null,
      ask: null,
      tellsApart: null,
      barred: [],
      beyondRepair: [],
      minutes: 0,
      predicted,
    });
  const facts = factsOf(view, box);
  const canCut = view.bench.holds && view.bench.onJig !== null && !facts.finished;
  const isLikelySound = ranked[0]?.cause === 'nothing-wrong';
  const now = ensembleOf(joints, box, canCut, isLikelySound);
  const weighed: Weighed = { view, box, now, facts, shares, limits };
  return ok({ ...found, ...advise(weighed, ranked, joints), predicted });
};

/**
 * What is likely wrong with a joint that was tried, the move that repairs most for each minute and spoils nothing, and the question worth
 * asking first. Draws joints around the box's own numbers, weighs each by how well it predicts what was said and measured, tries every
 * legal move on the likely ones. Lengths mm; ranges as `check-view.ts` has them, else a refusal. The same view always gives the same answer.
 */
export const diagnose = (view: DiagnosisView): Result<Diagnosis> => diagnoseWithin(view, LIMITS);
