import { voiceWords } from '../words/voice.ts';
import { spoken } from './use-at-the-lathe.ts';

/** When steps should be spoken and this phone cannot: says so, and why. */
export const VoiceState = () =>
  spoken.value === null || spoken.value === 'ready' ? null : <p role="status">{voiceWords[spoken.value]}</p>;
