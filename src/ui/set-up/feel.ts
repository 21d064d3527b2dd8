import { settings } from '../../app/session.ts';
import type { Verdict } from '../../domain/setup/events.ts';
import { buzz, click } from '../../platform/sound.ts';

/** What a durable tick sounds and feels like: one click, two for a fail. */
export const feel = (verdict: Verdict | 'reopened'): void => {
  if (settings.value.sound) click(verdict === 'fail' ? 'fail' : verdict === 'reopened' ? 'reopened' : 'tick');
  if (settings.value.vibration) buzz();
};
