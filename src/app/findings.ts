import { signal } from '@preact/signals-core';
import { type Asked, askForFindings } from '../platform/findings-worker.ts';
import type { Found } from '../workers/findings-message.ts';
import { changes, type Topic } from './changes.ts';
import { tabledWoods } from './findings-woods.ts';
import { logId } from './session.ts';
import { isInMemory } from './start.ts';

/** Progress is shown from here on; before, it would only flicker. */
const SHOW_PROGRESS_AFTER_MS = 200;

/** What the rows are made from, in the order of the counters below. */
const TOPICS: readonly Topic[] = ['box', 'events', 'log', 'rig', 'instrument', 'wood', 'experiment'];

export type { Found };

/** The findings of the log on screen and what is being done about them. `found` is what was found last, `asOf` when, if it may no longer hold. */
type FindingsNow =
  | { readonly is: 'not-asked'; readonly found: null }
  | {
      readonly is: 'asked';
      readonly found: Found | null;
      readonly asOf: number | null;
      /** Share done, once it takes long enough to be worth showing. */
      readonly share: number | null;
    }
  | { readonly is: 'answered'; readonly found: Found }
  | { readonly is: 'failed'; readonly found: Found | null }
  /** The user stopped it. */
  | { readonly is: 'stopped'; readonly found: Found | null; readonly asOf: number | null };

export const findings = signal<FindingsNow>({ is: 'not-asked', found: null });

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
  // The worker opens the store itself, and would find none.
  if (wanted === askedFor || isInMemory.value) return;
  asked?.cancel();
  askedFor = wanted;
  const log = logId.value;
  let { found } = foundIn === log ? findings.value : { found: null };
  let asOf = 'asOf' in findings.value && found ? findings.value.asOf : null;
  let share = 0;
  let isSlow = false;
  const show = (): void => {
    if (asked === mine) findings.value = { is: 'asked', found, asOf, share: isSlow ? share : null };
  };
  const timer = setTimeout(() => {
    isSlow = true;
    show();
  }, SHOW_PROGRESS_AFTER_MS);
  const mine = askForFindings(
    { logIds: [log], woods: tabledWoods, known: found?.from ?? null },
    {
      onProgress: (done) => {
        share = done;
        if (isSlow) show();
      },
      onLast: (last, at) => {
        if (asked !== mine) return;
        foundIn = log;
        found = last;
        asOf = at;
        show();
      },
    },
  );
  asked = mine;
  show();
  try {
    const answer = (await mine.answer) ?? found;
    if (asked !== mine) return;
    foundIn = log;
    findings.value = answer ? { is: 'answered', found: answer } : { is: 'not-asked', found: null };
  } catch {
    if (asked !== mine) return;
    findings.value = { is: 'failed', found };
    askedFor = '';
  } finally {
    clearTimeout(timer);
  }
};

/** Stops the reckoning under way; what was found before stays. */
export const cancelFindings = (): void => {
  asked?.cancel();
  asked = undefined;
  askedFor = '';
  const { found } = findings.value;
  findings.value = { is: 'stopped', found, asOf: 'asOf' in findings.value ? findings.value.asOf : null };
};
