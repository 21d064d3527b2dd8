import type { TrialAnswers } from '../../../app/trials.ts';
import type { Trial } from '../../../domain/box/records.ts';
import type { GoingOn, MarksAt, MarksOn, Seated, ThreadState } from '../../../domain/box/trial-words.ts';

/** The texts of a trial's form before anything is said; of what is ticked, the words with spaces between. */
export const BLANK = { goingOn: '', seated: '', threads: '', marksOn: '', marksAt: '', afterFinish: '' };
export type Said = typeof BLANK;

/** What is ticked in one of its fields. */
export const listOf = <T extends string>(text: string): readonly T[] =>
  text.split(' ').filter(Boolean) as T[];

/** How many answers there are; where along the thread is none by itself. */
export const countOf = ({ afterFinish: _, marksAt, ...said }: Said): number =>
  [...Object.values(said), said.marksOn && marksAt].reduce((count, text) => count + listOf(text).length, 0);

/** A trial as its form has it, to be changed. */
export const saidOf = ({ goingOn, seated, threads, marks, afterFinish }: Trial): Said => ({
  goingOn: goingOn.join(' '),
  seated: seated ?? '',
  threads: threads.join(' '),
  marksOn: marks?.on ?? '',
  marksAt: marks?.at ?? '',
  afterFinish: afterFinish ? 'yes' : '',
});

/** What the form says. Marks of which nobody said where are along all of the thread. */
export const answersOf = (said: Said) =>
  ({
    right: false,
    goingOn: listOf<GoingOn>(said.goingOn),
    seated: (said.seated || null) as Seated | null,
    threads: listOf<ThreadState>(said.threads),
    marks: said.marksOn
      ? { on: said.marksOn as MarksOn, at: (said.marksAt || 'all-along') as MarksAt }
      : null,
    afterFinish: said.afterFinish !== '',
  }) satisfies Partial<TrialAnswers>;
