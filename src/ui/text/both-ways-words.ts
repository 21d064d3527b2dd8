import type { BothWays } from '../../domain/findings/both-ways.ts';
import type { PowerAt } from '../../domain/findings/trial-power.ts';

const inHundred = (share: number): number => Math.round(100 * share);

export const bothWaysWords = {
  title: 'Try it both ways',
  about:
    'For a question the log cannot answer: lots are drawn beforehand, half the boxes with the step and half without, in blocks of four. Hold points are never varied. It is looked at twice only, half way and at the end.',
  step: 'Which step?',
  boxes: 'How many boxes? (a multiple of 4, from 8)',
  power: ({ boxes, right }: PowerAt) =>
    `With ${boxes} boxes: ${inHundred(right)} chances in 100 of a clear answer, if 15 boxes in 100 do not fit with the step and 35 without.${
      right < 0.8 ? ' An unclear answer then says little.' : ''
    }`,
  plan: 'Plan a trial',
  begin: 'Draw the lots',
  asked: 'The Bench says before each set-up which lot the box has drawn.',
  underWay: (sentence: string, done: number, of: number) =>
    `“${sentence}”: ${done} of ${of} boxes have taken a lot.`,
  lot: { with: 'with', without: 'without' },
  thisBox: (sentence: string, lot: 'with' | 'without') =>
    lot === 'with'
      ? `Trial: do “${sentence}” on this box.`
      : `Trial: leave “${sentence}” out on this box (tap Skip).`,
  standing: (standing: BothWays | undefined) => {
    if (!standing) return 'Its boxes are being read…';
    const { look, clear, difference, with: withs, without } = standing;
    if (look === 'none-yet') return 'Not to be looked at before half of the boxes are done.';
    const when = look === 'half' ? 'Half way' : 'At the end';
    const counted = `${withs} with the step, ${without} without`;
    if (difference === null) return `${when} (${counted}): nothing to compare.`;
    const more = inHundred(Math.abs(difference));
    const share =
      more === 0
        ? 'As many were right with the step as without.'
        : `${more} more in 100 were right ${difference > 0 ? 'with' : 'without'} the step.`;
    const answer = clear
      ? 'a clear answer.'
      : look === 'half'
        ? 'no clear answer yet; go on to the end.'
        : 'no clear answer. That is no leave to skip it.';
    return `${when} (${counted}): ${answer} ${share}`;
  },
  giveUp: 'Give the trial up',
  putAway: 'Put the result away',
  earlier: 'Earlier trials',
} as const;
