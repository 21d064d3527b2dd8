import type { ExperimentMeasure, ExperimentPlan } from '../domain/box/records.ts';
import { drawLots } from '../domain/experiment/draw-lots.ts';
import { type ExperimentQuestion, experimentQuestions } from '../domain/experiment/experiment-questions.ts';
import { seededRandom } from '../domain/random.ts';
import { today } from '../platform/clock.ts';
import { freshSeed } from '../platform/ids.ts';
import { newestBox } from './boxes.ts';
import { keep } from './keep.ts';
import { procedureById } from './rigs.ts';

/** What the procedure of the newest box leaves open to an experiment. */
export const openQuestions = async (): Promise<readonly ExperimentQuestion[]> => {
  const newest = await newestBox();
  return experimentQuestions(await procedureById(newest?.box.procedureId ?? ''));
};

/** Draws the lots and keeps them before the first box: what was drawn cannot be drawn again. Durable when it resolves to true. */
export const beginExperiment = async (
  id: string,
  { step, sentence }: Pick<ExperimentQuestion, 'step' | 'sentence'>,
  measure: ExperimentMeasure,
  boxes: number,
): Promise<boolean> => {
  const lots = drawLots(boxes, seededRandom(freshSeed()));
  if (!lots.ok) return false;
  const plan: ExperimentPlan = {
    step,
    sentence,
    measure,
    lots: lots.value,
    drawnOn: today(),
    boxes: [],
    givenUp: false,
  };
  // A retry of what was saved unheard draws no second time.
  return keep('experiment', id, (drawn) => drawn ?? plan);
};
