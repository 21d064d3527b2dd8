import type { Voice } from '../../platform/speech.ts';

export const voiceWords: Readonly<Record<Voice | 'sample', string>> = {
  sample: 'Lock the post.',
  ready: 'Each step will be spoken as it comes up.',
  'no-voice': 'This phone has no English voice installed, so steps cannot be spoken.',
  absent: 'This browser cannot speak.',
};
