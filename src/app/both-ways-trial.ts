import { type BothWays, bothWays, drawLots } from '../domain/findings/both-ways.ts';
import type { JointRow } from '../domain/findings/joint-row.ts';
import { seededRandom } from '../domain/log/random.ts';
import type { BothWaysPlan } from '../domain/log/records.ts';
import { freshSeed } from '../platform/chance.ts';
import { today } from '../platform/clock.ts';
import { newId } from '../platform/ids.ts';
import { changeRecord } from '../storage/records.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { author, logId } from './session.ts';

/** Draws the lots and keeps them before the first box: what was drawn cannot be drawn again. Durable when it resolves to true. */
export const beginBothWays = async (step: string, sentence: string, boxes: number): Promise<boolean> => {
  const lots = drawLots(boxes, seededRandom(freshSeed()));
  if (!lots.ok) return false;
  const plan: BothWaysPlan = {
    step,
    sentence,
    lots: lots.value,
    drawnOn: today(),
    boxes: [],
    givenUp: false,
  };
  const saved = await attempt(() => changeRecord(logId.value, 'both-ways', newId(), author(), () => plan));
  if (saved) announce('both-ways');
  return saved !== undefined;
};

const VALUE: Readonly<Record<JointRow['firstTry'], number | null>> = {
  right: 1,
  eased: 1,
  failed: 0,
  scrapped: 0,
  unknown: null,
};

/** The trial so far, every box by its lot as drawn, whatever was then done. */
export const standingOf = (plan: BothWaysPlan, rows: readonly JointRow[]): BothWays => {
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  return bothWays(
    plan.boxes.map((id, i) => {
      const row = rowOf.get(id);
      return { lot: plan.lots[i] ?? 'with', value: row ? VALUE[row.firstTry] : null };
    }),
    plan.lots.length,
  );
};
