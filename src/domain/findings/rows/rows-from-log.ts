import { givenOfBox, type Workshop } from '../../box/given.ts';
import type { Box, Trial } from '../../box/records.ts';
import { threadWood } from '../../box/story.ts';
import type { Part } from '../../setup/events.ts';
import type { StepStatus } from '../../setup/fold.ts';
import { clearanceTrialsOf } from './clearance-trials.ts';
import { clustersOf } from './clusters.ts';
import type { CutRun, CutStep } from './cut-run.ts';
import type {
  FirstTry,
  JointRow,
  JointTable,
  StepAtCut,
  StepMeaning,
  StepOutcome,
  Symptom,
} from './joint-row.ts';

/** What the wood tables hold on a wood. */
export interface WoodFacts {
  readonly group: string;
  /** Side hardness, newton. */
  readonly hardness: number | null;
}

/** One log, folded: its boxes by id, the workshop and set-up runs they name, and what is known of their woods. */
export interface FoldedLog extends Workshop {
  readonly log: string;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly runs: ReadonlyMap<string, CutRun>;
  readonly woodFacts: (wood: string) => WoodFacts;
}

/** Why a box gives no row. */
export type LeftOut = 'nothing-cut-yet' | 'set-up-contested' | 'from-newer-version';

/** Rows of several logs together; clusters and experience never cross from one log to another. */
export const rowsFromLogs = (logs: readonly FoldedLog[]): JointTable => {
  const leftOut = { 'nothing-cut-yet': 0, 'set-up-contested': 0, 'from-newer-version': 0 };
  const steps = new Map<string, StepMeaning>();
  const rows: JointRow[] = [];
  for (const log of logs) {
    const drafts: { row: Omit<JointRow, 'cluster'>; runs: readonly string[] }[] = [];
    const inOrder = [...log.boxes].sort(([idA, a], [idB, b]) => a.number - b.number || (idA < idB ? -1 : 1));
    let experience = 0;
    for (const [id, box] of inOrder) {
      const cut = runsCut(box, log.runs);
      const why = whyLeftOut(box, cut);
      if (why !== 'nothing-cut-yet') experience++;
      if (why) leftOut[why]++;
      else {
        for (const run of cut) for (const step of scored(run)) steps.set(step.step.key, step.step);
        drafts.push({ row: rowOf(id, box, log, cut, experience), runs: cut.flatMap(lineageOf) });
      }
    }
    const clusters = clustersOf(drafts.map(({ row, runs }) => [`day ${row.day}`, ...runs]));
    drafts.forEach(({ row }, i) => {
      rows.push({ ...row, cluster: `${log.log} ${clusters[i]}` });
    });
  }
  return {
    rows,
    steps: [...steps.values()].map(({ key, sentence, guards }) => ({ key, sentence, guards })),
    leftOut,
  };
};

/** The run under which each part was cut first; corrections after a trial came later and cannot have made it fail. */
const runsCut = (box: Box, runs: ReadonlyMap<string, CutRun>): readonly CutRun[] =>
  (['recess', 'tenon'] as const satisfies readonly Part[]).flatMap((part) => {
    const first = box.cuts.find((cut) => cut.part === part && !cut.correction && cut.runId !== null);
    const closed = box.setUps.find((ref) => ref.part === part && runs.get(ref.runId)?.closed === 'cut');
    return runs.get(first?.runId ?? closed?.runId ?? '') ?? [];
  });

const whyLeftOut = (box: Box, cut: readonly CutRun[]): LeftOut | null => {
  if (cut.length === 0 && box.trials.length === 0 && box.closing?.scrapReason !== 'thread')
    return 'nothing-cut-yet';
  if (cut.some((run) => run.contested)) return 'set-up-contested';
  return cut.some((run) => run.readOnly) ? 'from-newer-version' : null;
};

/** Hold points are never scored. */
const scored = (run: CutRun): readonly CutStep[] => run.steps.filter(({ step }) => !step.hold);

/** A run and the one it inherited its setting from: joints that share either share a set-up. */
const lineageOf = (run: CutRun): readonly string[] =>
  run.fromRun && run.steps.some((step) => step.status === 'carried') ? [run.runId, run.fromRun] : [run.runId];

const rowOf = (
  id: string,
  box: Box,
  { log, woodFacts, ...workshop }: FoldedLog,
  cut: readonly CutRun[],
  experience: number,
): Omit<JointRow, 'cluster'> => {
  const wood = weakerCarrier(box, woodFacts);
  const given = givenOfBox(workshop, box);
  return {
    id,
    log,
    boxNumber: box.number,
    day: box.startedOn,
    rig: box.rigId,
    experience,
    wood,
    woodGroup: woodFacts(wood).group,
    hardness: woodFacts(wood).hardness,
    pitch: box.plan.pitch.mm,
    hardener: box.closing?.hardener ?? 'none',
    insertRing: box.plan.insert !== null,
    steps: { recess: stepsAtCut(cut, 'recess'), tenon: stepsAtCut(cut, 'tenon') },
    firstTry: firstTryOf(box),
    symptoms: box.trials[0] ? symptomsOf(box.trials[0]) : [],
    clearanceTrials: clearanceTrialsOf(box, given),
    tipFlatKnown: given.rig.tipFlat !== null,
  };
};

/** Of the two woods (or the ring) that carry the thread, the softer; one whose hardness is unknown gives way to a known one. */
const weakerCarrier = (box: Box, facts: FoldedLog['woodFacts']): string => {
  const [lid, base] = [threadWood(box, 'lid'), threadWood(box, 'base')];
  const hardness = (wood: string) => facts(wood).hardness ?? Number.POSITIVE_INFINITY;
  return hardness(base) < hardness(lid) ? base : lid;
};

const OUTCOME: Readonly<Record<StepStatus, StepOutcome>> = {
  passed: 'done',
  carried: 'done',
  failed: 'left-failing',
  skipped: 'skipped',
  // It rests on a step that was skipped, so it was missed with it.
  closed: 'skipped',
  'not-needed': 'not-needed',
  'to-come': 'not-recorded',
  reopened: 'not-recorded',
};

const stepsAtCut = (cut: readonly CutRun[], part: Part): Readonly<Record<string, StepAtCut>> => {
  const run = cut.find((candidate) => candidate.part === part);
  if (!run) return {};
  return Object.fromEntries(
    scored(run).map(({ step, status, exactMs }) => [
      step.key,
      { outcome: OUTCOME[status], carriedOver: status === 'carried', exactMs },
    ]),
  );
};

const NO_FAULT = new Set<string>(['free', 'flush', 'sound']);

/** Everything a trial shows that is not as it should be. */
const symptomsOf = (trial: Trial): readonly Symptom[] =>
  [...trial.goingOn, ...(trial.seated ? [trial.seated] : []), ...trial.threads].filter(
    (word): word is Symptom => !NO_FAULT.has(word),
  );

/** Faults that a deliberately tight first fit shows. */
const TIGHT = new Set<Symptom>([
  'will-not-start',
  'drags-more-each-turn',
  'stiff-all-the-way',
  'gap-all-round',
]);

/** How the first trial fit of a box went. */
export const firstTryOf = (box: Box): FirstTry => {
  const [first, second] = box.trials;
  if (!first) return box.closing?.scrapReason === 'thread' ? 'scrapped' : 'unknown';
  if (first.right) return 'right';
  const faults = symptomsOf(first);
  const onlyTight = faults.length > 0 && faults.every((fault) => TIGHT.has(fault));
  return onlyTight && second?.right && !second.afterFinish ? 'eased' : 'failed';
};
