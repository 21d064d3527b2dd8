import type { CalculatedBox } from '../box/calculate.ts';
import { deepestOf } from '../box/cuts.ts';
import { measuredBore, measuredTenon } from '../box/measured.ts';
import { onJig, settingHolds } from '../box/on-jig.ts';
import { openTrial } from '../box/open-trial.ts';
import { passesOf } from '../box/pair.ts';
import { pieceAt } from '../box/piece.ts';
import { threadWoods } from '../box/plan-input.ts';
import type { Box, Rig, Trial } from '../box/records.ts';
import { inSequence } from '../box/sequence.ts';
import { setUpLog } from '../box/set-up-log.ts';
import { widened } from '../joint/flank-shifts.ts';
import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { type ThreadingNature, UNKNOWN_NATURE } from '../wood/threading-nature.ts';
import { ifMeasured } from './measured-limits.ts';
import type { BenchView, DiagnosisView, JointView, MoveMade, ThreadWood, TrialView } from './view.ts';

/** What is asked: a box, what follows from its record, its set-ups by run id, and the trial it is about. */
export interface AskedOf {
  readonly boxId: string;
  readonly box: Box;
  readonly calculated: CalculatedBox;
  readonly runs: ReadonlyMap<string, RunState>;
  readonly trialId: string;
  readonly unit: 'in' | 'mm';
  /** The clearance that the log's own trials speak for at this pitch, one standard deviation. */
  readonly learned: JointView['learned'];
  /** How a wood takes a thread; of an unknown one the same is taken for all. */
  readonly fragilityOf?: (wood: string) => ThreadingNature;
}

/**
 * What the diagnosis is given of a box at one of its trials, or null when the box has no such trial. The trials are those of the same
 * recess; a tenon made between two of them is a move. Only the trial whose advice is still open has a piece on the jig.
 */
export const diagnosisView = (asked: AskedOf): DiagnosisView | null => {
  const { boxId, box, runs, trialId } = asked;
  const trial = box.trials.find(({ id }) => id === trialId);
  if (!trial) return null;
  const recessSince = pieceAt(box, 'recess', trial.seq).since;
  const trials = inSequence(box.trials).filter(({ seq }) => seq > recessSince && seq <= trial.seq);
  return {
    joint: { ...jointAt(asked, trial), ...shapeAt(asked, trial, trials) },
    bench: benchAt(asked, trial, trials),
    log: setUpLog(runs.values()),
    trials: trials.map((each, i) => trialView(each, movesAfter(box, each, trials[i + 1]))),
    asked: trial.asked ?? [],
    seed: seedOf(`${boxId} ${trials.length}`),
  };
};

/** One standard deviation of a size that was turned and not measured, mm. A judgement, no source. */
const NOT_MEASURED = mm(0.12);
/** One standard deviation of the tip flat, mm: a default, one that was entered, one found from a scrap pair. Judgements, no source. */
const TIP_ERROR = { assumed: mm(0.08), told: mm(0.05), 'scrap-pair': mm(0.03) } as const;

const tipError = ({ tipFlat, tipFlatFrom }: Rig): Millimetres =>
  tipFlat === null ? TIP_ERROR.assumed : TIP_ERROR[tipFlatFrom ?? 'told'];

type Shape = 'boreTaper' | 'tenonTaper' | 'outOfRound';

/** Taper and roundness as last measured at a trial of the same piece, else by the readings before it was cut. */
const shapeAt = (
  { box, calculated }: AskedOf,
  { seq }: Trial,
  trials: readonly Trial[],
): Pick<JointView, Shape> => {
  const bore = measuredBore(pieceAt(box, 'recess', seq).readings, calculated.given.caliper);
  const tenon = pieceAt(box, 'tenon', seq);
  const atTrials = (what: Shape, since = 0): Millimetres | null =>
    ifMeasured(what, trials.findLast((trial) => trial.seq > since && trial[what])?.[what]?.mm);
  const ofBore = bore.ok ? bore.value : null;
  return {
    boreTaper: atTrials('boreTaper') ?? ofBore?.taper ?? null,
    tenonTaper: atTrials('tenonTaper', tenon.since) ?? measuredTenon(tenon.readings)?.taper ?? null,
    outOfRound: atTrials('outOfRound') ?? ofBore?.outOfRound ?? null,
  };
};

const jointAt = (
  { box, calculated, learned, fragilityOf }: AskedOf,
  { seq }: Trial,
): Omit<JointView, Shape> => {
  const { given, input, plan, pair } = calculated;
  const [recess, tenon] = [pieceAt(box, 'recess', seq), pieceAt(box, 'tenon', seq)];
  const measured = measuredBore(recess.readings, given.caliper);
  const bore = measured.ok ? measured.value : null;
  const turned = measuredTenon(tenon.readings);
  const passes = passesOf('tenon', calculated);
  const toCut = (passes.ok ? passes.value.at(-1)?.depth : undefined) ?? plan.sizes.depth;
  const asItIs = widened(
    {
      ...pair,
      recess: {
        ...pair.recess,
        diameter: bore?.mean ?? calculated.bore.mean,
        depth: deepestOf(recess.cuts)?.mm ?? plan.sizes.depth,
      },
      tenon: {
        ...pair.tenon,
        diameter: turned?.mean ?? pair.tenon.diameter,
        depth: deepestOf(tenon.cuts)?.mm ?? toCut,
      },
    },
    input.cutter.radius,
  );
  const woods = threadWoods(box.plan);
  const wood = (part: Part): ThreadWood => {
    const { strain } = part === 'recess' ? input.woodOfRecess : input.woodOfTenon;
    return { ...strain, ...(fragilityOf?.(woods[part].wood) ?? UNKNOWN_NATURE) };
  };
  return {
    pitch: input.pitch,
    wanted: plan.clearance.clearance,
    threads: input.threads,
    cutterRadius: input.cutter.radius,
    tipFlat: input.cutter.tipFlat,
    tipFlatUncertainty: tipError(given.rig),
    bore: asItIs.recess.diameter,
    boreUncertainty: bore ? bore.uncertainty : NOT_MEASURED,
    tenon: asItIs.tenon.diameter,
    tenonUncertainty: turned ? turned.uncertainty : NOT_MEASURED,
    depth: { recess: asItIs.recess.depth, tenon: asItIs.tenon.depth },
    plannedDepth: plan.sizes.depth,
    flankShift: { recess: asItIs.recess.flankShift ?? mm(0), tenon: asItIs.tenon.flankShift ?? mm(0) },
    // As planned: what was measured of it stands with the trial that measured it.
    bottomGap: plan.lengths.bottomGap,
    wall: plan.wall.wall,
    leastWall: plan.wall.least,
    wood: { recess: wood('recess'), tenon: wood('tenon') },
    learned,
  };
};

const benchAt = (
  { box, calculated, runs, unit }: AskedOf,
  trial: Trial,
  trials: readonly Trial[],
): BenchView => {
  const { dial } = calculated.input;
  const isOpen = openTrial(box)?.id === trial.id;
  return {
    unit: unit === 'in' ? 'inch' : 'metric',
    dial: dial && { travelPerTurn: dial.travelPerTurn, marksPerTurn: dial.marksPerTurn ?? null },
    onJig: isOpen ? onJig(box, runs) : null,
    holds: isOpen && settingHolds(box, runs) && !wereJawsSlackened(box, trials),
    finished: trials.some(({ afterFinish }) => afterFinish),
  };
};

/** Since the newest set-up: what slackens its jaws lets the piece move. */
const wereJawsSlackened = ({ setUps }: Box, trials: readonly Trial[]): boolean => {
  const since = Math.max(0, ...setUps.map(({ seq }) => seq));
  return trials.some(({ seq, moves }) => seq > since && moves?.some(({ kind }) => kind === 'slacken-jaws'));
};

const trialView = (trial: Trial, moves: readonly MoveMade[]): TrialView => ({
  right: trial.right,
  goingOn: trial.goingOn,
  seated: trial.seated,
  threads: trial.threads,
  marks: trial.marks,
  endPlay: ifMeasured('endPlay', trial.endPlay?.mm),
  turnsOn: ifMeasured('turnsOn', trial.turnsOn),
  bottomGap: ifMeasured('bottomGap', trial.bottomGap?.mm),
  crestFlat: crestFlatOf(trial),
  afterFinish: trial.afterFinish,
  moves,
});

const crestFlatOf = ({ crestFlat }: Trial): TrialView['crestFlat'] => {
  const width = ifMeasured('crestFlat', crestFlat?.width.mm);
  return crestFlat && width !== null ? { part: crestFlat.part, width } : null;
};

/** Cut no deeper than this is the same setting again, mm. */
const SAME_SETTING = 0.005;

/** What was done after a trial: as noted with it, and what the record of the next says besides: passes cut, a tenon made. */
const movesAfter = (box: Box, trial: Trial, next: Trial | undefined): readonly MoveMade[] => {
  const noted = trial.moves ?? [];
  const isNoted = (move: MoveMade): boolean =>
    noted.some(({ kind, part }) => kind === 'harden-and-recut' && part === move.part);
  return [...noted, ...movesBetween(box, trial, next).filter((move) => !isNoted(move))];
};

/** What the record says was done between a trial and the next: passes cut, a tenon made. Nothing after the last. */
const movesBetween = (box: Box, before: Trial, next: Trial | undefined): readonly MoveMade[] =>
  next === undefined
    ? []
    : (['recess', 'tenon'] as const).flatMap((part): readonly MoveMade[] => {
        const [then, now] = [pieceAt(box, part, before.seq), pieceAt(box, part, next.seq)];
        const depth = deepestOf(now.cuts)?.mm ?? null;
        const none = { part, by: null, size: null, depth: null };
        if (part === 'tenon' && then.since !== now.since) {
          const size = measuredTenon(pieceAt(box, 'tenon', next.seq).readings)?.mean ?? null;
          return [{ ...none, kind: 'new-tenon', size, depth }];
        }
        if (now.cuts.length === then.cuts.length) return [];
        const deeper = (depth ?? 0) - (deepestOf(then.cuts)?.mm ?? 0);
        return [
          deeper > SAME_SETTING
            ? { ...none, kind: 'deepen', by: mm(deeper) }
            : { ...none, kind: 'same-setting-again' },
        ];
      });

/** FNV-1a, 32 bit (Fowler, Noll and Vo): the same text, the same seed. */
const seedOf = (text: string): number => {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
};
