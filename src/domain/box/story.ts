import type { Box } from './records.ts';

/** How the first trial fit went: right at once, eased to right, or never right; null when none was tried. */
export type FirstFit = 'right' | 'eased' | 'not-right';

/** From the trials before any finish or drying, which begin a new fit. */
export const firstFit = (box: Box): FirstFit | null => {
  const trials = box.trials.filter((trial) => !trial.afterFinish);
  if (trials.length === 0) return null;
  if (trials[0]?.right) return 'right';
  return trials.some((trial) => trial.right) ? 'eased' : 'not-right';
};

export type Standing = 'on-the-lathe' | 'kept' | 'second' | 'scrapped';

export const standing = (box: Box): Standing => box.closing?.outcome ?? 'on-the-lathe';

/** The wood that carries the thread of a piece: an insert ring where there is one. */
export const threadWood = (box: Box, piece: 'lid' | 'base'): string =>
  box.plan.insert?.in === piece ? box.plan.insert.wood : box.plan[piece].wood;

/** Every wood in a box, each once, the lid's first. */
export const woodsOf = (box: Box): readonly string[] => [
  ...new Set([box.plan.lid.wood, box.plan.base.wood, ...(box.plan.insert ? [box.plan.insert.wood] : [])]),
];

/** What the Boxes place can be narrowed by; null leaves a thing open. */
export interface BoxFilter {
  readonly text: string;
  readonly wood: string | null;
  readonly pitch: string | null;
  readonly standing: Standing | null;
}

export const ANY_BOX: BoxFilter = { text: '', wood: null, pitch: null, standing: null };

/** Whether a box matches the filter. Text is sought in number, name, note and woods' names, any order, any case. */
export const matches = (box: Box, filter: BoxFilter, nameOfWood: (key: string) => string): boolean => {
  if (filter.wood !== null && !woodsOf(box).includes(filter.wood)) return false;
  if (filter.pitch !== null && box.plan.pitch.text !== filter.pitch) return false;
  if (filter.standing !== null && standing(box) !== filter.standing) return false;
  const words = filter.text.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return true;
  const said = [String(box.number), box.name, box.closing?.note ?? '', ...woodsOf(box).map(nameOfWood)]
    .join(' ')
    .toLowerCase();
  return words.every((word) => said.includes(word));
};
