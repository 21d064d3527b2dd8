import { SLOPE } from '../joint/profile.ts';
import type { Part } from '../setup/events.ts';
import { cutBy, type JointNumbers } from './joint-numbers.ts';
import type { DiagnosisView, MoveKind, MoveMade, TrialView } from './view.ts';
import type { Word } from './words-chance.ts';

/** What limits go by besides the posterior: the calculated numbers, and what was felt or seen. mm. */
export interface Facts {
  /** As they would be after an answer that nobody gave yet. */
  readonly imagined: boolean;
  readonly bench: DiagnosisView['bench'];
  readonly box: JointNumbers;
  /** Depths and tenon as they are now. */
  readonly depth: Readonly<Record<Part, number>>;
  readonly tenon: number;
  /** Diametral clearance by the end play felt at this trial; null where it was not felt, or something was cut since. */
  readonly felt: number | null;
  /** Crest flat left by what was seen, cuts since then taken off; null where none was seen. One cutter cut both, so one speaks for the other. */
  readonly crest: Readonly<Record<Part, number | null>>;
  /** Its crest was seen itself. */
  readonly seen: Readonly<Record<Part, boolean>>;
  /** The tenon's crest is narrower than its sizes say, and nobody looked at the recess's: a slip thins one crest, a blunt tip both. */
  readonly slipOrBlunt: boolean;
  /** The lid was said to go on stiffly at this trial. */
  readonly stiff: boolean;
  /** It was said to be loose, and nothing that a tight one is said to be. */
  readonly saidLoose: boolean;
  /** Nothing but end play or rattling was said in any trial. */
  readonly onlyLoose: boolean;
  readonly eased: Readonly<Record<Part, number>>;
  /** Radial, of a part, over all easings. */
  readonly easedBy: Readonly<Record<Part, number>>;
  /** Square off the flanks of a part, over all rubbings. */
  readonly rubbed: Readonly<Record<Part, number>>;
  /** A new tenon was made and its play and crest were not looked at yet. */
  readonly unmeasured: boolean;
  readonly finished: boolean;
  /** Room at the floor by the nearest of plan and readings, faced and cleared since. */
  readonly floor: number;
}

const STIFF: ReadonlySet<Word> = new Set(['stiff-all-the-way', 'drags-more-each-turn', 'will-not-start']);
const TIGHT: ReadonlySet<Word> = new Set([
  ...STIFF,
  'tight-once-a-turn',
  'tight-twice-a-turn',
  'tight-four-times-a-turn',
  'stops-dead',
]);
const SLACK: ReadonlySet<Word> = new Set(['end-play', 'rattles-sideways', 'jumps-a-thread', 'free']);
const LOOSE: ReadonlySet<Word> = new Set(['end-play', 'rattles-sideways', 'free']);

const saysOnlyLoose = (trial: TrialView): boolean =>
  trial.goingOn.some((word) => word === 'end-play' || word === 'rattles-sideways') &&
  trial.goingOn.every((word) => LOOSE.has(word)) &&
  (trial.seated === null || trial.seated === 'flush') &&
  trial.threads.every((word) => word === 'sound') &&
  trial.marks === null;

/** By how much a crest must look narrower than it should before that means something, mm. */
const NARROWER = 0.12;

const movesFrom = (trials: readonly TrialView[], at: number): readonly MoveMade[] =>
  trials.slice(at).flatMap((trial) => trial.moves);

const isRemade = (moves: readonly MoveMade[]): boolean => moves.some(({ kind }) => kind === 'new-tenon');

/** The narrowest reading of a part's crest still worth something, less what was cut from it since. */
const seenCrest = (trials: readonly TrialView[], part: Part): number | null => {
  for (let at = trials.length - 1; at >= 0; at--) {
    const seen = trials[at]?.crestFlat;
    if (seen?.part !== part) continue;
    const since = movesFrom(trials, at);
    if (part === 'tenon' && isRemade(since)) return null;
    return seen.width - 2 * SLOPE * cutBy(since, part);
  }
  return null;
};

const crestsNow = (view: DiagnosisView): Facts['crest'] => {
  const { depth } = view.joint;
  const [recess, tenon] = [seenCrest(view.trials, 'recess'), seenCrest(view.trials, 'tenon')];
  const deeper = 2 * SLOPE * (depth.recess - depth.tenon);
  const least = (a: number | null, b: number | null): number | null =>
    a === null ? b : b === null ? a : Math.min(a, b);
  return {
    recess: recess ?? (tenon === null ? null : tenon - deeper),
    tenon: least(tenon, tenon === null && recess !== null ? recess + deeper : null),
  };
};

const countOf = (moves: readonly MoveMade[], kind: MoveKind, part: Part): readonly MoveMade[] =>
  moves.filter((move) => move.kind === kind && move.part === part);

const floorNow = (view: DiagnosisView, box: JointNumbers): number => {
  const changed = (moves: readonly MoveMade[]): number =>
    moves.reduce(
      (sum, { kind, by }) =>
        kind === 'clear-floor' ? sum + (by ?? 0) : kind === 'face-shoulder' ? sum - (by ?? 0) : sum,
      0,
    );
  const planned = box.floor + changed(movesFrom(view.trials, 0));
  const read = view.trials.flatMap((trial, at) =>
    trial.bottomGap === null ? [] : [trial.bottomGap + changed(movesFrom(view.trials, at))],
  );
  return Math.min(planned, read.at(-1) ?? planned);
};

const isUnmeasured = (trials: readonly TrialView[]): boolean => {
  const at = trials.findLastIndex((trial) => isRemade(trial.moves));
  if (at < 0) return false;
  const since = trials.slice(at + 1);
  return !(
    since.some(({ endPlay }) => endPlay !== null) &&
    since.some(({ crestFlat }) => crestFlat?.part === 'tenon')
  );
};

export const factsOf = (view: DiagnosisView, box: JointNumbers): Facts => {
  const { trials, joint, bench } = view;
  const last = trials.at(-1) as TrialView;
  const moves = movesFrom(trials, 0);
  const felt = last.endPlay === null || last.moves.length > 0 ? null : last.endPlay / SLOPE;
  const eased = (part: Part): number => countOf(moves, 'ease-crests', part).length;
  const sumOf = (kind: MoveKind, part: Part): number =>
    countOf(moves, kind, part).reduce((sum, { by }) => sum + (by ?? 0), 0);
  const seen = { recess: seenCrest(trials, 'recess'), tenon: seenCrest(trials, 'tenon') };
  const byTip = box.pitch - box.tip - 2 * box.shiftTenon - 2 * SLOPE * joint.depth.tenon;
  return {
    imagined: false,
    bench,
    box,
    depth: joint.depth,
    tenon: joint.tenon,
    felt,
    crest: crestsNow(view),
    seen: { recess: seen.recess !== null, tenon: seen.tenon !== null },
    slipOrBlunt: seen.recess === null && seen.tenon !== null && seen.tenon < byTip - NARROWER,
    stiff: last.goingOn.some((word) => STIFF.has(word)),
    saidLoose: last.goingOn.some((word) => SLACK.has(word)) && !last.goingOn.some((word) => TIGHT.has(word)),
    onlyLoose: trials.every(saysOnlyLoose),
    eased: { recess: eased('recess'), tenon: eased('tenon') },
    easedBy: { recess: sumOf('ease-crests', 'recess'), tenon: sumOf('ease-crests', 'tenon') },
    rubbed: { recess: sumOf('rub-flanks', 'recess'), tenon: sumOf('rub-flanks', 'tenon') },
    unmeasured: isUnmeasured(trials),
    finished: box.finished,
    floor: floorNow(view, box),
  };
};
