import type { BothWaysPlan } from '../domain/log/records.ts';
import { changeRecord, listRecords } from '../storage/records.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
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

/** The trial that asks something of this box: the one it took a lot in, else the open one whose next lot it would take. */
export const askedOf = async (
  boxId: string,
): Promise<{ readonly plan: BothWaysPlan; readonly lot: 'with' | 'without' } | null> => {
  const all = await allBothWays();
  const mine = all.find(({ plan }) => !plan.givenUp && plan.boxes.includes(boxId)) ?? all.find(isOpen);
  if (!mine) return null;
  const lot = lotOf(mine.plan, boxId) ?? mine.plan.lots[mine.plan.boxes.length];
  return lot ? { plan: mine.plan, lot } : null;
};

/** A box's first set-up takes the next lot of an open trial; a box takes one lot only. */
export const takeLot = async (boxId: string): Promise<void> => {
  const all = await allBothWays().catch(() => []);
  const open = all.find(isOpen);
  if (!open || all.some(({ plan }) => plan.boxes.includes(boxId))) return;
  await changeBothWays(open.id, (plan) => ({ ...plan, boxes: [...plan.boxes, boxId] }));
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
