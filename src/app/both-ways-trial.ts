import type { BothWaysPlan, TrialMeasure } from '../domain/box/records.ts';
import { drawLots } from '../domain/experiment/draw-lots.ts';
import { type TrialQuestion, trialQuestions } from '../domain/experiment/trial-questions.ts';
import { seededRandom } from '../domain/random.ts';
import { today } from '../platform/clock.ts';
import { freshSeed } from '../platform/ids.ts';
import { newestBox } from './boxes.ts';
import { keep } from './keep.ts';
import { procedureById } from './rigs.ts';

/** What the procedure of the newest box leaves open to a trial. */
export const openQuestions = async (): Promise<readonly TrialQuestion[]> => {
  const newest = await newestBox();
  return trialQuestions(await procedureById(newest?.box.procedureId ?? ''));
};

/** Draws the lots and keeps them before the first box: what was drawn cannot be drawn again. Durable when it resolves to true. */
export const beginBothWays = async (
  id: string,
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
  // A retry of what was saved unheard draws no second time.
  return keep('both-ways', id, (drawn) => drawn ?? plan);
};
