import type { BothWaysPlan, TrialMeasure } from '../domain/box/records.ts';
import { drawLots } from '../domain/experiment/draw-lots.ts';
import { type TrialQuestion, trialQuestions } from '../domain/experiment/trial-questions.ts';
import { seededRandom } from '../domain/random.ts';
import { today } from '../platform/clock.ts';
import { freshSeed, newId } from '../platform/ids.ts';
import { changeRecord } from '../storage/records.ts';
import { newestBox } from './boxes.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { procedureById } from './rigs.ts';
import { author, logId } from './session.ts';

/** What the procedure of the newest box leaves open to a trial. */
export const openQuestions = async (): Promise<readonly TrialQuestion[]> => {
  const newest = await newestBox();
  return trialQuestions(await procedureById(newest?.box.procedureId ?? ''));
};

/** Draws the lots and keeps them before the first box: what was drawn cannot be drawn again. Durable when it resolves to true. */
export const beginBothWays = async (
  { step, sentence }: Pick<TrialQuestion, 'step' | 'sentence'>,
  measure: TrialMeasure,
  boxes: number,
): Promise<boolean> => {
  const lots = drawLots(boxes, seededRandom(freshSeed()));
  if (!lots.ok) return false;
  const plan: BothWaysPlan = {
    step,
    sentence,
    measure,
    lots: lots.value,
    drawnOn: today(),
    boxes: [],
    givenUp: false,
  };
  const saved = await attempt(() => changeRecord(logId.value, 'both-ways', newId(), author(), () => plan));
  if (saved) announce('both-ways');
  return saved !== undefined;
};
