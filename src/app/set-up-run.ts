import { computed, signal } from '@preact/signals-core';
import { pieceAt } from '../domain/box/piece.ts';
import type { ForeignEvent, Happening, SetUpEvent } from '../domain/setup/events.ts';
import { foldRun, type RunState } from '../domain/setup/fold.ts';
import { undoTarget } from '../domain/setup/undo.ts';
import { stamp } from '../platform/clock.ts';
import { atNextFrame } from '../platform/next-frame.ts';
import { appendEvent, eventsOfRun } from '../storage/events.ts';
import { asFailure } from '../storage/failure.ts';
import { boxById } from './boxes.ts';
import { announce } from './changes.ts';
import { failure } from './failure.ts';
import { logId, writer } from './session.ts';

const runId = signal<string | null>(null);
const events = signal<readonly (SetUpEvent | ForeignEvent)[]>([]);

/** The set-up on screen, folded from its events. */
export const run = computed(() => foldRun(events.value));
/** The tap that is on its way to disk: shown as pressed, never as done. */
export const pressed = signal<Happening | null>(null);
let isOnItsWay = false;

/** Reads a run from the store and puts it on screen. */
export const openRun = async (id: string): Promise<void> => {
  if (runId.value !== id) events.value = [];
  runId.value = id;
  try {
    const found = await eventsOfRun(logId.value, id);
    if (runId.value === id) events.value = found;
  } catch (error) {
    failure.value = asFailure(error).reason;
  }
};

/** The set-up as an event: durable when this resolves to true. A tap while another is on its way is dropped. */
export const record = async (happening: Happening): Promise<boolean> => {
  const id = runId.value;
  const state = run.value;
  if (!id || !state || state.readOnly || isOnItsWay) return false;
  isOnItsWay = true;
  const stamped = { ...stamp(), logId: logId.value, runId: id, n: state.nextN, writer: writer.value };
  const save = async (inFull: Happening): Promise<SetUpEvent> => {
    const event = { ...stamped, ...inFull };
    await appendEvent(event);
    return event;
  };
  // On its way to disk before anything is drawn: a page busy drawing is late to hear that the write is done.
  const saving = happening.kind === 'moved' ? withGroove(happening, state).then(save) : save(happening);
  const callOff = atNextFrame(() => {
    pressed.value = happening;
  });
  try {
    const event = await saving;
    events.value = [...events.value, event];
    failure.value = null;
    announce('events');
    return true;
  } catch (error) {
    const { reason } = asFailure(error);
    // Another tab got there first: what it wrote is shown before that is said.
    if (reason === 'taken') await openRun(id);
    failure.value = reason;
    return false;
  } finally {
    callOff();
    pressed.value = null;
    isOnItsWay = false;
  }
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
