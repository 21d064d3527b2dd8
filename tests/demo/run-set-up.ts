import type { Random } from '../../src/domain/random.ts';
import type { Carried, EventRef, Happening, Part, SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../src/domain/setup/fold.ts';
import type { Movement, Procedure } from '../../src/domain/setup/procedure.ts';
import type { Reading } from '../../src/domain/setup/reading.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { type Missable, SCENARIO, type Turner } from './scenario.ts';
import type { ShopClock } from './shop-clock.ts';
import { typedInches } from './typed.ts';

export interface Work {
  readonly runId: string;
  readonly boxId: string;
  readonly part: Part;
  readonly procedureId: string;
  readonly procedure: Procedure;
  readonly inherited: readonly Carried[];
  readonly fromRun: string | null;
  readonly groove: boolean;
  readonly turner: Turner;
  readonly missed: ReadonlySet<Missable>;
  /** Share of the usual time that practice has left. */
  readonly practice: number;
  /** Turns of the crank from first cut to the stop. */
  readonly turns: number;
  /** Given up after so many taps. */
  readonly abandonAfter: number | null;
  /** Left on the lathe after so many taps, for the box that is not finished. */
  readonly stopAfter: number | null;
}

/** Set-ups written here are shown as one phone's. */
export const DEMO_WRITER = 'demo';

/** Movements that happen in the middle of a set-up, and how often each. */
const MISHAPS: readonly (readonly [Movement, number])[] = [
  ['banjo-moved', 4],
  ['dial-knocked', 3],
  ['chuck-off', 2],
  ['cutter-changed', 1],
  ['dont-know', 1],
];

/** Does the steps one after another, asking the fold what is open whenever more than a plain pass happened, so that a log made here is one that could have been. */
export const runSetUp = (
  random: Random,
  clock: ShopClock,
  work: Work,
  cutting: (runId: string) => void,
): { readonly events: readonly SetUpEvent[]; readonly state: RunState } => {
  const events: SetUpEvent[] = [];
  const add = (happening: Happening): EventRef => {
    const ref = { n: events.length + 1, writer: DEMO_WRITER };
    events.push({ logId: SCENARIO.log, runId: work.runId, ...ref, ...clock.stamp(), ...happening });
    return ref;
  };
  const { boxId, part, procedureId, procedure, inherited, fromRun, groove } = work;
  add({ kind: 'started', boxId, part, procedureId, procedure, inherited, fromRun, groove });

  const wait = (step: string, share = 1) => {
    const usual = (SCENARIO.setUpTime.seconds[step] ?? 30) * work.turner.pace * work.practice * share;
    const taken = Math.max(2, usual * Math.exp(random.normal(0, 0.25)));
    clock.pass(taken);
    if (random.chance(0.03)) clock.passUnseen(random.between(35, 300));
  };
  const folded = (): RunState => foldRun(events) as RunState;
  const mishapAt = random.chance(0.07) ? random.whole(4, 12) : null;
  const pauseAt = random.chance(0.08) ? random.whole(2, 12) : null;
  const slipOfThumbAt = random.chance(0.05) ? random.whole(2, 12) : null;
  const reloadAt = random.chance(0.04) ? random.whole(2, 12) : null;
  const ticksStretches = random.chance(work.turner.stretches);

  let todo = openSteps(folded());
  for (let tap = 1; todo.length > 0; tap++) {
    if (tap === work.stopAfter) return { events, state: folded() };
    if (tap === work.abandonAfter) {
      clock.pass(60);
      add({ kind: 'closed', how: 'abandoned' });
      return { events, state: folded() };
    }
    if (tap === reloadAt) clock.reload();
    if (tap === pauseAt) {
      clock.pass(10);
      add({ kind: 'paused' });
      clock.passUnseen(random.between(300, 2400));
      add({ kind: 'resumed' });
    }
    if (tap === mishapAt) {
      clock.pass(15);
      add({ kind: 'moved', what: random.weighted(MISHAPS, ([, weight]) => weight)[0] });
      todo = openSteps(folded());
    }
    const [key] = todo;
    if (key === undefined) break;
    const stretch = untilHold(procedure, todo);
    if (tap === slipOfThumbAt && !isHold(procedure, key)) {
      wait(key, 0.3);
      const wrong = add({ kind: 'ticked', steps: [key], verdict: 'skip' });
      clock.pass(3);
      add({ kind: 'undone', target: wrong });
    }
    if (ticksStretches && stretch.length > 1 && !stretch.some((k) => isMissed(work, k))) {
      for (const each of stretch) wait(each);
      add({ kind: 'ticked', steps: stretch, verdict: 'pass' });
      todo = todo.slice(stretch.length);
    } else {
      doStep(random, work, key, wait, add);
      todo = isMissed(work, key) ? openSteps(folded()) : todo.slice(1);
    }
  }
  cutting(work.runId);
  clock.pass(random.between(15, 60));
  add({ kind: 'closed', how: 'cut' });
  return { events, state: folded() };
};

const openSteps = (state: RunState): readonly string[] =>
  state.steps.filter((s) => s.status === 'to-come' || s.status === 'reopened').map((s) => s.step.key);

const untilHold = (procedure: Procedure, todo: readonly string[]): readonly string[] => {
  const hold = todo.findIndex((key) => isHold(procedure, key));
  return hold < 0 ? todo : todo.slice(0, hold);
};

const isHold = (procedure: Procedure, key: string): boolean =>
  procedure.steps.some((step) => step.key === key && step.hold);

const isMissed = (work: Work, key: string): boolean => work.missed.has(key as Missable);

/** One step: missed, or done, now and then only at the second try. */
const doStep = (
  random: Random,
  work: Work,
  key: string,
  wait: (step: string, share?: number) => void,
  add: (happening: Happening) => EventRef,
): void => {
  const tick = (verdict: 'pass' | 'fail' | 'skip') => add({ kind: 'ticked', steps: [key], verdict });
  if (isMissed(work, key)) {
    const leftFailing = key === 'gap' && random.chance(0.2);
    wait(key, leftFailing ? 1 : 0.15);
    if (leftFailing) add({ kind: 'read', step: key, reading: gapReading(random, false) });
    tick(leftFailing ? 'fail' : 'skip');
    return;
  }
  if ((key === 'gap' && random.chance(0.07)) || (key === 'shake' && random.chance(0.02))) {
    wait(key);
    if (key === 'gap') add({ kind: 'read', step: key, reading: gapReading(random, false) });
    tick('fail');
    wait('lock-post', 2);
  }
  wait(key, 0.6);
  if (key === 'gap' && random.chance(0.7))
    add({ kind: 'read', step: key, reading: gapReading(random, true) });
  if (key === 'dry-run') add({ kind: 'read', step: key, reading: { kind: 'turns', turns: work.turns } });
  wait(key, 0.4);
  tick('pass');
};

/** Squares of 3 in: a good gap lets no card in, a bad one a card or two. */
const gapReading = (random: Random, good: boolean): Reading => ({
  kind: 'gap',
  gap: typedInches(mm((good ? random.between(0, 0.008) : random.between(0.03, 0.06)) * 25.4)),
  over: typedInches(mm(3 * 25.4), 0),
  plane: 'either',
});
