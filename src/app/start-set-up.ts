import { movedSince } from '../domain/box/moved-since.ts';
import { nextSeq } from '../domain/box/sequence.ts';
import { latestRun, newestRun } from '../domain/box/stages.ts';
import type { Part, SetUpEvent } from '../domain/setup/events.ts';
import { carriedOver } from '../domain/setup/inherit.ts';
import { stamp } from '../platform/clock.ts';
import { newId } from '../platform/ids.ts';
import { takeLot } from './both-ways.ts';
import { type BoxOnHand, changeBox, runsOf } from './boxes.ts';
import { announce } from './changes.ts';
import { procedureById, rigById } from './rigs.ts';
import { logId, writer } from './session.ts';

/**
 * Starts a set-up for one piece; its run id once the first event and the box that lists it are on disk together. The second
 * piece carries over what the job itself does not move; a piece cut before is picked up again.
 */
export const startSetUp = async (onHand: BoxOnHand, part: Part): Promise<string | undefined> => {
  const { id: boxId, box } = onHand;
  const runs = await runsOf(box);
  const procedure = await procedureById(box.procedureId);
  const rig = await rigById(box.rigId);
  const before = newestRun(box.setUps, runs);
  // Before the set-up, so that no set-up under a lot goes without it, whenever the phone dies.
  await takeLot(onHand, procedure);
  const runId = newId();
  const event: SetUpEvent = {
    ...stamp(),
    kind: 'started',
    logId: logId.value,
    runId,
    n: 1,
    writer: writer.value,
    boxId,
    part,
    procedureId: box.procedureId,
    procedure,
    inherited: before ? carriedOver(before, procedure, movedSince(before, box, part, rig)) : [],
    fromRun: before?.runId ?? null,
    groove: latestRun(box, part, runs)?.closed === 'cut',
  };
  const saved = await changeBox(
    boxId,
    (now) => ({ ...now, setUps: [...now.setUps, { runId, part, seq: nextSeq(now) }] }),
    { event },
  );
  if (!saved) return undefined;
  announce('events');
  return runId;
};
