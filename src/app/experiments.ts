import type { ExperimentPlan } from '../domain/box/records.ts';
import { mayVary } from '../domain/experiment/experiment-step.ts';
import type { Procedure } from '../domain/setup/procedure.ts';
import { type BoxOnHand, boxById } from './boxes.ts';
import { listBodies, put } from './keep.ts';
import { procedureById } from './rigs.ts';

/** An experiment of a step, with its id. */
export interface ExperimentOnHand {
  readonly id: string;
  readonly plan: ExperimentPlan;
}

/** Every experiment of the log, the newest first by the day it was drawn. */
export const allExperiments = async (): Promise<ExperimentOnHand[]> =>
  (await listBodies('experiment'))
    .map(({ id, body }) => ({ id, plan: body }))
    .sort((a, b) => (a.plan.drawnOn < b.plan.drawnOn ? 1 : -1));

const isOpen = ({ plan }: ExperimentOnHand): boolean => !plan.givenUp && plan.boxes.length < plan.lots.length;

/** The lot of a box in an experiment, or null when it took none. */
export const lotOf = (plan: ExperimentPlan, boxId: string): 'with' | 'without' | null =>
  plan.lots[plan.boxes.indexOf(boxId)] ?? null;

/**
 * The experiment that asks something of this box: the one it took a lot in, else, before its first set-up, the open one whose next
 * lot it would take. A step that its procedure does not leave to an experiment is never asked for.
 */
export const askedOf = async ({
  id,
  box,
}: BoxOnHand): Promise<{ readonly plan: ExperimentPlan; readonly lot: 'with' | 'without' } | null> => {
  const all = await allExperiments();
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

/** A box takes the next lot of an open experiment before its first set-up, and one lot only. Throws a StorageFailure. */
export const takeLot = async ({ id, box }: BoxOnHand, procedure: Procedure): Promise<void> => {
  if (box.setUps.length > 0) return;
  const all = await allExperiments();
  const open = all.find(isOpen);
  if (!open || !mayVary(procedure, open.plan.step) || all.some(({ plan }) => plan.boxes.includes(id))) return;
  await put('experiment', open.id, (plan) =>
    plan && !plan.boxes.includes(id) && plan.boxes.length < plan.lots.length
      ? { ...plan, boxes: [...plan.boxes, id] }
      : plan,
  );
};
