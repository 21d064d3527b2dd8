import type { TrialAnswers } from '../../../app/trials.ts';
import { goingOn, marks, marksAt, seated, threads } from '../../../domain/box/trial-words.ts';
import { MEASURED_LIMITS } from '../../../domain/diagnosis/measured-limits.ts';
import { readLength, readTurns } from '../../../domain/units/read-quantity.ts';
import { oneOf, someOf } from '../../parts/options.ts';
import type { Form } from '../../parts/use-form.ts';

/** The texts of a trial's form before anything is said; of what is ticked, the words with spaces between. */
export const BLANK = {
  goingOn: '',
  seated: '',
  threads: '',
  marksOn: '',
  marksAt: '',
  endPlay: '',
  bottomGap: '',
  turnsOn: '',
  afterFinish: '',
};

/** Only a lid that stops may have met the floor. */
export const asksFloor = (said: string): boolean => someOf(goingOn, said).includes('stops-dead');

/** What the form says of a trial; undefined leaves a refusal beside a field. */
export const trialAnswers = (form: Form<keyof typeof BLANK>, unit: 'in' | 'mm'): TrialAnswers | undefined => {
  const said = form.values.value;
  const endPlay =
    said.endPlay.trim() === ''
      ? null
      : form.read('endPlay', (field, typed) => readLength(field, typed, unit, MEASURED_LIMITS.endPlay));
  const bottomGap =
    said.bottomGap.trim() === ''
      ? null
      : form.read('bottomGap', (field, typed) => readLength(field, typed, unit, MEASURED_LIMITS.bottomGap));
  const turnsOn =
    said.turnsOn.trim() === ''
      ? null
      : form.read('turnsOn', (field, typed) => readTurns(field, typed, MEASURED_LIMITS.turnsOn));
  if (endPlay === undefined || bottomGap === undefined || turnsOn === undefined) return undefined;
  const on = oneOf(marks, said.marksOn);
  return {
    right: false,
    goingOn: someOf(goingOn, said.goingOn),
    seated: oneOf(seated, said.seated) ?? null,
    threads: someOf(threads, said.threads),
    marks: on ? { on, at: oneOf(marksAt, said.marksAt) ?? 'all-along' } : null,
    endPlay,
    bottomGap,
    turnsOn,
    afterFinish: said.afterFinish !== '',
  };
};
