import { settings } from '../../app/session.ts';
import type { Verdict } from '../../domain/setup/events.ts';
import { afterNextFrame } from '../../platform/next-frame.ts';
import { buzz, click } from '../../platform/sound.ts';

/** What a durable tick sounds and feels like: one click, two for a fail. The next step is shown first: a sound is slow to make. */
export const feel = (verdict: Verdict | 'reopened'): void =>
  afterNextFrame(() => {
    if (settings.value.sound)
      click(verdict === 'fail' ? 'fail' : verdict === 'reopened' ? 'reopened' : 'tick');
    if (settings.value.vibration) buzz();
  });
