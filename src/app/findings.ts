import { signal } from '@preact/signals-core';
import type { Findings } from '../domain/findings/findings.ts';
import { type Asked, askForFindings } from '../platform/findings-worker.ts';
import { changes } from './changes.ts';
import { logId } from './session.ts';

/** Progress is shown from here on; before, it would only flicker. */
const SHOW_PROGRESS_AFTER_MS = 200;

export const findings = signal<Findings | null>(null);
/** Share done, once it takes long enough to be worth showing. */
export const progress = signal<number | null>(null);
export const findingsFailed = signal(false);

let asked: Asked | undefined;
let askedFor = '';

/** What the findings were reckoned from; when it is the same, so are they. */
const state = (): string =>
  [logId.value, changes.box.value, changes.events.value, changes.log.value, changes.rig.value].join(' ');

/** Reckons the findings of the log on screen, unless nothing changed since the last time. */
export const reckonFindings = async (): Promise<void> => {
  const wanted = state();
  if (wanted === askedFor) return;
  cancelFindings();
  if (!askedFor.startsWith(`${logId.value} `)) findings.value = null;
  askedFor = wanted;
  findingsFailed.value = false;
  let share = 0;
  const timer = setTimeout(() => {
    progress.value = share;
  }, SHOW_PROGRESS_AFTER_MS);
  const mine = askForFindings({ logIds: [logId.value] }, (done) => {
    share = done;
    if (progress.value !== null) progress.value = done;
  });
  asked = mine;
  try {
    const found = await mine.answer;
    if (asked === mine) findings.value = found;
  } catch {
    if (asked === mine) {
      findingsFailed.value = true;
      askedFor = '';
    }
  } finally {
    clearTimeout(timer);
    if (asked === mine) progress.value = null;
  }
};

/** Stops the reckoning under way; what was found before stays. */
export const cancelFindings = (): void => {
  asked?.cancel();
  asked = undefined;
  askedFor = '';
  progress.value = null;
};
