import { settings } from '../../app/session.ts';
import type { Verdict } from '../../domain/setup/events.ts';
import { afterNextFrame } from '../../platform/next-frame.ts';

/** What a durable tick sounds and feels like: one click, two for a fail. The next step is shown first: a sound is slow to make. */
export const feel = (verdict: Verdict | 'reopened'): void =>
  afterNextFrame(async () => {
    const { sound, vibration } = settings.value;
    const heard = await import('../../platform/sound.ts').catch(() => null);
    if (sound) heard?.click(verdict === 'fail' || verdict === 'reopened' ? verdict : 'tick');
    if (vibration) heard?.buzz();
  });
