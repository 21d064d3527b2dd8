import { drawLots } from '../domain/findings/draw-lots.ts';
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
