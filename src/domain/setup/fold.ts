import { GREATEST_COUNT } from '../log/count-up.ts';
import type { Carried, EventRef, ForeignEvent, Part, SetUpEvent, Verdict } from './events.ts';
import { isKnown } from './events.ts';
import { type Movement, type Procedure, reopenedBy, type Step } from './procedure.ts';
import type { Reading } from './reading.ts';
import { addSpans, between, NO_TIME, type Span } from './time.ts';

/**
 * The status of a step. `carried`: still holds from an earlier set-up. `reopened`: was settled, then something moved.
 * `closed`: cannot be done because a step it rests on was skipped. `not-needed`: nothing to pick up.
 */
export type StepStatus =
  | 'to-come'
  | 'passed'
  | 'failed'
  | 'skipped'
  | 'carried'
  | 'reopened'
  | 'closed'
  | 'not-needed';

export interface StepState {
  readonly step: Step;
  readonly status: StepStatus;
  /** Wall time since when the setting holds; for passed and carried steps. */
  readonly since: number | null;
  /** What re-opened it last; for reopened steps. */
  readonly reopenedBy: Movement | null;
  readonly readings: readonly Reading[];
  readonly spent: Span;
  /** Ticked together with others, so its own time is unknown (never zero, never hurried). */
  readonly timeUnknown: boolean;
}

export interface TimelineEntry {
  readonly event: SetUpEvent | ForeignEvent;
  readonly undone: boolean;
  /** Time since the live event before it. */
  readonly gap: Span;
}

export interface RunState {
  readonly runId: string;
  readonly boxId: string;
  readonly part: Part;
  readonly procedureId: string;
  readonly procedure: Procedure;
  readonly fromRun: string | null;
  /** The piece carried a groove when this set-up began; one cut since shows in the movements after it. */
  readonly groove: boolean;
  readonly steps: readonly StepState[];
  /** Key of the step to do next, or null when every step is settled. */
  readonly now: string | null;
  readonly paused: boolean;
  readonly closed: 'cut' | 'abandoned' | null;
  readonly startedAt: number;
  /** Hold points that forbid the cut: not yet passed. */
  readonly withheldBy: readonly string[];
  readonly timeline: readonly TimelineEntry[];
  /** Sum of all gaps between events that count: time of the steps, pauses and `unplaced`. */
  readonly total: Span;
  readonly pausedFor: Span;
  /** Time that belongs to no single step: stretches ticked at once, movements, the close. */
  readonly unplaced: Span;
  /** Events that could not be applied, or not in full, kept: unknown step, hold point in a stretch, after the close, before the start. */
  readonly stray: readonly (SetUpEvent | ForeignEvent)[];
  /** Two devices wrote events with the same number, so the setting is not known. */
  readonly contested: boolean;
  /** A newer version of the app wrote here, or there is no `n` left for another event: look, do not touch. */
  readonly readOnly: boolean;
  /** The n for the next event. */
  readonly nextN: number;
}

interface Slot {
  step: Step;
  status: StepStatus;
  since: number | null;
  reopenedBy: Movement | null;
  readings: Reading[];
  spent: Span;
  timeUnknown: boolean;
}

const SETTLED: Readonly<Record<Verdict, StepStatus>> = { pass: 'passed', fail: 'failed', skip: 'skipped' };
const OPEN: ReadonlySet<StepStatus> = new Set(['to-come', 'reopened']);
const HELD: ReadonlySet<StepStatus> = new Set(['passed', 'carried', 'failed', 'skipped', 'closed']);
const UNDOABLE = new Set(['ticked', 'read', 'moved', 'paused', 'resumed', 'closed']);

const refKey = (ref: EventRef): string => `${ref.n} ${ref.writer}`;

/** Fold order: n, then writer. No clock takes part. */
const inFoldOrder = <E extends EventRef>(events: readonly E[]): E[] =>
  [...events].sort((a, b) => a.n - b.n || (a.writer < b.writer ? -1 : a.writer > b.writer ? 1 : 0));

/**
 * The state of a set-up from its events, in any order of arrival. Null when its `started` is missing: such events are
 * stored and shown as they are. Never throws.
 */
export const foldRun = (events: readonly (SetUpEvent | ForeignEvent)[]): RunState | null => {
  const ordered = inFoldOrder(events);
  const started = ordered.find((e): e is SetUpEvent & { kind: 'started' } => e.kind === 'started');
  if (!started) return null;

  // Targets are collected first, so that the order in which undo events arrive does not matter.
  const targets = new Set<string>();
  for (const e of ordered) if (e.kind === 'undone' && 'target' in e) targets.add(refKey(e.target));
  const isUndone = (e: SetUpEvent | ForeignEvent): boolean => UNDOABLE.has(e.kind) && targets.has(refKey(e));

  const slots = new Map<string, Slot>(
    started.procedure.steps.map((step) => [step.key, freshSlot(step, started)]),
  );
  const timeline: TimelineEntry[] = [];
  const stray: (SetUpEvent | ForeignEvent)[] = [];
  let live: SetUpEvent | ForeignEvent = started;
  let paused = false;
  let closed: RunState['closed'] = null;
  let total = NO_TIME;
  let pausedFor = NO_TIME;
  let unplaced = NO_TIME;

  for (const event of ordered) {
    const undone = isUndone(event);
    const alive = !undone && event.kind !== 'undone' && event !== started;
    const applies = alive && isKnown(event) && event.kind !== 'started' && !closed && event.n >= started.n;
    const gap = applies ? between(live, event) : NO_TIME;
    timeline.push({ event, undone, gap });
    if (alive && !applies) stray.push(event);
    if (!applies || !isKnown(event)) continue;
    const target = spentOn(event, slots, paused);
    total = addSpans(total, gap);
    if (target === 'pause') pausedFor = addSpans(pausedFor, gap);
    else if (target === null) unplaced = addSpans(unplaced, gap);
    else target.spent = addSpans(target.spent, gap);
    live = event;

    if (event.kind === 'paused') paused = true;
    else if (event.kind === 'resumed') paused = false;
    else if (event.kind === 'closed') closed = event.how;
    else if (!apply(event, slots, started.procedure)) stray.push(event);
    closeWhatRestsOnSkipped(slots);
  }

  const nextN = (ordered.at(-1)?.n ?? 0) + 1;
  const steps: StepState[] = [...slots.values()].map((slot) => ({
    ...slot,
    reopenedBy: slot.status === 'reopened' ? slot.reopenedBy : null,
  }));
  return {
    runId: started.runId,
    boxId: started.boxId,
    part: started.part,
    procedureId: started.procedureId,
    procedure: started.procedure,
    fromRun: started.fromRun,
    groove: started.groove,
    steps,
    now: steps.find((s) => OPEN.has(s.status))?.step.key ?? null,
    paused,
    closed,
    startedAt: started.at,
    withheldBy: steps.filter((s) => s.step.hold && !holds(s.status)).map((s) => s.step.key),
    timeline,
    total,
    pausedFor,
    unplaced,
    stray,
    contested: sharesN(ordered),
    readOnly: nextN > GREATEST_COUNT || ordered.some((e) => !isKnown(e)),
    nextN,
  };
};

/** Whether a step allows the cut: passed here, carried over, or not needed. */
export const holds = (status: StepStatus): boolean =>
  status === 'passed' || status === 'carried' || status === 'not-needed';

const freshSlot = (step: Step, started: { inherited: readonly Carried[]; groove: boolean }): Slot => {
  const carried = started.inherited.find((c) => c.key === step.key);
  const idle = step.onlyWithGroove && !started.groove;
  return {
    step,
    status: idle ? 'not-needed' : carried ? 'carried' : 'to-come',
    since: idle ? null : (carried?.since ?? null),
    reopenedBy: null,
    readings: [],
    spent: NO_TIME,
    timeUnknown: false,
  };
};

/** The step that the time before an event was spent on; 'pause' during a pause; null when it was no single step. */
const spentOn = (
  event: SetUpEvent,
  slots: ReadonlyMap<string, Slot>,
  paused: boolean,
): Slot | 'pause' | null => {
  if (paused) return 'pause';
  if (event.kind === 'ticked')
    return event.steps.length === 1 ? (slots.get(event.steps[0] ?? '') ?? null) : null;
  if (event.kind === 'read') return slots.get(event.step) ?? null;
  if (event.kind === 'paused') return [...slots.values()].find((s) => OPEN.has(s.status)) ?? null;
  return null;
};

/** Applies a tick, reading or movement as far as it can. False when it names an unknown step, or ticks a hold point among several. */
const apply = (
  event: SetUpEvent & { kind: 'ticked' | 'read' | 'moved' | 'started' | 'undone' },
  slots: Map<string, Slot>,
  procedure: Procedure,
): boolean => {
  if (event.kind === 'ticked') {
    const several = event.steps.length > 1;
    // A hold point is ticked alone: an event that ticks several steps never passes one.
    const named = event.steps
      .map((key) => slots.get(key))
      .filter((slot) => slot !== undefined && !(several && slot.step.hold)) as Slot[];
    for (const slot of named) {
      slot.status = SETTLED[event.verdict];
      slot.since = event.verdict === 'pass' ? event.at : null;
      slot.reopenedBy = null;
      slot.timeUnknown = several;
    }
    return named.length === event.steps.length;
  }
  if (event.kind === 'read') {
    const slot = slots.get(event.step);
    slot?.readings.push(event.reading);
    return slot !== undefined;
  }
  if (event.kind === 'moved') {
    for (const key of reopenedBy(procedure, event.what)) {
      const slot = slots.get(key);
      // Touching off again restores only the depth; with a groove cut since the start, its place must be found too.
      const nowNeeded = slot?.status === 'not-needed' && event.groove === true;
      if (!slot || !(HELD.has(slot.status) || nowNeeded)) continue;
      slot.status = 'reopened';
      slot.since = null;
      slot.reopenedBy = event.what;
    }
    return true;
  }
  return false;
};

/**
 * A skipped step closes the open steps that rest on it, and those that rest on these, in whatever order the procedure lists
 * them. When the skipped step is done after all, they are open again.
 */
const closeWhatRestsOnSkipped = (slots: ReadonlyMap<string, Slot>): void => {
  const unsupported = (slot: Slot, above: readonly Slot[]): boolean =>
    slot.step.restsOn.some((key) => {
      const under = slots.get(key);
      if (!under || above.includes(under)) return false;
      if (under.status === 'skipped') return true;
      return (OPEN.has(under.status) || under.status === 'closed') && unsupported(under, [...above, under]);
    });
  for (const slot of slots.values()) {
    if (slot.step.restsOn.length === 0 || !(OPEN.has(slot.status) || slot.status === 'closed')) continue;
    slot.status = unsupported(slot, [slot]) ? 'closed' : slot.reopenedBy ? 'reopened' : 'to-come';
  }
};

const sharesN = (ordered: readonly EventRef[]): boolean =>
  ordered.some((e, i) => i > 0 && ordered[i - 1]?.n === e.n && ordered[i - 1]?.writer !== e.writer);
