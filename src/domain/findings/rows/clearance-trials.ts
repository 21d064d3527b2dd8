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

/** What a trial says of size, or null. A lid that will not start is tight only if the pieces truly overlap. */
const feltIn = (trial: Trial, clearance: number): ClearanceTrial['felt'] | null => {
  const told = [...trial.goingOn, ...(trial.seated ? [trial.seated] : []), ...trial.threads];
  if (told.some((word) => HIDES.has(word))) return null;
  if (trial.right) return 'right';
  if (trial.goingOn.includes('will-not-start')) return clearance <= 0 ? 'tight' : null;
  const words = new Set(trial.goingOn.map((word) => SIZE[word]).filter((v) => v !== undefined));
  // Tight and slack at once is about something else than size; free with play is slack.
  if (words.has('tight') && words.size > 1) return null;
  return words.has('slack') ? 'slack' : ([...words][0] ?? null);
};

/** The trials of a box that say something of size, with the clearance as it was at each. */
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
