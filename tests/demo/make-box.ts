import type { Box, Closing, InSequence } from '../../src/domain/box/records.ts';
import { filmLoss } from '../../src/domain/joint/film.ts';
import { type Random, seededRandom } from '../../src/domain/random.ts';
import { DEFAULT_PROCEDURE_ID, DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import type { RunState } from '../../src/domain/setup/fold.ts';
import { movementsBetween } from '../../src/domain/setup/inherit.ts';
import type { Movement } from '../../src/domain/setup/procedure.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { dayOf } from './calendar.ts';
import { cutJoint, type Joint } from './cut-joint.ts';
import { drawMisses, neglectOf } from './draw-misses.ts';
import { drawOrder, type Order } from './draw-plan.ts';
import { lookBack } from './look-back.ts';
import { RIGS } from './rigs.ts';
import { expected, type Missable, SCENARIO } from './scenario.ts';
import { shopClock } from './shop-clock.ts';
import { type Ending, tellTrials } from './tell-trials.ts';
import { threadPart } from './thread-part.ts';

export interface Circumstances {
  readonly seed: number;
  readonly number: number;
  readonly startsAt: number;
  readonly now: number;
  /** Share of the usual time that practice has left. */
  readonly practice: number;
  /** The last set-up of the box made just before on the same afternoon, or null. */
  readonly before: { readonly rigId: string; readonly state: RunState } | null;
  /** Stop after so many taps of the tenon's set-up: the box on the lathe now. */
  readonly stopAfter: number | null;
}

export interface Made {
  readonly id: string;
  readonly box: Box;
  readonly events: readonly SetUpEvent[];
  readonly endedAt: number;
  readonly rigId: string;
  readonly last: RunState;
  /** What the log has no place for, and a picture shows. */
  readonly kind: Order['kind'];
  readonly height: Order['height'];
}

/** Slack joints that are found before a lid is tried, or blanks that split. */
const SCRAPPED_UNTRIED = { crumbled: 0.12, split: 0.01 };
const PROCEDURE = DEFAULT_PROCEDURES[DEFAULT_PROCEDURE_ID];

/** One box from blank to shelf, with its set-ups; everything follows from the seed and its number. */
export const makeBox = (given: Circumstances): Made => {
  const random = seededRandom(given.seed, given.number);
  const order = drawOrder(random);
  const rig = RIGS[order.rigId];
  const { route } = order.plan;
  const id = `box-${String(given.number).padStart(3, '0')}`;
  const clock = shopClock(given.startsAt, id, random);

  const stillSet = given.before?.rigId === order.rigId && route === 'both-turned' ? given.before.state : null;
  const betweenParts = movementsBetween(route, rig.banjos);
  const misses = drawMisses(random, order.turner, {
    byRecess: stillSet === null,
    byTenon: betweenParts.includes('post-loosened'),
  });
  const lostGroove = random.chance(0.06) ? random.pick(['recess', 'tenon'] as const) : null;
  const pickUpMissed = lostGroove !== null && random.chance(SCENARIO.steps['pick-up'].missed);
  const joint = cutJoint(random, order, neglectOf(misses, pickUpMissed));

  const common = {
    boxId: id,
    procedureId: DEFAULT_PROCEDURE_ID,
    procedure: PROCEDURE,
    practice: given.practice,
  };
  const partOf = (part: 'recess' | 'tenon') => ({
    ...common,
    part,
    missed: new Set<Missable>([...misses[part], ...(pickUpMissed ? (['pick-up'] as const) : [])]),
    between: lostGroove === part ? random.pick<Movement>(['banjo-moved', 'chuck-off']) : null,
  });

  clock.pass(random.between(1200, 2000) * (route === 'both-turned' ? 2 : 1));
  const recess = threadPart(random, clock, order, {
    ...partOf('recess'),
    from: stillSet ? { state: stillSet, moved: ['chuck-off', 'cutter-changed'] } : null,
    abandoned: stillSet === null && random.chance(0.04),
    stopAfter: null,
  });
  if (route === 'recess-first') clock.pass(random.between(900, 1600));
  else clock.pass(random.between(120, 300));
  const tenon = threadPart(random, clock, order, {
    ...partOf('tenon'),
    from: { state: recess.state, moved: betweenParts },
    abandoned: false,
    stopAfter: given.stopAfter,
  });

  const open = given.stopAfter !== null;
  const split = random.chance(SCRAPPED_UNTRIED.split);
  const crumbled = !joint.sound && random.chance(SCRAPPED_UNTRIED.crumbled);
  const untried = open || split || crumbled;
  const ending = untried ? NOT_TRIED : tellTrials(random, clock, order, joint, tenon.state.runId);
  const finished = ending && afterFinish(random, clock.now, order, joint, ending);
  const tidying = random.between(600, 1500);
  if (!open) clock.pass(tidying);
  const closing = open
    ? null
    : closingOf(random, clock.now, order, joint, ending.outcome, split ? 'wood' : 'thread');
  const kept = closing?.outcome === 'kept';
  const wood = order.weakestWood;
  return {
    id,
    events: [...recess.events, ...tenon.events],
    endedAt: clock.now,
    rigId: order.rigId,
    last: tenon.state,
    kind: order.kind,
    height: order.height,
    box: inOrder({
      number: given.number,
      name: order.name,
      startedOn: dayOf(given.startsAt),
      rigId: order.rigId,
      procedureId: DEFAULT_PROCEDURE_ID,
      plan: order.plan,
      bore: joint.bore,
      tenon: joint.tenon,
      instrumentId: 'caliper',
      setUps: [...recess.setUps, ...tenon.setUps],
      cuts: [...recess.cuts, ...tenon.cuts, ...ending.corrections],
      trials: finished,
      seats: ending.seats,
      closing,
      lidChecks: kept
        ? lookBack(
            random,
            { clearance: ending.clearance, diameter: joint.diameter, wood },
            clock.now,
            given.now,
          )
        : [],
      photos: [],
    }),
  };
};

/** Gives every entry its place in the box's sequence: pieces turned, set up, then as this workshop's own clock has it. */
const inOrder = (box: Box): Box => {
  const made = [...box.cuts, ...box.trials, ...box.seats].sort((a, b) => a.at - b.at);
  const places = new Map<object, number>(
    [...box.bore, ...box.tenon, ...box.setUps, ...made].map((entry, i) => [entry, i + 1]),
  );
  const placed = <T extends InSequence>(entries: readonly T[]): readonly T[] =>
    entries.map((entry) => ({ ...entry, seq: places.get(entry) ?? 0 }));
  return {
    ...box,
    bore: placed(box.bore),
    tenon: placed(box.tenon),
    setUps: placed(box.setUps),
    cuts: placed(box.cuts),
    trials: placed(box.trials),
    seats: placed(box.seats),
  };
};

const NOT_TRIED: Ending = {
  trials: [],
  corrections: [],
  seats: [],
  outcome: 'scrapped',
  clearance: mm(0),
};

/** A lid that was sealed is tried once more: the film has taken its share. */
const afterFinish = (
  random: Random,
  at: number,
  order: Order,
  joint: Joint,
  ending: Ending,
): Box['trials'] => {
  if (order.hardener !== 'sealer' || ending.outcome !== 'kept') return ending.trials;
  const left = ending.clearance - expected(filmLoss(mm(random.between(0.004, 0.015)))).clearance;
  const right = left >= joint.wanted - joint.halfBand;
  return [
    ...ending.trials,
    {
      id: 'trial-finish',
      seq: 0,
      at: at + 300_000,
      right,
      goingOn: right ? [] : [left <= 0 ? 'will-not-start' : 'stiff-all-the-way'],
      seated: null,
      threads: [],
      marks: null,
      endPlay: null,
      turnsOn: null,
      afterFinish: true,
    },
  ];
};

const closingOf = (
  random: Random,
  at: number,
  order: Order,
  joint: Joint,
  outcome: Closing['outcome'],
  scrapReason: 'wood' | 'thread',
): Closing => {
  const { hardener, turner } = order;
  const notes = [
    random.chance(0.3) ? `Turned by ${turner.name}.` : '',
    joint.doubled ? 'Lost the groove and did not find it again.' : '',
    !joint.sound && random.chance(0.5) ? 'Crests went on the last pass.' : '',
    outcome === 'scrapped' && scrapReason === 'wood' ? 'Split while parting off.' : '',
  ];
  return {
    at,
    outcome,
    scrapReason: outcome === 'scrapped' ? scrapReason : null,
    hardener,
    hardenerBeforePass: hardener === 'none' ? null : 2,
    outsideTurned: random.chance(0.6) ? 'after' : 'before',
    note: notes.filter((note) => note !== '').join(' '),
  };
};
