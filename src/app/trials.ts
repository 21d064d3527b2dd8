import type { Trial } from '../domain/box/records.ts';
import { seqOf, withItem, withoutItem } from '../domain/box/with-item.ts';
import { changeBox } from './boxes.ts';

export type TrialAnswers = Omit<Trial, 'id' | 'seq' | 'at'>;

/** "Right: goes on easily, pulls up firm." says all of this. */
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
