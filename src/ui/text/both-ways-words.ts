import type { BothWays } from '../../domain/findings/both-ways.ts';

export const bothWaysWords = {
  title: 'Try it both ways',
  about:
    'For a question the log cannot answer: lots are drawn beforehand, half the boxes with the step and half without, in blocks of four. Hold points are never varied. It is looked at twice only, half way and at the end.',
  step: 'Which step?',
  boxes: 'How many boxes? (a multiple of 4, from 8)',
  power: (boxes: number, chance: number) =>
    `With ${boxes} boxes: ${Math.round(100 * chance)} chances in 100 of a clear answer, if 15 in 100 do not fit with the step and 35 in 100 without.`,
  begin: 'Draw the lots',
  underWay: (sentence: string, done: number, of: number) =>
    `“${sentence}”: ${done} of ${of} boxes have taken a lot.`,
  lot: { with: 'with', without: 'without' },
  thisBox: (sentence: string, lot: 'with' | 'without') =>
    lot === 'with'
      ? `Trial: do “${sentence}” on this box.`
      : `Trial: leave “${sentence}” out on this box (tap Skip).`,
  standing: ({ look, clear, difference, with: withs, without }: BothWays) => {
    if (look === 'none-yet') return 'Not to be looked at before half of the boxes are done.';
    const share =
      difference === null
        ? ''
        : ` Right with the step less right without: ${Math.round(100 * difference)} in 100.`;
    const counted = ` (${withs} with, ${without} without)`;
    const when = look === 'half' ? 'Half way' : 'At the end';
    return `${when}${counted}: ${clear ? 'a clear answer.' : 'no clear answer.'}${share}`;
  },
  giveUp: 'Give the trial up',
} as const;
