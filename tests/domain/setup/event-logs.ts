import fc from 'fast-check';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type {
  Carried,
  EventRef,
  ForeignEvent,
  SetUpEvent,
  Verdict,
} from '../../../src/domain/setup/events.ts';
import { MOVEMENTS, type Procedure } from '../../../src/domain/setup/procedure.ts';

export type AnyEvent = SetUpEvent | ForeignEvent;

const LOG = { logId: 'mine', runId: 'run' };
const KINDS = [
  'ticked',
  'ticked',
  'ticked',
  'stretch',
  'read',
  'moved',
  'paused',
  'resumed',
  'undone',
  'undone',
  'closed',
  'started',
  'polished',
] as const;

/** One tap, as raw numbers; `logOf` makes an event of it in the light of those before. */
interface Tap {
  kind: (typeof KINDS)[number];
  step: number;
  verdict: Verdict;
  what: (typeof MOVEMENTS)[number];
  /** Index of the event that an undo names, out of the log's range now and then. */
  target: number;
  writer: 'a' | 'b' | 'c';
  /** Wrote without having seen the event before: takes the same n. */
  blind: boolean;
  wall: number;
  mono: number;
  hid: number;
  newSession: boolean;
}

const tap: fc.Arbitrary<Tap> = fc.record({
  kind: fc.constantFrom(...KINDS),
  // Past the end of the procedure: a step nobody knows.
  step: fc.nat(16),
  verdict: fc.constantFrom<Verdict[]>('pass', 'pass', 'fail', 'skip'),
  what: fc.constantFrom(...MOVEMENTS),
  target: fc.integer({ min: -1, max: 30 }),
  writer: fc.constantFrom<('a' | 'b' | 'c')[]>('a', 'a', 'a', 'b', 'c'),
  blind: fc.boolean(),
  // The wall clock leaps either way; the page's own clock does not.
  wall: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, fc.integer({ min: -7_200_000, max: 7_200_000 })),
  mono: fc.integer({ min: 0, max: 90_000 }),
  hid: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.nat(60_000)),
  newSession: fc.boolean(),
});

/** The steps of a procedure turned about, as a user may have put them. */
const procedure: fc.Arbitrary<Procedure> = fc.oneof(
  fc.constantFrom(...Object.values(DEFAULT_PROCEDURES)),
  fc
    .shuffledSubarray([...DEFAULT_PROCEDURES['board-and-cone'].steps], { minLength: 15 })
    .map((steps) => ({ name: 'Turned about', version: 2, steps })),
);

export interface LogRecipe {
  readonly procedure: Procedure;
  readonly inherited: readonly string[];
  readonly groove: boolean;
  readonly taps: readonly Tap[];
}

const recipe = (maxTaps: number): fc.Arbitrary<LogRecipe> =>
  procedure.chain((chosen) =>
    fc.record({
      procedure: fc.constant(chosen),
      inherited: fc.subarray(chosen.steps.map((step) => step.key)),
      groove: fc.boolean(),
      // A blind write or a new page load is the exception.
      taps: fc.array(
        fc.tuple(tap, fc.nat(9), fc.nat(9)).map(([t, blind, session]) => ({
          ...t,
          blind: t.blind && blind === 0,
          newSession: t.newSession && session === 0,
        })),
        { maxLength: maxTaps },
      ),
    }),
  );

const START = 1_760_000_000_000;

/** Makes the log that such taps would have left, every key [n, writer] once. */
const logOf = ({ procedure: steps, inherited, groove, taps }: LogRecipe): AnyEvent[] => {
  const carried: Carried[] = inherited.map((key) => ({ key, since: START - 3_600_000 }));
  const started: SetUpEvent = {
    ...LOG,
    ...{ n: 1, writer: 'a', at: START, mono: 1_000, hid: 0, session: 's0' },
    kind: 'started',
    boxId: 'box',
    part: 'tenon',
    procedureId: 'board-and-cone',
    procedure: steps,
    inherited: carried,
    fromRun: null,
    groove,
  };
  const log: AnyEvent[] = [started];
  const keyOf = (i: number) => steps.steps[i]?.key ?? 'polish-the-brass';
  let [at, mono, hid, session] = [START, 1_000, 0, 0];
  for (const t of taps) {
    if (t.newSession) [session, mono, hid] = [session + 1, 500, 0];
    mono += t.mono;
    hid += Math.min(t.hid, t.mono);
    at += t.mono + t.wall;
    const last = log.at(-1) as AnyEvent;
    let ref: EventRef = { n: t.blind ? last.n : last.n + 1, writer: t.writer };
    if (log.some((e) => e.n === ref.n && e.writer === ref.writer)) ref = { n: last.n + 1, writer: t.writer };
    const stamp = { ...LOG, ...ref, at, mono, hid, session: `s${session}` };
    log.push(eventOf(t, stamp, keyOf, log, started));
  }
  return log;
};

const eventOf = (
  t: Tap,
  stamp: Omit<ForeignEvent, 'kind'>,
  keyOf: (i: number) => string,
  log: readonly AnyEvent[],
  started: SetUpEvent,
): AnyEvent => {
  switch (t.kind) {
    case 'ticked':
      return { ...stamp, kind: 'ticked', steps: [keyOf(t.step)], verdict: t.verdict };
    case 'stretch':
      return {
        ...stamp,
        kind: 'ticked',
        steps: [keyOf(t.step), keyOf(t.step + 1), keyOf(t.step + 2)],
        verdict: 'pass',
      };
    case 'read':
      return { ...stamp, kind: 'read', step: keyOf(t.step), reading: { kind: 'turns', turns: 3.5 } };
    case 'moved':
      return { ...stamp, kind: 'moved', what: t.what, groove: t.step % 2 === 0 };
    case 'undone': {
      const { n, writer } = log[t.target] ?? { n: 99, writer: 'z' };
      return { ...stamp, kind: 'undone', target: { n, writer } };
    }
    case 'closed':
      return { ...stamp, kind: 'closed', how: t.step % 2 === 0 ? 'cut' : 'abandoned' };
    case 'started':
      return { ...started, ...stamp };
    case 'polished':
      return { ...stamp, kind: 'polished' };
    default:
      return { ...stamp, kind: t.kind };
  }
};

/** A log as one or several devices may have left it, in fold order of its making. Begins with its start. */
export const eventLog = (maxTaps = 25): fc.Arbitrary<AnyEvent[]> => recipe(maxTaps).map(logOf);

/** A log and the same in another order of arrival. */
export const logAndShuffle = eventLog().chain((log) =>
  fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length })),
);

/** The next event after a log, seen and without haste. */
export const nextEvent = <H extends object>(log: readonly AnyEvent[], happening: H, writer = 'a') => {
  const last = log.reduce((a, b) => (b.n > a.n ? b : a));
  return {
    ...LOG,
    n: last.n + 1,
    writer,
    at: last.at + 20_000,
    mono: last.mono + 20_000,
    hid: last.hid,
    session: last.session,
    ...happening,
  } as H & AnyEvent;
};

/** A run of a procedure just begun. */
export const begun = (
  of: Procedure,
  { groove = true, inherited = [] as readonly Carried[] } = {},
): AnyEvent[] =>
  logOf({ procedure: of, inherited: [], groove, taps: [] }).map((e) => ({ ...e, inherited }) as AnyEvent);

/** The same with the named steps ticked singly. */
export const ticked = (
  log: readonly AnyEvent[],
  steps: readonly string[],
  verdict: Verdict = 'pass',
): AnyEvent[] => {
  const on = [...log];
  for (const step of steps) on.push(nextEvent(on, { kind: 'ticked', steps: [step], verdict }));
  return on;
};
