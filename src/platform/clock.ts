import type { Day } from '../domain/box/records.ts';
import type { Stamp } from '../domain/setup/events.ts';
import { newId } from './ids.ts';

const session = newId();
let hiddenBefore = 0;
let hiddenSince: number | null = null;

const followVisibility = (): void => {
  const now = performance.now();
  if (document.visibilityState === 'hidden') hiddenSince ??= now;
  else if (hiddenSince !== null) {
    hiddenBefore += now - hiddenSince;
    hiddenSince = null;
  }
};
followVisibility();
document.addEventListener('visibilitychange', followVisibility);

/** The clocks at this tap. */
export const stamp = (): Stamp => {
  const mono = performance.now();
  return {
    at: Date.now(),
    mono: Math.round(mono),
    hid: Math.round(hiddenBefore + (hiddenSince === null ? 0 : mono - hiddenSince)),
    session,
  };
};

/** The calendar day of a moment (epoch ms) in the phone's time zone. */
export const dayOf = (at: number): Day => {
  const here = new Date(at);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${here.getFullYear()}-${two(here.getMonth() + 1)}-${two(here.getDate())}`;
};

export const today = (): Day => dayOf(Date.now());
