import type { Closing, Cut, Seat, Trial } from '../../src/domain/box/records.ts';
import type { GoingOn } from '../../src/domain/box/trial-words.ts';
import type { Random } from '../../src/domain/random.ts';
import { type Millimetres, mm } from '../../src/domain/units/brands.ts';
import type { Joint } from './cut-joint.ts';
import type { Order } from './draw-plan.ts';
import type { ShopClock } from './shop-clock.ts';
import { type Felt, HALF_MARK, tryLid } from './try-fit.ts';
import { typedInches } from './typed.ts';

/** From the first trial to the close. */
export interface Ending {
  readonly trials: readonly Trial[];
  readonly corrections: readonly Cut[];
  readonly seats: readonly Seat[];
  readonly outcome: Closing['outcome'];
  /** Clearance at the end, mm. */
  readonly clearance: Millimetres;
}

/** Symptoms that a deeper groove may cure. */
const CURED_BY_DEPTH: ReadonlySet<GoingOn> = new Set([
  'will-not-start',
  'drags-more-each-turn',
  'stiff-all-the-way',
]);
const MOST_TRIALS = 5;

const crestWord = (random: Random) =>
  random.weighted(['chipped', 'torn', 'furry'] as const, (w) => (w === 'chipped' ? 5 : w === 'torn' ? 3 : 2));

/** Tries the lid, corrects what a dial can correct, brings it home. */
export const tellTrials = (
  random: Random,
  clock: ShopClock,
  order: Order,
  joint: Joint,
  tenonRun: string,
): Ending => {
  const fitted = { pitch: order.plan.pitch.mm, threads: order.plan.threads, wood: order.weakestWood };
  const trials: Trial[] = [];
  const corrections: Cut[] = [];
  let tilted = joint;
  let deepened = 0;
  const crests = joint.sound ? null : crestWord(random);

  for (;;) {
    clock.pass(random.between(90, 240));
    const felt = tryLid(tilted, mm(deepened), fitted);
    trials.push(written(random, clock, felt, trials.length + 1, joint, crests));
    if (trials.length === MOST_TRIALS) break;
    if (felt.goingOn && CURED_BY_DEPTH.has(felt.goingOn)) {
      deepened += HALF_MARK;
      clock.pass(random.between(120, 200));
      corrections.push({
        id: `cut-again-${trials.length}`,
        seq: 0,
        part: 'tenon',
        runId: tenonRun,
        at: clock.now,
        depth: typedInches(mm(order.depth.mm + deepened)),
        correction: true,
      });
    } else if (felt.goingOn === 'tight-twice-a-turn') {
      // An hour in the warm evens the two pieces out.
      clock.passUnseen(3600);
      tilted = { ...tilted, drying: 0 };
    } else if (felt.seated === 'open-one-side') {
      clock.pass(600);
      tilted = { ...tilted, chuckTilt: 0 as typeof joint.chuckTilt };
    } else break;
  }

  const last = trials.at(-1);
  const good = last?.right === true;
  return {
    trials,
    corrections,
    seats: good || last?.seated === 'flush' ? bringHome(random, clock) : [],
    outcome: outcomeOf(random, last, good),
    clearance: mm(joint.clearance - joint.creepLoss + 2 * deepened),
  };
};

const written = (
  random: Random,
  clock: ShopClock,
  felt: Felt,
  number: number,
  joint: Joint,
  crests: Trial['threads'][number] | null,
): Trial => {
  const base = {
    id: `trial-${number}`,
    seq: 0,
    at: clock.now,
    turnsOn: null,
    endPlay: null,
    afterFinish: false,
  };
  const right = felt.goingOn === null && felt.seated === 'flush' && joint.sound && !joint.doubled;
  if (right) return { ...base, right, goingOn: [], seated: null, threads: [], marks: null };
  const threads: Trial['threads'][number][] = [];
  if (crests) threads.push(crests);
  if (joint.doubled) threads.push('thin-or-double-cut');
  const tight = felt.goingOn === 'stiff-all-the-way' || felt.goingOn === 'drags-more-each-turn';
  const loose = felt.goingOn === 'end-play' || felt.goingOn === 'rattles-sideways';
  const play = Math.max(0, joint.clearance) * Math.tan(Math.PI / 6);
  return {
    ...base,
    right,
    goingOn: [felt.goingOn ?? 'free'],
    seated: felt.seated,
    threads: threads.length > 0 ? threads : ['sound'],
    turnsOn: felt.turnsOn,
    marks:
      tight && random.chance(0.5)
        ? { on: 'flank', at: felt.goingOn === 'stiff-all-the-way' ? 'all-along' : 'by-shoulder' }
        : null,
    endPlay: loose && random.chance(0.5) ? typedInches(mm(play)) : null,
  };
};

/** The grain still to go, rubbed in, and home. */
const bringHome = (random: Random, clock: ShopClock): Seat[] => {
  const seat = (number: number, degreesToGo: number): Seat => {
    clock.pass(random.between(60, 150));
    return {
      id: `seat-${number}`,
      seq: 0,
      at: clock.now,
      open: [],
      papers: 0,
      degreesToGo,
      takenFrom: degreesToGo > 0 ? (number === 1 ? 'tenon-shoulder' : 'rim') : null,
    };
  };
  const first = random.chance(0.2) ? 0 : 5 * random.whole(1, 14);
  return first === 0 ? [seat(1, 0)] : [seat(1, first), seat(2, 0)];
};

const outcomeOf = (random: Random, last: Trial | undefined, good: boolean): Closing['outcome'] => {
  if (good) return 'kept';
  const fits = last?.goingOn[0] === 'free' && last.seated === 'flush';
  const [kept, second] = fits ? [0.35, 0.45] : last?.goingOn[0] === 'end-play' ? [0.4, 0.45] : [0, 0.5];
  const draw = random.unit();
  return draw < kept ? 'kept' : draw < kept + second ? 'second' : 'scrapped';
};
