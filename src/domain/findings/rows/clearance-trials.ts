import type { Given } from '../../box/given.ts';
import { pairAsCut } from '../../box/pair.ts';
import type { Box, Trial } from '../../box/records.ts';
import { inSequence } from '../../box/sequence.ts';
import type { GoingOn } from '../../box/trial-words.ts';
import { fitOf } from '../../joint/fit.ts';
import type { ClearanceTrial } from './joint-row.ts';

const SIZE: Partial<Readonly<Record<GoingOn, ClearanceTrial['felt']>>> = {
  'stiff-all-the-way': 'tight',
  'drags-more-each-turn': 'tight',
  free: 'right',
  'rattles-sideways': 'slack',
  'end-play': 'slack',
};

/** Faults that hide what the size would have been. */
const HIDES: ReadonlySet<string> = new Set([
  'stops-dead',
  'tight-once-a-turn',
  'tight-twice-a-turn',
  'tight-four-times-a-turn',
  'gritty',
  'jumps-a-thread',
  'rocks',
  'cross-threaded',
  'thin-or-double-cut',
]);

/** How tight a trial fit felt, or null when it tells nothing about size. A lid that will not start is tight only if the pieces truly overlap. */
const feltIn = (trial: Trial, clearance: number): ClearanceTrial['felt'] | null => {
  const noted = [...trial.goingOn, ...(trial.seated ? [trial.seated] : []), ...trial.threads];
  if (noted.some((word) => HIDES.has(word))) return null;
  if (trial.right) return 'right';
  if (trial.goingOn.includes('will-not-start')) return clearance <= 0 ? 'tight' : null;
  const words = new Set(trial.goingOn.map((word) => SIZE[word]).filter((v) => v !== undefined));
  // Tight and slack at once has another reason than size; free with play is slack.
  if (words.has('tight') && words.size > 1) return null;
  return words.has('slack') ? 'slack' : ([...words][0] ?? null);
};

/** The trial fits of a box that tell something about size, with the clearance at each. */
export const clearanceTrialsOf = (
  box: Box,
  given: Pick<Given, 'rig' | 'caliper'>,
): readonly ClearanceTrial[] => {
  let fit = 0;
  return inSequence(box.trials).flatMap((trial) => {
    if (trial.afterFinish) fit++;
    const pair = pairAsCut(box, given, trial.seq);
    const found = pair && fitOf(pair);
    if (!found?.ok) return [];
    const { clearance } = found.value;
    const felt = feltIn(trial, clearance);
    return felt ? [{ clearance, felt, fit }] : [];
  });
};
