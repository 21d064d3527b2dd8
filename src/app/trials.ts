import type { Trial } from '../domain/box/records.ts';
import { nextSeq } from '../domain/box/sequence.ts';
import { newId } from '../platform/ids.ts';
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

export const recordTrial = (boxId: string, answers: TrialAnswers): Promise<boolean> => {
  const trial = { ...answers, id: newId(), at: Date.now() };
  return changeBox(boxId, (box) => ({ ...box, trials: [...box.trials, { ...trial, seq: nextSeq(box) }] }));
};

export const takeBackTrial = (boxId: string, trialId: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, trials: box.trials.filter(({ id }) => id !== trialId) }));
