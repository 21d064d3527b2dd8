import type { BothWaysPlan } from '../domain/box/records.ts';
import { mayVary } from '../domain/experiment/trial-step.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { type BoxOnHand, boxById } from './boxes.ts';
import { listBodies, put } from './keep.ts';
import { procedureById } from './rigs.ts';

/** A trial of a step, with its id. */
export interface BothWaysOnHand {
  readonly id: string;
  readonly plan: BothWaysPlan;
}

/** Every trial of the log, the newest first by the day it was drawn. */
export const allBothWays = async (): Promise<BothWaysOnHand[]> =>
  (await listBodies('both-ways'))
    .map(({ id, body }) => ({ id, plan: body }))
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

/** The same of the box with this id. */
export const askedOfBox = async (id: string) => {
  const onHand = await boxById(id);
  return onHand && askedOf(onHand);
};

/** A box takes the next lot of an open trial before its first set-up, and one lot only. Throws a StorageFailure. */
export const takeLot = async ({ id, box }: BoxOnHand, procedure: Procedure): Promise<void> => {
  if (box.setUps.length > 0) return;
  const all = await allBothWays();
  const open = all.find(isOpen);
  if (!open || !mayVary(procedure, open.plan.step) || all.some(({ plan }) => plan.boxes.includes(id))) return;
  await put('both-ways', open.id, (plan) =>
    plan && !plan.boxes.includes(id) && plan.boxes.length < plan.lots.length
      ? { ...plan, boxes: [...plan.boxes, id] }
      : plan,
  );
};
