import { outside } from '../joint/bounds.ts';
import { firstRefusal, type Refusal, type Result, within } from '../result.ts';
import type { DiagnosisView, TrialView } from './view.ts';

const optional = (field: string, value: number | null, min: number, max: number): Result<unknown> =>
  value === null ? { ok: true, value: null } : within(field, value, min, max);

const badTrial = (trial: TrialView): Refusal | undefined =>
  firstRefusal(
    optional('endPlay', trial.endPlay, 0, 6),
    trial.turnsOn === null ? { ok: true, value: null } : within('turnsOn', trial.turnsOn, 0, 50, 'turns'),
    optional('bottomGap', trial.bottomGap, -5, 200),
    optional('crestFlat', trial.crestFlat?.width ?? null, 0, 12.7),
    within('moves', trial.moves.length, 0, 40, 'count'),
    ...trial.moves.flatMap((move) => [
      optional('by', move.by, 0, 6),
      optional('size', move.size, 3, 1000),
      optional('depth', move.depth, 0, 24),
    ]),
  );

/** More trials than this of one box nobody makes. */
const MOST_TRIALS = 40;

/** The refusal for a view that is out of bounds, or nothing. */
export const badView = ({ joint, bench, trials, seed }: DiagnosisView): Refusal | undefined => {
  if (trials.length === 0) return { problem: 'empty', field: 'trials' };
  const bad =
    outside({
      pitch: joint.pitch,
      cutterRadius: joint.cutterRadius,
      tipFlat: joint.tipFlat,
      recess: joint.bore,
      tenon: joint.tenon,
      recessDepth: joint.depth.recess,
      tenonDepth: joint.depth.tenon,
      depth: joint.plannedDepth,
      recessFlankShift: joint.flankShift.recess,
      tenonFlankShift: joint.flankShift.tenon,
      uncertainty: joint.tipFlatUncertainty,
    }) ??
    firstRefusal(
      within('wantedClearance', joint.wanted, 0.02, 3),
      within('threads', joint.threads, 0.5, 100, 'count'),
      within('boreUncertainty', joint.boreUncertainty, 0, 2),
      within('tenonUncertainty', joint.tenonUncertainty, 0, 2),
      optional('boreTaper', joint.boreTaper, -5, 5),
      optional('tenonTaper', joint.tenonTaper, -5, 5),
      optional('outOfRound', joint.outOfRound, -5, 5),
      within('bottomGap', joint.bottomGap, -20, 200),
      optional('wall', joint.wall, -20, 500),
      within('leastWall', joint.leastWall, 0, 100),
      optional('learned', joint.learned?.clearance ?? null, -6, 6),
      optional('uncertainty', joint.learned?.uncertainty ?? null, 0, 2),
      ...(['recess', 'tenon'] as const).flatMap((part) => [
        within('radial', joint.wood[part].radial, 0, 0.02, 'ratio'),
        within('tangential', joint.wood[part].tangential, 0, 0.02, 'ratio'),
        within('crumbles', joint.wood[part].crumbles, 0, 1, 'ratio'),
        within('furs', joint.wood[part].furs, 0, 1, 'ratio'),
      ]),
      within('trials', trials.length, 1, MOST_TRIALS, 'count'),
      within('seed', seed, -(2 ** 32), 2 ** 32, 'count'),
      bench.dial === null
        ? { ok: true, value: null }
        : within('travelPerTurn', bench.dial.travelPerTurn, 0.1, 25.4),
      bench.dial?.marksPerTurn == null
        ? { ok: true, value: null }
        : within('marksPerTurn', bench.dial.marksPerTurn, 2, 1000, 'count'),
    );
  if (bad) return bad;
  if (joint.tipFlat >= joint.pitch)
    return {
      problem: 'conflict',
      field: 'tipFlat',
      other: 'pitch',
      given: joint.tipFlat,
      otherGiven: joint.pitch,
      nearest: null,
      quantity: 'length',
    };
  for (const trial of trials) {
    const refused = badTrial(trial);
    if (refused) return refused;
  }
  return undefined;
};
