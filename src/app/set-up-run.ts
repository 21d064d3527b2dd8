import { computed, signal } from '@preact/signals-core';
import { pieceAt } from '../domain/box/piece.ts';
import type { ForeignEvent, Happening, SetUpEvent } from '../domain/setup/events.ts';
import { foldRun, type RunState } from '../domain/setup/fold.ts';
import { undoTarget } from '../domain/setup/undo.ts';
import { stamp } from '../platform/clock.ts';
import { atNextFrame } from '../platform/next-frame.ts';
import { appendEvent, eventsOfRun } from '../storage/events.ts';
import { asFailure } from '../storage/failure.ts';
import { ask } from './ask.ts';
import { boxById } from './boxes.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { logId, writer } from './session.ts';

const runId = signal<string | null>(null);
const events = signal<readonly (SetUpEvent | ForeignEvent)[]>([]);

/** The set-up on screen, folded from its events. */
export const run = computed(() => foldRun(events.value));
/** The tap that is on its way to disk: shown as pressed, never as done. */
export const pressed = signal<Happening | null>(null);
/** The set-ups that have an event on its way. */
const onTheirWay = new Set<string>();

/** Gives up the reading under way. */
let giveUp = (): void => {};

/** Reads a run from the store and puts it on screen; resolves once it is there, or another was asked for instead. */
export const openRun = (id: string): Promise<void> => {
  giveUp();
  if (runId.value !== id) {
    events.value = [];
    pressed.value = null;
  }
  runId.value = id;
  return new Promise((resolve) => {
    const stop = ask(
      () => eventsOfRun(logId.value, id),
      (found) => {
        events.value = found;
        resolve();
      },
    );
    giveUp = () => {
      stop();
      resolve();
    };
  });
};

/** A set-up as it stands in the store; null when it is not there or cannot be read. */
export const runById = async (id: string): Promise<RunState | null> =>
  (await attempt('step', async () => foldRun(await eventsOfRun(logId.value, id)), id)) ?? null;

/** The set-up is left: nothing waits for it any more. */
export const leaveRun = (): void => giveUp();

/**
 * Records an event of the set-up on screen, or of another as it was last folded: durable when this resolves to true. A tap while
 * another of the same set-up is on its way is dropped.
 */
export const record = async (happening: Happening, of: RunState | null = run.value): Promise<boolean> => {
  const id = of?.runId;
  const isOnScreen = (): boolean => runId.value === id;
  const state = isOnScreen() ? run.value : of;
  if (!id || !state || state.readOnly || onTheirWay.has(id)) return false;
  onTheirWay.add(id);
  const stamped = { ...stamp(), logId: logId.value, runId: id, n: state.nextN, writer: writer.value };
  const save = async (inFull: Happening): Promise<SetUpEvent> => {
    const event = { ...stamped, ...inFull };
    await appendEvent(event);
    return event;
  };
  // On its way to disk before anything is drawn: a page busy drawing is late to hear that the write is done.
  const saving = happening.kind === 'moved' ? withGroove(happening, state).then(save) : save(happening);
  const callOff = atNextFrame(() => {
    if (isOnScreen()) pressed.value = happening;
  });
  const event = await attempt(
    'step',
    () =>
      saving.catch(async (error: unknown) => {
        // Another tab got there first: what it wrote is shown before that is said.
        if (asFailure(error).reason === 'taken' && isOnScreen()) await openRun(id);
        throw error;
      }),
    id,
  );
  callOff();
  onTheirWay.delete(id);
  if (isOnScreen()) {
    pressed.value = null;
    if (event) events.value = [...events.value, event];
  }
  if (event) announce('events');
  return event !== undefined;
};

/** A movement also says whether a pass had been cut by then: nobody who records one can forget to. */
const withGroove = async (
  happening: Happening & { kind: 'moved' },
  { boxId, part }: RunState,
): Promise<Happening> => {
  const onHand = await boxById(boxId);
  return { ...happening, groove: onHand !== null && pieceAt(onHand.box, part).cuts.length > 0 };
};

/** Takes back the newest tick, reading or movement. */
export const undo = async (): Promise<boolean> => {
  const target = run.value && undoTarget(run.value);
  return target ? record({ kind: 'undone', target: { n: target.n, writer: target.writer } }) : false;
};
