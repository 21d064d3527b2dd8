import type { Trial } from '../domain/box/records.ts';
import { seqOf, withItem, withoutItem } from '../domain/box/with-item.ts';
import type { Field, MoveMade } from '../domain/diagnosis/view.ts';
import { changeBox } from './boxes.ts';

export type TrialAnswers = Omit<Trial, 'id' | 'seq' | 'at'>;

/** "Good: runs on freely, pulls up firm" says all of this. */
export const RIGHT: TrialAnswers = {
  right: true,
  goingOn: ['free'],
  seated: 'flush',
  threads: ['sound'],
  marks: null,
  endPlay: null,
  turnsOn: null,
  afterFinish: false,
};

export const recordTrial = (boxId: string, id: string, answers: TrialAnswers): Promise<boolean> => {
  const trial = { ...answers, id, at: Date.now() };
  return changeBox(
    boxId,
    (box) => ({ ...box, trials: withItem(box.trials, { ...trial, seq: seqOf(box, id) }) }),
    'trial',
  );
};

export const takeBackTrial = (boxId: string, trialId: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, trials: withoutItem(box.trials, trialId) }), 'trial');

const changed = (trials: readonly Trial[], trialId: string, change: (trial: Trial) => Trial) =>
  trials.map((trial) => (trial.id === trialId ? change(trial) : trial));

const changeTrial = (boxId: string, trialId: string, change: (trial: Trial) => Trial): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, trials: changed(box.trials, trialId, change) }), 'trial');

/** Other answers to the same trial: something was missed or mistyped. */
export const correctTrial = (
  boxId: string,
  trialId: string,
  answers: Partial<TrialAnswers>,
): Promise<boolean> => changeTrial(boxId, trialId, (trial) => ({ ...trial, ...answers }));

/** What the advice asked about, answered; nothing to add where nobody could tell. It is not asked again. */
export const answerQuestion = (
  boxId: string,
  trialId: string,
  field: Field,
  answer: Partial<TrialAnswers>,
): Promise<boolean> =>
  changeTrial(boxId, trialId, (trial) => ({
    ...trial,
    ...answer,
    asked: [...(trial.asked ?? []).filter((each) => each !== field), field],
  }));

/** All moves made since a trial: the whole list, so that saving it again adds nothing. */
export const recordMoves = (boxId: string, trialId: string, moves: readonly MoveMade[]): Promise<boolean> =>
  changeTrial(boxId, trialId, (trial) => ({ ...trial, moves }));

/** The lid is right as it is: what was said of it is no fault. The move and the trial that it makes right go together. */
export const leaveAsItIs = (
  boxId: string,
  id: string,
  { id: trialId, goingOn, endPlay, afterFinish, moves = [] }: Trial,
  move: MoveMade,
): Promise<boolean> => {
  const right = { ...RIGHT, goingOn, endPlay, afterFinish, id, at: Date.now() };
  return changeBox(
    boxId,
    (box) => ({
      ...box,
      trials: withItem(
        changed(box.trials, trialId, (trial) => ({ ...trial, moves: [...moves, move] })),
        { ...right, seq: seqOf(box, id) },
      ),
    }),
    'trial',
  );
};
