import type { DiagnosisView } from '../../../src/domain/diagnosis/view.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import type { Advice, AdvisedMove, AdviserFor } from './adviser.ts';
import { feelOf, isSound } from './feel.ts';
import { isCut, make, mayCut, type Ruin } from './moves.ts';
import { answer, type Question, tell } from './telling.ts';
import { type TrueCause, trueCauses } from './truth.ts';
import type { Manners } from './turner.ts';
import type { UpsetName } from './upsets.ts';
import { type Bench, boxOf } from './workshop.ts';

/** Ways to go on with the same advice, all of them open on a screen. */
export const WAYS = [
  'as advised',
  'never answers',
  'answers at random',
  'does what comes then',
  'does it again',
  'one question only',
] as const;
export type Way = (typeof WAYS)[number];

export const MOST_MOVES = 6;
const MOST_QUESTIONS = 2;

export interface PlayedMove {
  readonly move: AdvisedMove;
  readonly worked: boolean;
  readonly ruin: Ruin | null;
  readonly needless: boolean;
  readonly withoutSetting: boolean;
}

export interface Played {
  readonly index: number;
  readonly upsets: readonly UpsetName[];
  readonly truth: readonly TrueCause[];
  /** What was said at the first trial before any question. */
  readonly first: Advice;
  readonly moves: readonly PlayedMove[];
  readonly questions: number;
  /** After how many moves the turner called it right; null: never. */
  readonly rightAfter: number | null;
  /** Called right although something is still wrong. */
  readonly wrongly: boolean;
  readonly ruin: Ruin | null;
  /** The adviser had nothing to say while the lid was not right. */
  readonly stuck: boolean;
  readonly milliseconds: readonly number[];
}

const retold = (bench: Bench, record: DiagnosisView): Bench => ({ ...bench, record });

/** Answers that have nothing to do with the lid: those of another box. */
const atRandom = (bench: Bench, random: Random): Bench => {
  const other = boxOf(random.whole(1, 1e6), 0, bench.manners);
  return { ...bench, work: other.work };
};

export const play = (
  adviserFor: AdviserFor,
  { seed, index, manners, way }: { seed: number; index: number; manners: Manners; way: Way },
): Played => {
  const box = boxOf(seed, index, manners);
  let bench: Bench = box;
  const random = seededRandom(seed ^ 0x5bd1e995, index);
  const adviser = adviserFor(() => bench);
  const times: number[] = [];
  let asked: Question[] = [];
  const advise = (): Advice => {
    const from = performance.now();
    const advice = adviser.advise(
      { ...bench.record, seed: (bench.record.seed + bench.record.trials.length) | 0 },
      asked,
    );
    times.push(performance.now() - from);
    return advice;
  };
  /** Tries the lid; the first trial of a box is one that was not called right. */
  const tryIt = (): boolean => {
    const told = tell(bench, random);
    bench = retold(bench, { ...bench.record, trials: [...bench.record.trials, told] });
    return told.right;
  };
  const untried = bench;
  while (tryIt()) bench = untried;

  const truth = trueCauses(bench.work, bench.turner.hand);
  const first = advise();
  const moves: PlayedMove[] = [];
  let questions = 0;
  let rightAfter: number | null = null;
  let ruin: Ruin | null = null;
  let stuck = false;
  let again: AdvisedMove | null = null;
  let advice = first;
  while (moves.length < MOST_MOVES && rightAfter === null && ruin === null) {
    const most = way === 'never answers' ? 0 : way === 'one question only' ? 1 : MOST_QUESTIONS;
    while (asked.length < most && advice.ask !== null && again === null) {
      asked = [...asked, advice.ask];
      questions++;
      const aboutLid = way === 'answers at random' ? atRandom(bench, random) : bench;
      bench = retold(bench, answer(advice.ask, aboutLid, random) ?? bench.record);
      advice = advise();
    }
    const move: AdvisedMove | null =
      again ?? (way === 'does what comes then' && advice.next ? advice.next : advice.move);
    if (move === null) {
      stuck = true;
      break;
    }
    const withoutSetting = isCut(move) && !mayCut(bench.record, move);
    const made = make(bench, move, random);
    bench = made.bench;
    asked = [];
    const right = tryIt();
    ruin = made.ruin;
    moves.push({ move, worked: right && ruin === null, ruin, needless: made.needless, withoutSetting });
    if (right && ruin === null) rightAfter = moves.length;
    again = way === 'does it again' && again === null ? { ...move, reset: false } : null;
    if (rightAfter === null && ruin === null && moves.length < MOST_MOVES) advice = advise();
  }
  return {
    index,
    upsets: bench.upsets,
    truth,
    first,
    moves,
    questions,
    rightAfter,
    wrongly: rightAfter !== null && !isSound(feelOf(bench.work, bench.turner.hand)),
    ruin,
    stuck,
    milliseconds: times,
  };
};
