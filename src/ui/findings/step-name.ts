import type { StepMeaning } from '../../domain/findings/rows/joint-row.ts';

export type NameOf = (step: string) => string;

/** What a step says, by its key, in the words of the newest set-up that had it. */
export const stepNames = (steps: readonly StepMeaning[]): NameOf => {
  const names = new Map(steps.map(({ key, sentence }) => [key, sentence] as const));
  return (key) => names.get(key) ?? key;
};
