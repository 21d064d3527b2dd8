import type { Cut, SetUpRef } from '../../src/domain/box/records.ts';
import type { Random } from '../../src/domain/random.ts';
import type { Carried, Part, SetUpEvent } from '../../src/domain/setup/events.ts';
import type { RunState } from '../../src/domain/setup/fold.ts';
import { carriedOver } from '../../src/domain/setup/inherit.ts';
import type { Movement, Procedure } from '../../src/domain/setup/procedure.ts';
import type { Order } from './draw-plan.ts';
import { runSetUp } from './run-set-up.ts';
import type { Missable } from './scenario.ts';
import type { ShopClock } from './shop-clock.ts';
import { typedInches } from './typed.ts';

/** What happens while one piece is threaded, besides the cutting. */
export interface PartStory {
  readonly boxId: string;
  readonly part: Part;
  readonly procedureId: string;
  readonly procedure: Procedure;
  readonly missed: ReadonlySet<Missable>;
  readonly practice: number;
  /** A set-up that this one may carry over from, and what has moved since. */
  readonly from: { readonly state: RunState; readonly moved: readonly Movement[] } | null;
  /** The first set-up is given up. */
  readonly abandoned: boolean;
  /** What came loose between the passes, so that the groove had to be found again. */
  readonly between: Movement | null;
  readonly stopAfter: number | null;
}

export interface Threaded {
  readonly events: readonly SetUpEvent[];
  readonly cuts: readonly Cut[];
  readonly setUps: readonly SetUpRef[];
  readonly state: RunState;
}

/** Sets up and cuts one piece, in one run or, when something went wrong, in several. */
export const threadPart = (random: Random, clock: ShopClock, order: Order, story: PartStory): Threaded => {
  const { boxId, part, procedureId, procedure, missed, practice } = story;
  const events: SetUpEvent[] = [];
  const cuts: Cut[] = [];
  const setUps: SetUpRef[] = [];
  const turns = order.plan.threads + random.pick([0.5, 0.75, 1, 1.25]);

  const cutPasses = (passes: Order['passes']) => (runId: string) => {
    for (const depth of passes) {
      clock.pass(random.between(110, 220));
      cuts.push({
        id: `cut-${part}-${cuts.length + 1}`,
        seq: 0,
        part,
        runId,
        at: clock.now,
        depth: typedInches(depth),
        correction: false,
      });
    }
  };
  const run = (
    carried: { readonly inherited: readonly Carried[]; readonly fromRun: string | null },
    groove: boolean,
    abandonAfter: number | null,
    passes: Order['passes'],
  ): RunState => {
    const runId = `${boxId}-${part}-${setUps.length + 1}`;
    const work = { runId, boxId, part, procedureId, procedure, ...carried, groove, missed, practice };
    const { turner } = order;
    const { stopAfter } = story;
    const done = runSetUp(
      random,
      clock,
      { ...work, turner, turns, abandonAfter, stopAfter },
      cutPasses(passes),
    );
    setUps.push({ runId, part, seq: 0 });
    events.push(...done.events);
    return done.state;
  };
  const carriedFrom = (state: RunState, moved: readonly Movement[]) => ({
    inherited: carriedOver(state, procedure, moved),
    fromRun: state.runId,
  });

  if (story.abandoned) {
    run({ inherited: [], fromRun: null }, false, random.whole(3, 6), []);
    clock.pass(random.between(600, 1800));
  }
  const first = story.from
    ? carriedFrom(story.from.state, story.from.moved)
    : { inherited: [], fromRun: null };
  const firstPasses = story.between ? order.passes.slice(0, 1) : order.passes;
  let state = run(first, false, null, firstPasses);
  if (story.between) {
    clock.pass(random.between(60, 300));
    state = run(carriedFrom(state, [story.between]), true, null, order.passes.slice(1));
  }
  return { events, cuts, setUps, state };
};
