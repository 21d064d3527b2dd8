import { movedSince } from '../domain/box/moved-since.ts';
import { nextSeq } from '../domain/box/sequence.ts';
import { latestRun, newestRun } from '../domain/box/stages.ts';
import type { Part, SetUpEvent } from '../domain/setup/events.ts';
import { carriedOver } from '../domain/setup/inherit.ts';
import { stamp } from '../platform/clock.ts';
import { type BoxOnHand, runsOf } from './boxes.ts';
import { takeLot } from './experiments.ts';
import { attempt } from './failure.ts';
import { bodyOf, put } from './keep.ts';
import { procedureById, rigById } from './rigs.ts';
import { logId, writer } from './session.ts';

/**
 * Starts a set-up for one piece under a new run id; true once the first event and the box that lists it are on disk together.
 * The second piece carries over what the job itself does not move; a piece cut before is picked up again.
 */
export const startSetUp = async (runId: string, onHand: BoxOnHand, part: Part): Promise<boolean> =>
  (await attempt(
    'set-up',
    async () => {
      const { id: boxId, box } = onHand;
      // Begun by a first try whose commit was never heard.
      if ((await bodyOf('box', boxId))?.setUps.some((ref) => ref.runId === runId)) return true;
      const runs = await runsOf(box);
      const procedure = await procedureById(box.procedureId);
      const rig = await rigById(box.rigId);
      const before = newestRun(box.setUps, runs);
      // Before the set-up, so that no set-up under a lot goes without it, whenever the phone dies.
      await takeLot(onHand, procedure);
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
      return put(
        'box',
        boxId,
        (now) => now && { ...now, setUps: [...now.setUps, { runId, part, seq: nextSeq(now) }] },
        { event },
      );
    },
    onHand.id,
  )) ?? false;
