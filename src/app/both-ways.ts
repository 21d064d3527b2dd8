import type { BothWaysPlan } from '../domain/box/records.ts';
import { mayVary } from '../domain/experiment/trial-step.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { changeRecord, listRecords } from '../storage/records.ts';
import type { BoxOnHand } from './boxes.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { procedureById } from './rigs.ts';
import { author, logId } from './session.ts';

/** A trial of a step, with its id. */
export interface BothWaysOnHand {
  readonly id: string;
  readonly plan: BothWaysPlan;
}

/** Every trial of the log, the newest first by the day it was drawn. */
export const allBothWays = async (): Promise<BothWaysOnHand[]> =>
  (await listRecords(logId.value, 'both-ways'))
    .flatMap(({ id, body }) => (body ? [{ id, plan: body }] : []))
    .sort((a, b) => (a.plan.drawnOn < b.plan.drawnOn ? 1 : -1));

const isOpen = ({ plan }: BothWaysOnHand): boolean => !plan.givenUp && plan.boxes.length < plan.lots.length;

/** The lot of a box in a trial, or null when it took none. */
export const lotOf = (plan: BothWaysPlan, boxId: string): 'with' | 'without' | null =>
  plan.lots[plan.boxes.indexOf(boxId)] ?? null;

/**
 * The trial that asks something of this box: the one it took a lot in, else, before its first set-up, the open one whose next
 * lot it would take. A step that its procedure does not leave to a trial is never asked for.
 */
export const askedOf = async ({
  id,
  box,
}: BoxOnHand): Promise<{ readonly plan: BothWaysPlan; readonly lot: 'with' | 'without' } | null> => {
  const all = await allBothWays();
  const taken = all.find(({ plan }) => !plan.givenUp && plan.boxes.includes(id));
  const plan = (taken ?? (box.setUps.length === 0 ? all.find(isOpen) : undefined))?.plan;
  if (!plan || !mayVary(await procedureById(box.procedureId), plan.step)) return null;
  const lot = lotOf(plan, id) ?? plan.lots[plan.boxes.length];
  return lot ? { plan, lot } : null;
};

/** A box takes the next lot of an open trial before its first set-up, and one lot only. */
export const takeLot = async ({ id, box }: BoxOnHand, procedure: Procedure): Promise<void> => {
  if (box.setUps.length > 0) return;
  const all = await allBothWays().catch(() => []);
  const open = all.find(isOpen);
  if (!open || !mayVary(procedure, open.plan.step) || all.some(({ plan }) => plan.boxes.includes(id))) return;
  await changeBothWays(open.id, (plan) =>
    plan.boxes.includes(id) || plan.boxes.length >= plan.lots.length
      ? plan
      : { ...plan, boxes: [...plan.boxes, id] },
  );
};

export const changeBothWays = async (
  id: string,
  change: (plan: BothWaysPlan) => BothWaysPlan,
): Promise<boolean> => {
  const saved = await attempt(() =>
    changeRecord(logId.value, 'both-ways', id, author(), (plan) => (plan ? change(plan) : null)),
  );
  if (saved) announce('both-ways');
  return saved !== undefined;
};
