import { signal } from '@preact/signals-core';
import { type Asked, askForFindings } from '../platform/findings-worker.ts';
import type { Found } from '../workers/findings-message.ts';
import { changes, type Topic } from './changes.ts';
import { tabledWoods } from './findings-woods.ts';
import { logId } from './session.ts';

/** Progress is shown from here on; before, it would only flicker. */
const SHOW_PROGRESS_AFTER_MS = 200;

/** What the rows are made from, in the order of the counters below. */
const TOPICS: readonly Topic[] = ['box', 'events', 'log', 'rig', 'instrument', 'wood', 'both-ways'];

export type { Found };

export const findings = signal<Found | null>(null);
/** Share done, once it takes long enough to be worth showing. */
export const progress = signal<number | null>(null);
export const findingsFailed = signal(false);
/** When what is shown was found, while it is being looked whether it still holds; epoch ms. */
export const foundAt = signal<number | null>(null);
/** The user stopped the reckoning. */
export const findingsStopped = signal(false);

let asked: Asked<Found | null> | undefined;
let askedFor = '';
/** The log that `findings` speaks of. */
let foundIn = '';

/** Moves whenever the findings may have; a screen that shows them asks again then. */
export const findingsState = (): string =>
  [logId.value, ...TOPICS.map((topic) => changes[topic].value)].join(' ');

/** Reckons the findings of the log on screen, unless nothing was written since the last time, or nothing that touches a row. */
export const reckonFindings = async (): Promise<void> => {
  const wanted = findingsState();
  if (wanted === askedFor) return;
  drop();
  const log = logId.value;
  if (foundIn !== log) {
    findings.value = null;
    foundAt.value = null;
  }
  askedFor = wanted;
  findingsFailed.value = false;
  findingsStopped.value = false;
  let share = 0;
  const timer = setTimeout(() => {
    if (asked === mine) progress.value = share;
  }, SHOW_PROGRESS_AFTER_MS);
  const mine = askForFindings(
    { logIds: [log], woods: tabledWoods, known: findings.value?.from ?? null },
    {
      onProgress: (done) => {
        share = done;
        if (asked === mine && progress.value !== null) progress.value = done;
      },
      onLast: (found, at) => {
        if (asked !== mine) return;
        foundIn = log;
        findings.value = found;
        foundAt.value = at;
      },
    },
  );
  asked = mine;
  try {
    const found = await mine.answer;
    if (asked !== mine) return;
    foundIn = log;
    if (found) findings.value = found;
    foundAt.value = null;
  } catch {
    if (asked !== mine) return;
    findingsFailed.value = true;
    askedFor = '';
  } finally {
    clearTimeout(timer);
    if (asked === mine) progress.value = null;
  }
};

const drop = (): void => {
  asked?.cancel();
  asked = undefined;
  askedFor = '';
  progress.value = null;
};

/** Stops the reckoning under way; what was found before stays. */
export const cancelFindings = (): void => {
  drop();
  findingsStopped.value = true;
};
